package rainlap.material;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The shape across a flashing, batten or trim: what an elevation cannot show. Given on the material, and on a piece to
 * override it ({@link #or}). What is not stated is empty, which is not the same as zero.
 *
 * @param depthMm file key {@code depth}: how far it stands out from what it lies on
 * @param fallDeg {@code fall_deg}: slope outwards, degrees from level
 * @param upstandMm {@code upstand}: height turned up at the back
 * @param endDams {@code end_dams}: which ends are turned up
 * @param endDamMm {@code end_dam}: how high
 * @param dripMm {@code drip}: how far the drip stands off the face below
 * @param hemMm {@code hem}: width of the folded-back edge
 * @param turnDownMm {@code turn_down}: how far the front comes down over what lies below
 */
public record Profile(
        OptionalDouble depthMm,
        OptionalDouble fallDeg,
        OptionalDouble upstandMm,
        Optional<EndDams> endDams,
        OptionalDouble endDamMm,
        OptionalDouble dripMm,
        OptionalDouble hemMm,
        OptionalDouble turnDownMm) {
    /** Nothing stated. */
    public static final Profile NONE = new Profile(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(),
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** @throws IllegalArgumentException if a length is negative or the fall is not between -90 and 90 degrees */
    public Profile {
        Check.notNegative("depth", depthMm);
        Check.notNegative("upstand", upstandMm);
        Check.notNegative("end_dam", endDamMm);
        Check.notNegative("drip", dripMm);
        Check.notNegative("hem", hemMm);
        Check.notNegative("turn_down", turnDownMm);
        if (fallDeg.isPresent() && !(Math.abs(fallDeg.getAsDouble()) < 90)) {
            throw new IllegalArgumentException("fall_deg must lie between -90 and 90, not " + fallDeg.getAsDouble());
        }
    }

    /** This profile with what it leaves open taken from another: {@code piece.or(material)}. */
    public Profile or(Profile other) {
        return new Profile(
                first(depthMm, other.depthMm),
                first(fallDeg, other.fallDeg),
                first(upstandMm, other.upstandMm),
                endDams.or(other::endDams),
                first(endDamMm, other.endDamMm),
                first(dripMm, other.dripMm),
                first(hemMm, other.hemMm),
                first(turnDownMm, other.turnDownMm));
    }

    /** The same with its back turned up otherwise. */
    public Profile withUpstand(OptionalDouble mm) {
        return new Profile(depthMm, fallDeg, mm, endDams, endDamMm, dripMm, hemMm, turnDownMm);
    }

    /** The same with another slope. */
    public Profile withFall(double deg) {
        return new Profile(depthMm, OptionalDouble.of(deg), upstandMm, endDams, endDamMm, dripMm, hemMm, turnDownMm);
    }

    /** The same with other ends turned up. */
    public Profile withEndDams(EndDams dams, double mm) {
        return new Profile(depthMm, fallDeg, upstandMm, Optional.of(dams), OptionalDouble.of(mm), dripMm, hemMm, turnDownMm);
    }

    /** The same with another drip. */
    public Profile withDrip(double mm) {
        return new Profile(depthMm, fallDeg, upstandMm, endDams, endDamMm, OptionalDouble.of(mm), hemMm, turnDownMm);
    }

    /** The same with its front turned down otherwise. */
    public Profile withTurnDown(double mm) {
        return new Profile(depthMm, fallDeg, upstandMm, endDams, endDamMm, dripMm, hemMm, OptionalDouble.of(mm));
    }

    private static OptionalDouble first(OptionalDouble mine, OptionalDouble other) {
        return mine.isPresent() ? mine : other;
    }
}
