package rainlap.water;

/**
 * How high water creeps up by itself between two faces that it wets (Jurin). It wets a lap; it does not by itself run out behind it, so
 * it is stated beside the driven rise and is no part of it. Good below about 2.7 mm, the capillary length of water.
 */
public final class Capillary {
    /** Of water at 20 C, IAPWS R1-76(2014) as evaluated; the release's table prints 72.74 mN/m. */
    static final double TENSION_N_PER_M = 0.072736;
    /** At 20 C (Tanaka 2001). */
    static final double WATER_KG_PER_M3 = 998.2067;
    /** The gap for which the height is stated: a sheet that lies close but is not stuck. */
    static final double STATED_GAP_MM = 0.5;

    private Capillary() {}

    /**
     * The height in mm between two plates this far apart, at 20 C and fully wetted.
     *
     * @throws IllegalArgumentException if the gap is not above zero
     */
    public static double betweenPlatesMm(double gapMm) {
        return betweenPlatesMm(gapMm, TENSION_N_PER_M, WATER_KG_PER_M3, Head.GRAVITY_M_PER_S2);
    }

    static double betweenPlatesMm(double gapMm, double tensionNPerM, double waterKgPerM3, double gravityMPerS2) {
        if (!(gapMm > 0)) {
            throw new IllegalArgumentException("a gap is above zero, not " + gapMm);
        }
        return 2 * tensionNPerM / (waterKgPerM3 * gravityMPerS2 * gapMm / 1000) * 1000;
    }
}
