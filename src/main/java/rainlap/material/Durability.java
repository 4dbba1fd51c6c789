package rainlap.material;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What wears a material, and what it wears. What is not stated is empty.
 *
 * @param metal file key {@code metal}: the metal it is made of or faced with, as {@code aluminium}; {@link Metal} knows its words
 * @param substance {@code substance}: what else it consists of, or the adhesive of a tape
 * @param uvDays {@code uv_days}: days in the sun before it must be covered
 * @param serviceC {@code service_c}: temperatures it works in
 * @param mesh {@code mesh}: whether it keeps insects out
 * @param rots {@code rots}: whether it rots when it stays wet
 */
public record Durability(
        Optional<String> metal,
        Optional<Substance> substance,
        OptionalDouble uvDays,
        Optional<TemperatureRange> serviceC,
        Optional<Boolean> mesh,
        Optional<Boolean> rots) {
    /** Nothing stated. */
    public static final Durability NONE =
            new Durability(Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** @throws IllegalArgumentException if the metal is blank or the days are not above zero */
    public Durability {
        if (metal.isPresent() && metal.get().isBlank()) {
            throw new IllegalArgumentException("metal must not be blank");
        }
        Check.aboveZero("uv_days", uvDays);
    }
}
