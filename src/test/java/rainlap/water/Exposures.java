package rainlap.water;

import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.wall.Exposure;

/** Exposures that state only what a test is about. */
final class Exposures {
    private Exposures() {}

    static Exposure wind(double mPerS) {
        return of(OptionalDouble.of(mPerS), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    static Exposure pressure(double pa) {
        return of(OptionalDouble.empty(), OptionalDouble.of(pa), OptionalDouble.empty(), OptionalDouble.empty());
    }

    static Exposure towing(double kmPerH) {
        return of(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(kmPerH));
    }

    static Exposure windAndTowing(double mPerS, double kmPerH) {
        return of(OptionalDouble.of(mPerS), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(kmPerH));
    }

    static Exposure pressureAndTowing(double pa, double kmPerH) {
        return of(OptionalDouble.empty(), OptionalDouble.of(pa), OptionalDouble.empty(), OptionalDouble.of(kmPerH));
    }

    /** The same with rain. */
    static Exposure rain(double mmPerH, Exposure x) {
        return of(x.windMPerS(), x.pressurePa(), OptionalDouble.of(mmPerH), x.towingKmPerH());
    }

    private static Exposure of(OptionalDouble wind, OptionalDouble pressure, OptionalDouble rain, OptionalDouble towing) {
        return new Exposure(wind, pressure, Optional.empty(), rain, towing, Optional.empty(), Optional.empty(), OptionalDouble.empty(),
                Optional.empty());
    }
}
