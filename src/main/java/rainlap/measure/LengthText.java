package rainlap.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths on the grid, in hundredths of a millimetre, as text in millimetres without a unit. */
public final class LengthText {
    private LengthText() {}

    /** With as many decimals as it has, at most two, and a true minus: {@code 90}, {@code 149.99}, {@code −12.5}. */
    public static String mm(long hundredths) {
        return signed(BigDecimal.valueOf(hundredths, 2).stripTrailingZeros());
    }

    /**
     * With as few decimals as still tell it from a limit as it is: 10607 beside 15000 is {@code 106}, 14999 beside 15000 is
     * {@code 149.99}.
     */
    public static String mmBeside(long hundredths, long limit) {
        BigDecimal exact = BigDecimal.valueOf(hundredths, 2), bar = BigDecimal.valueOf(limit, 2);
        for (int decimals = 0; decimals < 2; decimals++) {
            BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP);
            if (rounded.compareTo(bar) == exact.compareTo(bar)) {
                return signed(rounded.stripTrailingZeros());
            }
        }
        return mm(hundredths);
    }

    /** Rounded up to whole millimetres, for what is to be moved or cut: 2958 is {@code 30}. */
    public static String mmUp(long hundredths) {
        return signed(BigDecimal.valueOf(hundredths, 2).setScale(0, RoundingMode.CEILING));
    }

    private static String signed(BigDecimal v) {
        return v.signum() < 0 ? "\u2212" + v.negate().toPlainString() : v.toPlainString();
    }
}
