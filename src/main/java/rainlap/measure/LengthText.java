package rainlap.measure;

/** Lengths on the grid, in hundredths of a millimetre, as text in millimetres without a unit. */
public final class LengthText {
    private LengthText() {}

    /** With as many decimals as it has, at most two, and a true minus: {@code 90}, {@code 149.99}, {@code −12.5}. */
    public static String mm(long hundredths) {
        long size = Math.abs(hundredths), rest = size % 100;
        String decimals = rest == 0 ? "" : rest % 10 == 0 ? "." + rest / 10 : (rest < 10 ? ".0" : ".") + rest;
        return (hundredths < 0 ? "\u2212" : "") + size / 100 + decimals;
    }

    /**
     * With as few decimals as still tell it from a limit as it is: 10607 beside 15000 is {@code 106}, 14999 beside 15000 is
     * {@code 149.99}.
     */
    public static String mmBeside(long hundredths, long limit) {
        for (long step = 100; step > 1; step /= 10) {
            long rounded = halfAwayFromZero(hundredths, step);
            if (Long.compare(rounded, limit) == Long.compare(hundredths, limit)) {
                return mm(rounded);
            }
        }
        return mm(hundredths);
    }

    private static long halfAwayFromZero(long v, long step) {
        long size = (Math.abs(v) + step / 2) / step * step;
        return v < 0 ? -size : size;
    }

    /** Rounded up to whole millimetres, for what is to be moved or cut: 2958 is {@code 30}. */
    public static String mmUp(long hundredths) {
        return mm(-Math.floorDiv(-hundredths, 100) * 100);
    }
}
