package rainlap.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Litres per hour and shares of them as text, rounded to what such a reckoning can tell. */
public final class LitresText {
    private static final MathContext TWO_FIGURES = new MathContext(2, RoundingMode.HALF_UP);
    private static final double LEAST = 0.05;

    private LitresText() {}

    /** Two significant figures and at most one decimal: {@code 240}, {@code 32}, {@code 5.5}; less than half a tenth is {@code <0.1}. */
    public static String perHour(double litres) {
        if (litres > 0 && litres < LEAST) {
            return "<0.1";
        }
        BigDecimal rounded = BigDecimal.valueOf(litres).round(TWO_FIGURES).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Whole percent: {@code 71%}; what is some but less than half of one is {@code <1%}. */
    public static String percent(double part, double whole) {
        double share = whole == 0 ? 0 : 100 * part / whole;
        return share > 0 && share < 0.5 ? "<1%" : Math.round(share) + "%";
    }
}
