package rainlap.wall;

import java.util.Optional;
import java.util.OptionalDouble;

/** Wind, rain, travel, temperature and sun as the file states them; nothing is assumed here. */
public record Exposure(OptionalDouble windMPerS, OptionalDouble pressurePa, Optional<From> windFrom,
        OptionalDouble rainMmPerH, OptionalDouble towingKmPerH, Optional<From> leading,
        Optional<Span> temperatureC, OptionalDouble sunDays, Optional<String> road) {

    public static final Exposure UNSTATED = new Exposure(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(),
            OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(),
            Optional.empty());

    /** A side of the elevation as one faces it. */
    public enum From {
        LEFT, RIGHT, FRONT
    }

    /** Lowest and highest value. */
    public record Span(double lo, double hi) {}
}
