package rainlap.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One cell of a list: a text, a number, or nothing.
 *
 * <p>A text that a spreadsheet would run as a formula begins with an apostrophe here: one whose first character that is no blank is
 * {@code =}, {@code +}, {@code -} or {@code @}, also in full width, or that begins with a tab or a line end. Numbers are ours and stay
 * numbers, also below 0.
 */
record Cell(String text, Optional<BigDecimal> number) {
    static final Cell NOTHING = new Cell("", Optional.empty());

    private static final String STARTS_FORMULA = "=+-@\uff1d\uff0b\uff0d\uff20";
    private static final int DECIMALS = 4;

    static Cell of(String text) {
        return new Cell((isFormula(text) ? "'" : "") + PlainText.of(text), Optional.empty());
    }

    private static boolean isFormula(String text) {
        int first = 0;
        while (first < text.length() && isBlank(text.charAt(first))) {
            if ("\t\r\n".indexOf(text.charAt(first)) >= 0) {
                return true;
            }
            first++;
        }
        return first < text.length() && STARTS_FORMULA.indexOf(text.charAt(first)) >= 0;
    }

    /** What a reader may skip before it looks for a formula. */
    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c) || Character.getType(c) == Character.FORMAT;
    }

    static Cell of(Optional<String> text) {
        return text.map(Cell::of).orElse(NOTHING);
    }

    static Cell of(boolean yes) {
        return of(yes ? "yes" : "no");
    }

    static Cell of(int number) {
        return of(BigDecimal.valueOf(number));
    }

    static Cell of(OptionalDouble number) {
        return number.isEmpty() ? NOTHING : of(BigDecimal.valueOf(number.getAsDouble()).setScale(DECIMALS, RoundingMode.HALF_EVEN));
    }

    /** Grid units as millimetres. */
    static Cell mm(long hundredths) {
        return of(BigDecimal.valueOf(hundredths, 2));
    }

    /** Without trailing zeros and without an exponent. */
    private static Cell of(BigDecimal number) {
        return new Cell("", Optional.of(new BigDecimal(number.stripTrailingZeros().toPlainString())));
    }
}
