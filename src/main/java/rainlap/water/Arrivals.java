package rainlap.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Point;
import rainlap.wall.Surface;
import rainlap.water.How.Move;

/** Finds where water first comes onto the frame; stretches of one line that it reaches in the same way are one. */
final class Arrivals {
    private final Paths paths;

    Arrivals(Paths paths) {
        this.paths = paths;
    }

    private record Way(int defences, Surface surface, String told, Move move, boolean plumb, boolean level, long line) {}

    List<Arrival> of(List<Wet> onFrame) {
        Map<Way, List<Arrival>> byWay = new LinkedHashMap<>();
        for (Wet w : onFrame) {
            if (w.source() == null || !w.source().isOnFrame() && !isDrop(w)) {
                List<Point> where = where(w);
                List<Step> path = paths.to(w);
                byWay.computeIfAbsent(way(w, where, path), k -> new ArrayList<>(1)).add(new Arrival(w.cost(), w.cell().ground.surface(), where, path));
            }
        }
        List<Arrival> out = new ArrayList<>();
        byWay.forEach((way, parts) -> out.addAll(way.move == Move.PIPE ? List.of(roundPipe(parts)) : way.plumb || way.level ? joined(parts, way.plumb) : parts));
        out.sort(Comparator.comparingInt(Arrival::defences).thenComparing(Arrival::surface).thenComparing(a -> a.where().get(0).y(), Comparator.reverseOrder())
                .thenComparing(a -> a.where().get(0).x()));
        return List.copyOf(out);
    }

    private static Way way(Wet w, List<Point> where, List<Step> path) {
        StringBuilder told = new StringBuilder();
        path.forEach(s -> told.append(s.why()).append(';'));
        Point a = where.get(0), b = where.get(1);
        boolean pipe = w.how().move() == Move.PIPE, plumb = !pipe && a.x() == b.x(), level = !pipe && a.y() == b.y();
        return new Way(w.cost(), w.cell().ground.surface(), told.toString(), w.how().move(), plumb, level && !plumb, pipe ? w.cell().pipe : plumb ? a.x() : level ? a.y() : 0);
    }

    /** The line, left or lower end first. */
    private static List<Point> where(Wet w) {
        Move m = w.how().move();
        boolean sideways = m == Move.PUSH || m == Move.OVERRUN || m == Move.LIFT;
        if (sideways && w.source() != null && w.source().cell().ground == w.cell().ground) {
            Ground g = w.cell().ground;
            Line l = w.how().line();
            return ordered(g.turned(new Point(l.ax(), l.ay())), g.turned(new Point(l.bx(), l.by())));
        }
        List<Point> top = Paths.top(w);
        return ordered(top.get(0), top.get(1));
    }

    /** A drop at the end of a ledge or line, with no height: it leaves at once. */
    private static boolean isDrop(Wet w) {
        return w.to() - w.from() <= 1 && w.leftTop() - w.cell().lower.at(w.from()) < 1;
    }

    private static Arrival roundPipe(List<Arrival> parts) {
        Arrival first = parts.get(0);
        List<Point> line = new ArrayList<>();
        parts.stream().sorted(Comparator.comparingLong(a -> a.where().get(0).x())).forEach(a -> {
            if (line.isEmpty()) {
                line.add(a.where().get(0));
            }
            line.add(a.where().get(a.where().size() - 1));
        });
        return new Arrival(first.defences(), first.surface(), line, first.path());
    }

    private static List<Point> ordered(Point a, Point b) {
        return a.x() < b.x() || a.x() == b.x() && a.y() <= b.y() ? List.of(a, b) : List.of(b, a);
    }

    private static List<Arrival> joined(List<Arrival> parts, boolean plumb) {
        Comparator<Arrival> along = Comparator.comparingLong(a -> at(a, 0, plumb));
        List<Arrival> out = new ArrayList<>();
        for (Arrival next : parts.stream().sorted(along).toList()) {
            Arrival last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && at(next, 0, plumb) <= at(last, 1, plumb) + 1) {
                Point end = at(next, 1, plumb) > at(last, 1, plumb) ? next.where().get(1) : last.where().get(1);
                out.set(out.size() - 1, new Arrival(last.defences(), last.surface(), List.of(last.where().get(0), end), last.path()));
            } else {
                out.add(next);
            }
        }
        return out;
    }

    private static long at(Arrival a, int end, boolean plumb) {
        Point p = a.where().get(end);
        return plumb ? p.y() : p.x();
    }
}
