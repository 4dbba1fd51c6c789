package rainlap.joint;

import java.util.List;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.stack.Face;

/**
 * What strips cover of a run.
 *
 * @param taped the stretches covered to both sides
 * @param onOuter how far the cover runs onto the outer piece, over the taped stretches only
 * @param onInner how far onto the inner piece
 * @param strips the strips that count, in laying order
 */
public record Cover(Intervals taped, Profile onOuter, Profile onInner, List<Face> strips) {
    public static final Cover NONE = new Cover(Intervals.NONE, Profile.NONE, Profile.NONE, List.of());

    public Cover {
        strips = List.copyOf(strips);
        onInner = onInner.equals(onOuter) ? onOuter : onInner; // most tape is laid along its middle, and a wall has many runs
    }
}
