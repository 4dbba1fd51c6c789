package rainlap.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * A length along the wall that is short, seen from outside.
 *
 * @param from what it is measured from and stays where it is: a jamb, the end lap of the course below
 * @param to what stands too near, or ends too soon
 * @param sign 1 where more of it would reach to the right, -1 to the left
 * @param measured straight from one to the other, grid units; negative where it ends on the wrong side
 * @param asked grid units
 */
record FrontSpan(Point from, Point to, int sign, long measured, long asked) {

    /** What a finding measures along the wall; empty where it measures nothing. */
    static Optional<FrontSpan> of(Finding f, Evidence e) {
        return f.required().isEmpty() || !f.where().isLine() ? Optional.empty() : switch (f.rule()) {
            case "short-flashing" -> pastJamb(f, e);
            case "end-lap-near-opening" -> fromOpening(f, e);
            case "unstaggered-laps" -> fromLapBelow(f, e);
            default -> Optional.empty();
        };
    }

    private static long asked(Finding f) {
        return Math.round(f.required().getAsDouble() * 100);
    }

    /** The same as long as asked: level, or aslant up to the same height. */
    FrontSpan asAsked() {
        double up = to.y() - from.y(), along = Math.sqrt(Math.max(0, (double) asked * asked - up * up));
        return new FrontSpan(from, new Point(from.x() + sign * (long) Math.ceil(along), to.y()), sign, asked, 0);
    }

    boolean isLevel() {
        return Math.abs(to.y() - from.y()) < 100;
    }

    /** All that is to be seen of it. */
    Box box() {
        return Box.of(List.of(from, to, asked > 0 ? asAsked().to : to));
    }

    private static Optional<FrontSpan> pastJamb(Finding f, Evidence e) {
        Box b = f.where().box();
        record Jamb(Opening opening, long x, int sign) {}
        return e.elevation().openings().stream().flatMap(o -> Stream.of(new Jamb(o, o.rect().minX(), -1), new Jamb(o, o.rect().maxX(), 1)))
                .filter(j -> j.x() == b.minX() || j.x() == b.maxX()).min(Comparator.comparingLong(j -> Math.abs(j.opening().rect().maxY() - b.minY())))
                .map(j -> {
                    long past = Math.round(f.measured().orElse(0) * 100);
                    return new FrontSpan(new Point(j.x(), b.minY()), new Point(j.x() + j.sign() * past, b.minY()), j.sign(), past, asked(f));
                });
    }

    private static Optional<FrontSpan> fromOpening(Finding f, Evidence e) {
        return e.elevation().openings().stream().flatMap(o -> Stream.of(o.edge(Side.LEFT), o.edge(Side.RIGHT))).flatMap(jamb -> near(f.where().line(), jamb))
                .min(Comparator.comparingDouble(Near::apart))
                .map(n -> new FrontSpan(n.jamb(), n.lap(), n.lap().x() < n.jamb().x() ? -1 : 1, Math.round(f.measured().orElse(0) * 100), asked(f)));
    }

    /** A place of a jamb and a place of an edge near it. */
    private record Near(Point jamb, Point lap) {
        double apart() {
            return Math.hypot(lap.x() - jamb.x(), lap.y() - jamb.y());
        }
    }

    /** From a plumb jamb to the corners of a line and to where it passes half way along with it. */
    private static Stream<Near> near(List<Point> line, Segment jamb) {
        long low = jamb.box().minY(), high = jamb.box().maxY(), x = jamb.a().x();
        return IntStream.range(0, line.size() - 1).boxed().flatMap(i -> {
            Point a = line.get(i), b = line.get(i + 1);
            long from = Math.max(low, Math.min(a.y(), b.y())), to = Math.min(high, Math.max(a.y(), b.y()));
            return from < to && a.y() != b.y() ? Stream.of(at(a, b, (from + to) / 2), a, b) : Stream.of(a, b);
        }).map(p -> new Near(new Point(x, Math.max(low, Math.min(high, p.y()))), p));
    }

    private static Point at(Point a, Point b, long level) {
        return new Point(a.x() + Math.round((b.x() - a.x()) * (double) (level - a.y()) / (b.y() - a.y())), level);
    }

    /** The finding lies between the two edges at the foot of the upper one, or along that where they stand one above the other. */
    private static Optional<FrontSpan> fromLapBelow(Finding f, Evidence e) {
        long apart = Math.round(f.measured().orElse(0) * 100);
        Box b = f.where().box();
        return f.joint().flatMap(id -> e.joints().all().stream().filter(j -> j.id().equals(id)).findFirst()).map(upper -> {
            Point foot = upper.line().stream().min(Comparator.comparingLong(Point::y).thenComparingLong(Point::x)).orElseThrow();
            int sign = foot.x() >= b.maxX() ? 1 : -1;
            return new FrontSpan(new Point(foot.x() - sign * apart, foot.y()), foot, sign, apart, asked(f));
        });
    }
}
