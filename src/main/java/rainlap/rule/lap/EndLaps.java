package rainlap.rule.lap;

import java.util.Comparator;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.rule.Evidence;
import rainlap.rule.MembraneJoints;

/** The end laps at which a course of membrane on the wall goes over from one sheet to the next. */
final class EndLaps {
    private static final Comparator<Point> FROM_BELOW = Comparator.comparingLong(Point::y).thenComparingLong(Point::x);

    private EndLaps() {}

    /**
     * All of them. The side edge of a patch, beneath which the inner sheet runs on to the patch's far side and beyond, is no end of a
     * sheet's course and is left out; so is what lies wholly beneath a further sheet, and where the side of an upper sheet lies on the
     * course below.
     */
    static List<Joint> onWall(Evidence e) {
        return e.shared().of(EndLaps.class, () -> MembraneJoints.of(e)
                .filter(j -> j.kind() == JointKind.END_LAP && j.surface().isWall() && !isPatch(j) && !isHidden(j) && isOneCourse(j)).toList());
    }

    /** Whether the two stand side by side: more than half as high together as the lesser of them. */
    private static boolean isOneCourse(Joint j) {
        Box a = j.outer().box(), b = j.inner().box();
        long together = Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY());
        return 2 * together > Math.min(a.height(), b.height());
    }

    private static boolean isPatch(Joint j) {
        Box outer = j.outer().box(), inner = j.inner().box();
        return j.runs().get(0).faces().across() > 0 ? inner.minX() <= outer.minX() : inner.maxX() >= outer.maxX();
    }

    private static boolean isHidden(Joint j) {
        for (Run r : j.runs()) {
            if (r.hidden().isEmpty() || !Intervals.of(0, r.length()).minus(r.hidden()).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** The lower end of its exposed edge. */
    static Point foot(Joint j) {
        return outermost(j, false);
    }

    /** The upper end of its exposed edge. */
    static Point top(Joint j) {
        return outermost(j, true);
    }

    private static Point outermost(Joint j, boolean upper) {
        Point out = j.runs().get(0).line().a();
        for (Run r : j.runs()) {
            Point next = r.line().b();
            out = FROM_BELOW.compare(next, out) > 0 == upper ? next : out;
        }
        return out;
    }
}
