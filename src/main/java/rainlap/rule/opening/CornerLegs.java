package rainlap.rule.opening;

import java.util.List;
import rainlap.joint.OpeningCorner;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.wall.Side;

/**
 * How far a corner piece runs on from a corner of an opening, grid units.
 *
 * @param onLevel along the sill or head
 * @param onJamb up or down the jamb
 */
public record CornerLegs(OpeningCorner corner, long onLevel, long onJamb) {
    /** Past what lies bare by the cover of a tape, and by that where nothing does. */
    public static CornerLegs overBare(Evidence e, OpeningCorner c) {
        List<CornerFace> both = CornerFace.both(e, c).stream().filter(CornerFace::isTurned).toList();
        long cover = e.practice().get(Limit.TAPE_COVER).hundredths();
        return new CornerLegs(c, cover + reach(both, c.level()), cover + reach(both, c.jamb()));
    }

    private static long reach(List<CornerFace> faces, Side side) {
        return faces.stream().filter(f -> f.side() == side).mapToLong(CornerFace::reach).max().orElse(0);
    }

    /** From a sill up the jamb as far as asked, and as far along the sill. */
    public static CornerLegs upTheJamb(Evidence e, OpeningCorner c) {
        long asked = e.practice().get(Limit.SILL_TURN_UP).hundredths();
        return new CornerLegs(c, asked, asked);
    }

    /** {@code 85 along the head and 45 down the jamb}. */
    public String inWords() {
        return LengthText.mm(onLevel) + " along the " + corner.level().inWords() + " and " + LengthText.mm(onJamb) + (corner.level() == Side.SILL ? " up" : " down") + " the jamb";
    }
}
