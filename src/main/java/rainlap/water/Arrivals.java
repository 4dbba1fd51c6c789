package rainlap.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rainlap.geom.Point;
import rainlap.wall.Surface;
import rainlap.water.How.Move;

/** Finds where water first comes onto the frame; stretches of one line that it reaches in the same way are one. */
final class Arrivals {
    private final Paths paths;

    Arrivals(Paths paths) {
        this.paths = paths;
    }

    private record Way(int defences, boolean first, Surface surface, String told, Move move, boolean plumb, boolean level, long line) {}

    /**
     * @param entries all water that came onto the frame
     * @param firsts of that for which something had to fail: what came onto a dry frame
     */
    List<Arrival> of(List<Wet> entries, List<Wet> firsts) {
        Map<Way, List<Arrival>> byWay = new LinkedHashMap<>();
        entries.forEach(w -> add(w, w.cost() == 0, byWay));
        firsts.forEach(w -> add(w, true, byWay));
        List<Arrival> out = new ArrayList<>();
        byWay.forEach((way, parts) -> out.addAll(way.move == Move.PIPE ? List.of(roundPipe(parts)) : way.plumb || way.level ? joined(parts, way.plumb) : parts));
        out.sort(Comparator.comparingInt(Arrival::defences).thenComparing(Arrival::surface).thenComparing(a -> a.where().get(0).y(), Comparator.reverseOrder())
                .thenComparing(a -> a.where().get(0).x()));
        return List.copyOf(out);
    }

    private void add(Wet w, boolean first, Map<Way, List<Arrival>> byWay) {
        if (!isDrop(w)) {
            List<Point> where = where(w);
            List<Step> path = paths.to(w);
            byWay.computeIfAbsent(way(w, first, where, path), k -> new ArrayList<>(1))
                    .add(new Arrival(w.cost(), first, w.cell().ground.surface(), where, path, OptionalDouble.empty()));
        }
    }

    private static Way way(Wet w, boolean first, List<Point> where, List<Step> path) {
        StringBuilder told = new StringBuilder();
        path.forEach(s -> told.append(s.why()).append(';'));
        Point a = where.get(0), b = where.get(1);
        boolean pipe = w.how().move() == Move.PIPE, plumb = !pipe && a.x() == b.x(), level = !pipe && a.y() == b.y();
        return new Way(w.cost(), first, w.cell().ground.surface(), told.toString(), w.how().move(), plumb, level && !plumb, pipe ? w.cell().pipe : plumb ? a.x() : level ? a.y() : 0);
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
        return new Arrival(first.defences(), first.first(), first.surface(), line, first.path(), first.litresPerHour());
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
                out.set(out.size() - 1, new Arrival(last.defences(), last.first(), last.surface(), List.of(last.where().get(0), end), last.path(), last.litresPerHour()));
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
