package rainlap.material;

import java.util.OptionalDouble;

/** Plausibility of the numbers of a material; messages name the key as files spell it. */
final class Check {
    private Check() {}

    static void aboveZero(String key, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() > 0 && Double.isFinite(value.getAsDouble()))) {
            throw new IllegalArgumentException(key + " must be above zero, not " + value.getAsDouble());
        }
    }

    static void notNegative(String key, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() >= 0 && Double.isFinite(value.getAsDouble()))) {
            throw new IllegalArgumentException(key + " must not be below zero, not " + value.getAsDouble());
        }
    }
}
