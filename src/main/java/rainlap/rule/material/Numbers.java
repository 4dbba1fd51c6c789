package rainlap.rule.material;

import java.math.BigDecimal;

/** Days and degrees in sentences. */
final class Numbers {
    private Numbers() {}

    /** As short as it goes, with a true minus: {@code 28}, {@code 12.5}, {@code −20}. */
    static String text(double v) {
        return BigDecimal.valueOf(v).stripTrailingZeros().toPlainString().replace("-", "\u2212");
    }
}
