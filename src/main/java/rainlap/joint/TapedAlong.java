package rainlap.joint;

import rainlap.geom.Box;
import rainlap.stack.Face;

/** Tells strips that were laid along a joint from those that only cross it, such as a jamb tape over a course lap. */
final class TapedAlong {
    /** A strip that covers no more of a joint than this many times its own width only crosses it. Our own choice. */
    private static final double CROSSING = 1.5;

    private TapedAlong() {}

    /** Whether a strip was laid along what is seen of a joint. */
    static boolean is(Joint j) {
        if (!j.isTaped()) {
            return false;
        }
        double widest = 0, hidden = 0;
        for (Run r : j.runs()) {
            hidden += r.hidden().total() / 100;
            for (Face strip : r.cover().strips()) {
                widest = Math.max(widest, across(strip));
            }
        }
        double least = Math.min(CROSSING * widest / 100, (j.lengthMm() - hidden) / 2);
        for (Joint.Stretch s : j.stretches(r -> r.cover().taped(), Run::lap)) {
            if (s.lengthMm() >= least) {
                return true;
            }
        }
        return false;
    }

    /** The width across a strip in grid units: what its material is sold in, or the lesser side of its box. */
    private static double across(Face strip) {
        Box b = strip.box();
        return Math.min(Math.min(b.width(), b.height()), strip.piece().material().widthMm().orElse(Double.POSITIVE_INFINITY) * 100);
    }
}
