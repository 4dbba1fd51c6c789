package rainlap.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Angles as text with their sign: {@code 15°}, {@code 4.99°}. */
public final class AngleText {
    private AngleText() {}

    /** At most two decimals, cut off and not rounded: what is too little never reads as enough. */
    public static String deg(double degrees) {
        return BigDecimal.valueOf(degrees).setScale(2, RoundingMode.DOWN).stripTrailingZeros().toPlainString() + "°";
    }
}
