package rainlap.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Parallel lines over a region, cut at its edges and holes. The lines lie where a grid fixed to the sheet's corner puts
 * them, so that neighbouring regions with one hatch run through without a step.
 */
public final class Hatch {

    /** Shorter remains in a corner are specks and are left out, in millimetres. */
    private static final double SPECK = 0.05;
    private static final int MOST_LINES = 1_000_000;

    private final double cos;
    private final double sin;
    private final double pitch;

    private Hatch(double angle, double pitch) {
        cos = Math.cos(Math.toRadians(angle));
        sin = Math.sin(Math.toRadians(angle));
        this.pitch = pitch;
    }

    /**
     * The hatch lines of a region, from one side to the other.
     *
     * @param angle degrees as on a drawing: 0 level, 45 rising to the right, 135 rising to the left
     * @param pitch distance between lines, square to them, in millimetres
     */
    public static List<PaperSegment> lines(PaperRegion region, double angle, double pitch) {
        if (!(pitch > 0)) {
            throw new IllegalArgumentException("hatching needs a pitch above 0, not " + pitch);
        }
        return new Hatch(angle, pitch).over(region);
    }

    /** The hatch as a mark. */
    public static Strokes of(PaperRegion region, double angle, double pitch, Edge edge) {
        return new Strokes(lines(region, angle, pitch), edge);
    }

    /** Two hatches square to each other, as one mark. */
    public static Strokes crossed(PaperRegion region, double angle, double pitch, Edge edge) {
        List<PaperSegment> both = new ArrayList<>(lines(region, angle, pitch));
        both.addAll(lines(region, angle + 90, pitch));
        return new Strokes(both, edge);
    }

    private List<PaperSegment> over(PaperRegion region) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (List<PaperPoint> ring : region.rings()) {
            for (PaperPoint p : ring) {
                least = Math.min(least, across(p));
                most = Math.max(most, across(p));
            }
        }
        double first = Math.ceil(least);
        int count = (int) Math.min(Math.floor(most) - first + 1, MOST_LINES + 1.0);
        if (count > MOST_LINES) {
            throw new IllegalArgumentException("more than " + MOST_LINES + " hatch lines");
        }
        Crossings[] crossings = new Crossings[Math.max(count, 0)];
        for (List<PaperPoint> ring : region.rings()) {
            PaperPoint a = ring.get(ring.size() - 1);
            for (PaperPoint b : ring) {
                cross(a, b, first, crossings);
                a = b;
            }
        }
        return segments(first, crossings);
    }

    /** Notes where the edge crosses lines; an edge owns its lower end only, so that a corner counts once. */
    private void cross(PaperPoint a, PaperPoint b, double first, Crossings[] crossings) {
        double low = Math.min(across(a), across(b));
        double high = Math.max(across(a), across(b));
        if (low == high) {
            return;
        }
        for (int i = (int) (Math.ceil(low) - first); i < crossings.length && first + i < high; i++) {
            double share = (first + i - across(a)) / (across(b) - across(a));
            if (crossings[i] == null) {
                crossings[i] = new Crossings();
            }
            crossings[i].add(along(a) + share * (along(b) - along(a)));
        }
    }

    private List<PaperSegment> segments(double first, Crossings[] crossings) {
        List<PaperSegment> lines = new ArrayList<>();
        for (int i = 0; i < crossings.length; i++) {
            if (crossings[i] == null) {
                continue;
            }
            double[] at = crossings[i].sorted();
            for (int k = 0; k + 1 < at.length; k += 2) {
                if (at[k + 1] - at[k] >= SPECK) {
                    lines.add(new PaperSegment(point(at[k], first + i), point(at[k + 1], first + i)));
                }
            }
        }
        return lines;
    }

    /** Distance across the lines from the sheet's corner, in pitches. */
    private double across(PaperPoint p) {
        return (p.x() * sin + p.y() * cos) / pitch;
    }

    private double along(PaperPoint p) {
        return p.x() * cos - p.y() * sin;
    }

    private PaperPoint point(double along, double across) {
        double v = across * pitch;
        return new PaperPoint(along * cos + v * sin, v * cos - along * sin);
    }

    /** Places on one line where the region's edge crosses it. */
    private static final class Crossings {

        private double[] places = new double[4];
        private int count;

        void add(double place) {
            if (count == places.length) {
                places = Arrays.copyOf(places, 2 * count);
            }
            places[count++] = place;
        }

        double[] sorted() {
            double[] sorted = Arrays.copyOf(places, count);
            Arrays.sort(sorted);
            return sorted;
        }
    }
}
