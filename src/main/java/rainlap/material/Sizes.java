package rainlap.material;

import java.util.OptionalDouble;

/**
 * The sizes a material is sold or set out in. A size that is not known is empty.
 *
 * @param rollWidthMm file key {@code roll_width}: of a membrane
 * @param rollLengthM {@code roll_length_m}: of a membrane or tape
 * @param widthMm {@code width}: across a tape, batten, trim or bead; the width of a run that gives none itself
 * @param coverWidthMm {@code cover_width}: what one cladding sheet adds to the wall
 * @param sideLapMm {@code side_lap}: of one cladding sheet over the next
 */
public record Sizes(
        OptionalDouble rollWidthMm,
        OptionalDouble rollLengthM,
        OptionalDouble widthMm,
        OptionalDouble coverWidthMm,
        OptionalDouble sideLapMm) {
    /** Nothing known. */
    public static final Sizes NONE = new Sizes(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** @throws IllegalArgumentException if a size is not finite and above zero */
    public Sizes {
        Check.aboveZero("roll_width", rollWidthMm);
        Check.aboveZero("roll_length_m", rollLengthM);
        Check.aboveZero("width", widthMm);
        Check.aboveZero("cover_width", coverWidthMm);
        Check.aboveZero("side_lap", sideLapMm);
    }

    /** Only a width, in mm. */
    public static Sizes ofWidth(double widthMm) {
        return new Sizes(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(widthMm), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** A roll, width in mm and length in m. */
    public static Sizes ofRoll(double rollWidthMm, double rollLengthM) {
        return new Sizes(
                OptionalDouble.of(rollWidthMm), OptionalDouble.of(rollLengthM),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
