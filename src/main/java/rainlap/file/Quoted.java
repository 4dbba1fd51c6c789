package rainlap.file;

import java.math.BigDecimal;

/** Words and numbers of a file as messages repeat them. */
final class Quoted {
    private static final int LONGEST = 40;

    private Quoted() {}

    /** In quotation marks, cut when long, safe to print. */
    static String text(String s) {
        StringBuilder out = new StringBuilder("\"");
        s.codePoints().limit(LONGEST).forEach(c -> out.append(Excerpt.shown(c)));
        return out.append(s.codePointCount(0, s.length()) > LONGEST ? "…\"" : "\"").toString();
    }

    /** Without a needless fraction: 150, 62.5; very large and very small ones with an exponent. */
    static String number(double d) {
        if (!Double.isFinite(d) || d != 0 && (Math.abs(d) >= 1e12 || Math.abs(d) < 1e-6)) {
            return Double.toString(d);
        }
        String plain = BigDecimal.valueOf(d).stripTrailingZeros().toPlainString();
        return d == 0 ? "0" : plain;
    }
}
