package rainlap.paper;

import java.util.Comparator;
import java.util.List;

/**
 * How much a leader costs the reader, in millimetres of length: its own length, and more for a bend, for a bend too short
 * to see, for an angle that is not 45 degrees, for running over an opening, whose own lines and words it would cross, and
 * for running along an edge of the drawing, where it cannot be told from it.
 */
final class LeaderCost {

    private static final double BEND = 2;
    private static final double SHORT_BEND = 6;
    private static final double SHORT = 2;
    private static final double STEEP = 25;
    private static final double ALONG = 6;
    private static final double ALONG_EACH_MM = 2;
    /** Leaders nearer than this to a parallel edge are read as one with it. */
    private static final double SAME_LINE = 0.8;
    private static final double LEAST_RUN = 1;
    /** A leader that passes the dot of another site this near seems to end there. */
    private static final double DOT_ROOM = 1.3;
    private static final double PASSES_DOT = 30;
    /** Leaders nearer than this to each other are hard to follow. */
    static final double CLOSE = 2;
    private static final double CLOSE_EACH_MM = 8;

    /** What a leader takes upon it to go round an opening, and more for each millimetre over it. */
    private static final double OVER = 10;
    private static final double OVER_EACH_MM = 0.5;
    /** A leader that ends this near the edge within an opening does not run over it. */
    private static final double INTO = 3;

    private final List<PaperBox> openings;
    private final PaperSegment[] level;
    private final PaperSegment[] upright;

    LeaderCost(BoundaryLabels.Room room) {
        List<PaperSegment> edges = room.edges();
        openings = room.openings();
        level = edges.stream().filter(e -> e.from().y() == e.to().y() && e.from().x() != e.to().x())
                .sorted(Comparator.comparingDouble(e -> e.from().y())).toArray(PaperSegment[]::new);
        upright = edges.stream().filter(e -> e.from().x() == e.to().x() && e.from().y() != e.to().y())
                .sorted(Comparator.comparingDouble(e -> e.from().x())).toArray(PaperSegment[]::new);
    }

    double own(Leader leader) {
        double sum = leader.length() + runsAlong(leader.port(), leader.bend()) + runsOver(leader);
        if (!leader.straight()) {
            sum += BEND + (leader.slant() < SHORT ? SHORT_BEND : 0) + (leader.steep() ? STEEP : 0);
        }
        return sum;
    }

    /** What two leaders cost each other, crossings apart: passing the other's dot, running close to it. */
    double together(Leader a, Leader b) {
        if (!a.near(b, CLOSE) || a.site().equals(b.site())) {
            return 0;
        }
        double aToDot = a.distance(b.site());
        double bToDot = b.distance(a.site());
        double apart = Math.min(Math.min(aToDot, bToDot), Math.min(a.distance(b.bend()), b.distance(a.bend())));
        return (aToDot < DOT_ROOM ? PASSES_DOT : 0) + (bToDot < DOT_ROOM ? PASSES_DOT : 0)
                + CLOSE_EACH_MM * Math.max(0, CLOSE - apart);
    }

    private double runsOver(Leader leader) {
        double sum = 0;
        for (PaperBox o : openings) {
            if (leader.meets(o)) {
                double run = o.within(leader.port(), leader.bend()) + o.within(leader.bend(), leader.site());
                sum += run > INTO ? OVER + OVER_EACH_MM * run : 0;
            }
        }
        return sum;
    }

    private double runsAlong(PaperPoint a, PaperPoint b) {
        if (a.y() == b.y()) {
            return longest(level, true, a.y(), Math.min(a.x(), b.x()), Math.max(a.x(), b.x()));
        }
        return a.x() == b.x() ? longest(upright, false, a.x(), Math.min(a.y(), b.y()), Math.max(a.y(), b.y())) : 0;
    }

    private static double longest(PaperSegment[] edges, boolean level, double at, double from, double to) {
        double run = 0;
        for (int i = first(edges, level, at - SAME_LINE); i < edges.length && place(edges[i], level) < at + SAME_LINE; i++) {
            double a = level ? edges[i].from().x() : edges[i].from().y();
            double b = level ? edges[i].to().x() : edges[i].to().y();
            run = Math.max(run, Math.min(to, Math.max(a, b)) - Math.max(from, Math.min(a, b)));
        }
        return run > LEAST_RUN ? ALONG + ALONG_EACH_MM * run : 0;
    }

    /** Index of the first edge at or beyond a place. */
    private static int first(PaperSegment[] edges, boolean level, double at) {
        int low = 0;
        int high = edges.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (place(edges[middle], level) < at) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double place(PaperSegment edge, boolean level) {
        return level ? edge.from().y() : edge.from().x();
    }
}
