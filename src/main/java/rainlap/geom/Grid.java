package rainlap.geom;

/** The fixed grid: hundredths of a millimetre. */
public final class Grid {
    /** Grid units in one millimetre. */
    public static final long MM = 100;
    /** Largest absolute coordinate, in millimetres: ten kilometres. */
    public static final double LIMIT_MM = 10_000_000.0;

    private Grid() {}

    /** Millimetres to grid units, rounded half up; the caller has checked the range. */
    public static long of(double mm) {
        return Math.round(mm * MM);
    }

    /** Grid units to millimetres. */
    public static double mm(long units) {
        return units / (double) MM;
    }

    /** Whether a length in millimetres is finite and within the limit. */
    public static boolean holds(double mm) {
        return Double.isFinite(mm) && Math.abs(mm) <= LIMIT_MM;
    }
}
