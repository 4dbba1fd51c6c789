package rainlap.water;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers of assumptions as text. */
final class Figures {
    private Figures() {}

    /** Rounded to at most so many decimals, without trailing zeros: {@code 308.64}, {@code 45}. */
    static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
