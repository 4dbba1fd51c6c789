package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.Supplier;
import rainlap.geom.Point;
import rainlap.stack.Crew;
import rainlap.wall.Surface;
import rainlap.water.How.Move;

/**
 * Finds where water first comes onto the frame; stretches of one line that it reaches in the same way are one. What came in each strip of the wall is told for
 * itself; what lies on one line in several of them is joined after that.
 */
final class Arrivals {
    /** Fewest defences first, then by surface, from the top down and from the left. */
    private static final Comparator<Arrival> WORST_FIRST = Comparator.comparingInt(Arrival::defences).thenComparing(Arrival::surface)
            .thenComparing((a, b) -> Long.compare(b.where().get(0).y(), a.where().get(0).y())).thenComparingLong(a -> a.where().get(0).x());

    /** What came onto the frame here, by how it came. */
    private final Map<Way, List<Stretch>> entries;

    private record Way(int defences, boolean first, Surface surface, int told, Move move, boolean plumb, boolean level, long line) {}

    /**
     * Water that comes onto the frame along a line.
     *
     * @param path the way it came; empty until it is told
     */
    private record Stretch(Wet water, List<Point> where, List<Step> path) {
        Stretch along(List<Point> line) {
            return new Stretch(water, line, path);
        }
    }

    /** @param entries all water that came onto the frame */
    private Arrivals(List<Wet> entries, Paths paths) {
        this.entries = told(entries, paths);
    }

    /** All of these that came onto the frame. */
    static List<Arrival> of(Flows flows, Predicate<Wet> which, Paths paths, Crew crew) {
        List<Arrivals> strips = crew.all(flows.wet().<Supplier<Arrivals>>map(f -> () -> new Arrivals(f.entries().stream().filter(which).toList(), paths.beside())).toList());
        Map<Way, List<Stretch>> byWay = new LinkedHashMap<>();
        strips.forEach(s -> s.entries.forEach((way, parts) -> byWay.computeIfAbsent(way, k -> new ArrayList<>(parts.size())).addAll(parts)));
        List<Arrival> all = new ArrayList<>(byWay.size());
        byWay.forEach((way, parts) -> joined(way, parts).forEach(
                s -> all.add(new Arrival(way.defences, way.first, way.surface, s.where, s.path, OptionalDouble.empty()))));
        return crew.gather(all, run -> run.stream().sorted(WORST_FIRST).toList()).stream().sorted(WORST_FIRST).toList();
    }

    /** What came in one strip, joined and told; round a pipe it is joined only when all of it is there. */
    private static Map<Way, List<Stretch>> told(List<Wet> came, Paths paths) {
        Map<Way, List<Stretch>> byWay = new LinkedHashMap<>();
        for (Wet w : came) {
            if (!isDrop(w)) {
                List<Point> where = where(w);
                byWay.computeIfAbsent(way(w, where, paths), k -> new ArrayList<>(1)).add(new Stretch(w, where, List.of()));
            }
        }
        byWay.replaceAll((way, parts) -> (way.move == Move.PIPE ? parts : joined(way, parts)).stream().map(s -> new Stretch(s.water, s.where, paths.to(s.water))).toList());
        return byWay;
    }

    private static Way way(Wet w, List<Point> where, Paths paths) {
        Point a = where.get(0), b = where.get(1);
        boolean pipe = w.how().move() == Move.PIPE, plumb = !pipe && a.x() == b.x(), level = !pipe && a.y() == b.y();
        return new Way(w.cost(), isFirst(w), w.cell().ground.surface(), paths.told(w), w.how().move(), plumb, level && !plumb,
                pipe ? w.cell().pipe : plumb ? a.x() : level ? a.y() : 0);
    }

    /** Whether the frame there is dry, or some of it, where nothing more than this needs has failed; nobody asks it of what needs two failures. */
    private static boolean isFirst(Wet w) {
        return w.cost() == 0 || w.cost() == 1 && !w.cell().pool().isThereForFewer(w);
    }

    /** The line, left or lower end first. */
    private static List<Point> where(Wet w) {
        Move m = w.how().move();
        boolean sideways = m == Move.PUSH || m == Move.OVERRUN || m == Move.LIFT;
        if (sideways && w.source() != null && w.source().cell().ground == w.cell().ground) {
            Ground g = w.cell().ground;
            Line l = w.crossed();
            return ordered(g.turned(new Point(l.ax(), l.ay())), g.turned(new Point(l.bx(), l.by())));
        }
        List<Point> top = Paths.top(w);
        return ordered(top.get(0), top.get(1));
    }

    /** A drop at the end of a ledge or line, with no height and nothing below: it leaves at once. */
    static boolean isDrop(Wet w) {
        return w.to() - w.from() <= 1 && w.leftTop() - w.cell().lower.at(w.from()) < 1
                && Arrays.stream(w.cell().down).noneMatch(s -> s.from <= w.from() && w.from() < s.to);
    }

    private static List<Stretch> joined(Way way, List<Stretch> parts) {
        if (way.move == Move.PIPE) {
            return List.of(roundPipe(parts));
        }
        return parts.size() > 1 && (way.plumb || way.level) ? joined(parts, way.plumb) : parts;
    }

    /** What comes in beneath the pipe, else over it, else at its sides: it is one way in. */
    private static Stretch roundPipe(List<Stretch> all) {
        List<Point> line = new ArrayList<>();
        List<Stretch> beneath = all.stream().filter(s -> s.water().cell().underPipe).toList();
        List<Stretch> over = all.stream().filter(s -> s.water().cell().overPipe).toList();
        List<Stretch> parts = !beneath.isEmpty() ? beneath : !over.isEmpty() ? over : all;
        parts.stream().sorted(Comparator.comparingLong(s -> s.where().get(0).x())).forEach(s -> {
            if (line.isEmpty()) {
                line.add(s.where().get(0));
            }
            line.add(s.where().get(s.where().size() - 1));
        });
        return parts.get(0).along(line);
    }

    private static List<Point> ordered(Point a, Point b) {
        return a.x() < b.x() || a.x() == b.x() && a.y() <= b.y() ? List.of(a, b) : List.of(b, a);
    }

    private static List<Stretch> joined(List<Stretch> parts, boolean plumb) {
        List<Stretch> out = new ArrayList<>();
        for (Stretch next : parts.stream().sorted(Comparator.comparingLong(s -> at(s, 0, plumb))).toList()) {
            Stretch last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && at(next, 0, plumb) <= at(last, 1, plumb) + 1) {
                Point end = at(next, 1, plumb) > at(last, 1, plumb) ? next.where().get(1) : last.where().get(1);
                out.set(out.size() - 1, last.along(List.of(last.where().get(0), end)));
            } else {
                out.add(next);
            }
        }
        return out;
    }

    private static long at(Stretch s, int end, boolean plumb) {
        Point p = s.where().get(end);
        return plumb ? p.y() : p.x();
    }
}
