package rainlap.drawing;

import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;

/**
 * A section to be drawn.
 *
 * @param letter of the plane; blank where the plane found no room on the elevation
 * @param points the weak points it shows, worst first
 * @param gauge what is dimensioned
 */
record SectionPlan(String letter, List<WeakPoint> points, Cut cut, int scale, Optional<Gauge> gauge) {
    SectionPlan {
        points = List.copyOf(points);
    }

    /** The same section for these weak points. */
    SectionPlan of(List<WeakPoint> others) {
        return new SectionPlan(letter, others, cut, scale, gauge);
    }

    WeakPoint first() {
        return points.get(0);
    }

    /**
     * A length that is short.
     *
     * @param from place along the cut's axis where it begins
     * @param sign 1 towards higher places, -1 towards lower ones, 0 inwards from a turn at {@code from}
     * @param measured grid units
     * @param asked grid units, or 0 where nothing is asked in a number
     */
    record Gauge(long from, int sign, long measured, long asked) {}
}
