package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Profile;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/**
 * A joint between two pieces on one surface.
 *
 * @param outer the piece outside (of a butt or gap: the one laid later)
 * @param sealed whether the outer piece's own adhesive closes this edge
 * @param runs its straight parts, end to end, outer piece on the left
 * @param tapedAlong whether a strip was laid along what is seen of it; one that only crosses it, such as a jamb tape over a course lap, is not
 */
public record Joint(String id, JointKind kind, Face outer, Face inner, boolean sealed, List<Run> runs, boolean tapedAlong) {
    public Joint {
        runs = List.copyOf(runs);
    }

    Joint named(String other) {
        return new Joint(other, kind, outer, inner, sealed, runs, tapedAlong);
    }

    /** The same, where a strip was laid along it. */
    Joint taped() {
        return new Joint(id, kind, outer, inner, sealed, runs, true);
    }

    public Surface surface() {
        return outer.surface();
    }

    /** The first point of its exposed edge. */
    Point start() {
        return runs.get(0).line().a();
    }

    /** The exposed edge as a polyline. */
    public List<Point> line() {
        if (runs.size() == 1) {
            return List.of(start(), runs.get(0).line().b());
        }
        List<Point> out = new ArrayList<>();
        out.add(start());
        runs.forEach(r -> out.add(r.line().b()));
        return List.copyOf(out);
    }

    public double lengthMm() {
        double length = 0;
        for (Run r : runs) {
            length += r.length();
        }
        return length / 100;
    }

    /** The least lap in grid units; 0 for a butt or a gap. */
    public long lap() {
        return kind.isLap() ? Math.round(runs.stream().mapToDouble(r -> r.lap().least()).min().orElse(0)) : 0;
    }

    /** The greatest width of the strip between the edges of a butt or gap, grid units. */
    public long gap() {
        return kind.isLap() ? 0 : Math.round(runs.stream().mapToDouble(r -> r.lap().greatest()).max().orElse(0));
    }

    /** Whether any of it is taped. */
    public boolean isTaped() {
        for (Run r : runs) {
            if (!r.cover().taped().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** Least cover onto the outer piece where it is taped, grid units; 0 where nothing is. */
    public long coverOnOuter() {
        return !isTaped() ? 0 : Math.round(runs.stream().mapToDouble(r -> r.cover().onOuter().least()).min().orElse(0));
    }

    public long coverOnInner() {
        return !isTaped() ? 0 : Math.round(runs.stream().mapToDouble(r -> r.cover().onInner().least()).min().orElse(0));
    }

    /** The strips that cover it, in laying order. */
    public List<Face> strips() {
        if (runs.size() == 1 && runs.get(0).cover().strips().size() < 2) {
            return runs.get(0).cover().strips();
        }
        return runs.stream().flatMap(r -> r.cover().strips().stream()).distinct()
                .sorted(java.util.Comparator.comparingInt(Face::number)).toList();
    }

    /**
     * A connected part of the joint with the least value found on it, grid units.
     *
     * @param taped whether tape covers all of it
     */
    public record Stretch(List<Point> line, double lengthMm, long least, boolean taped) {
        public Stretch {
            line = List.copyOf(line);
        }
    }

    /** The parts whose lap is below a limit in grid units. */
    public List<Stretch> lapBelow(long limit) {
        return stretches(r -> r.lap().below(limit), Run::lap);
    }

    /** The parts that neither tape nor a further sheet covers. */
    public List<Stretch> uncovered() {
        return parts(Run::uncovered, (r, from, to) -> 0);
    }

    /** The taped parts whose cover onto the outer piece is below a limit in grid units. */
    public List<Stretch> coverOnOuterBelow(long limit) {
        return stretches(r -> r.cover().onOuter().below(limit).minus(r.hidden()), r -> r.cover().onOuter());
    }

    public List<Stretch> coverOnInnerBelow(long limit) {
        return stretches(r -> r.cover().onInner().below(limit).minus(r.hidden()), r -> r.cover().onInner());
    }

    /** The parts a caller chooses on each run, with the least of a length of its choice on each part. */
    public List<Stretch> stretches(Function<Run, Intervals> where, Function<Run, Profile> of) {
        return parts(where, (r, from, to) -> of.apply(r).leastWithin(from, to));
    }

    /** The least of some length between two places along a run. */
    private interface Least {
        double of(Run r, double from, double to);
    }

    /** Cuts the parts out of each run and joins those that meet at a bend. */
    private List<Stretch> parts(Function<Run, Intervals> where, Least least) {
        List<Stretch> out = new ArrayList<>(2);
        for (Run r : runs) {
            Intervals parts = where.apply(r);
            EdgeFrame frame = parts.isEmpty() ? null : EdgeFrame.of(r.line());
            for (int i = 0; i < parts.count(); i++) {
                double from = parts.from(i), to = parts.to(i);
                Point a = frame.at(from), b = frame.at(to);
                if (!a.equals(b)) { // else shorter than the grid can show
                    append(out, new Stretch(List.of(a, b), (to - from) / 100, Math.round(least.of(r, from, to)),
                            Intervals.of(from, to).minus(r.cover().taped()).isEmpty()));
                }
            }
        }
        return List.copyOf(out);
    }

    private static void append(List<Stretch> out, Stretch s) {
        Stretch last = out.isEmpty() ? null : out.get(out.size() - 1);
        if (last != null && last.line.get(last.line.size() - 1).equals(s.line.get(0))) {
            out.set(out.size() - 1, joined(last, s));
        } else {
            out.add(s);
        }
    }

    private static Stretch joined(Stretch a, Stretch b) {
        List<Point> line = new ArrayList<>(a.line);
        line.addAll(b.line.subList(1, b.line.size()));
        return new Stretch(line, a.lengthMm + b.lengthMm, Math.min(a.least, b.least), a.taped && b.taped);
    }

    /** By id alone: equal joints have one id, and hashing every run would be dear. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
