package rainlap.water;

import java.util.OptionalDouble;
import rainlap.wall.Exposure;

/**
 * Heads of water and the pressures that hold them up. Water weighs 1000 kg/m3 and gravity is 9.80665 m/s2, both conventional, which
 * makes 9.80665 Pa a millimetre (NIST SP 811, appendix B.8, read in a transcription); air weighs 1.25 kg/m3 as EN 1991-1-4 recommends
 * (read in a secondary text).
 */
public final class Head {
    static final double GRAVITY_M_PER_S2 = 9.80665;
    static final double WATER_KG_PER_M3 = 1000;
    static final double AIR_KG_PER_M3 = 1.25;
    private static final double KM_PER_H_IN_M_PER_S = 3.6;
    /** A ten-thousandth of a grid unit: what arithmetic with doubles may add to an exact figure. */
    private static final double NOISE = 1e-4;

    private Head() {}

    /** The height of water, in mm, that a pressure in Pa holds up. */
    public static double mm(double pa) {
        return mm(pa, WATER_KG_PER_M3);
    }

    static double mm(double pa, double waterKgPerM3) {
        return 1000 * pa / (waterKgPerM3 * GRAVITY_M_PER_S2);
    }

    /** Rounded up to the grid: never less than the pressure in Pa lifts. */
    static long onGrid(double pa) {
        return (long) Math.ceil(100 * mm(pa) - NOISE);
    }

    /** The pressure, in Pa, of air brought to rest from a speed in m/s. */
    public static double stagnationPa(double mPerS) {
        return stagnationPa(mPerS, AIR_KG_PER_M3);
    }

    static double stagnationPa(double mPerS, double airKgPerM3) {
        return airKgPerM3 / 2 * mPerS * mPerS;
    }

    /** Wind and travel in m/s, added where both are stated; empty where neither is. */
    static OptionalDouble speedMPerS(Exposure x) {
        if (x.windMPerS().isEmpty() && x.towingKmPerH().isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(x.windMPerS().orElse(0) + x.towingKmPerH().orElse(0) / KM_PER_H_IN_M_PER_S);
    }
}
