package rainlap.measure;

import java.math.BigDecimal;

/** Lengths on the grid as text. */
public final class Millimetres {
    private Millimetres() {}

    /** Hundredths of a millimetre as millimetres, exact, without unit or trailing zeros, with a true minus: {@code 49.99}, {@code −30}. */
    public static String text(long hundredths) {
        String digits = BigDecimal.valueOf(Math.abs(hundredths), 2).stripTrailingZeros().toPlainString();
        return hundredths < 0 ? "\u2212" + digits : digits;
    }
}
