package rainlap.practice;

import java.math.BigDecimal;
import java.util.Objects;
import rainlap.source.Source;

/**
 * What one practice asks for one limit.
 *
 * @param limit what is limited
 * @param value the least allowed, in the limit's unit; infinite means that no value will do ({@link #isNever()})
 * @param orTaped the source accepts a taped joint instead of the lap
 * @param source who says so
 * @param spokenBy id of the practice that spoke: not the one asked where that one is silent
 * @param note what to know about the value: conditions of the source, how it was derived; may be empty
 * @param strict more than the value is asked, exactly the value does not do
 */
public record LimitValue(
        Limit limit, double value, boolean orTaped, Source source, String spokenBy, String note, boolean strict) {

    /** @throws IllegalArgumentException if the value is not above zero */
    public LimitValue {
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(note, "note");
        if (!(value > 0)) {
            throw new IllegalArgumentException(limit.id() + ": a limit is above zero, not " + value);
        }
        if (spokenBy.isBlank()) {
            throw new IllegalArgumentException(limit.id() + ": somebody must have said it");
        }
    }

    /** A value that is met by exactly itself, as nearly all are. */
    public LimitValue(Limit limit, double value, boolean orTaped, Source source, String spokenBy, String note) {
        this(limit, value, orTaped, source, spokenBy, note, false);
    }

    /** Whether no value will do: a lap that is never long enough to go without tape. */
    public boolean isNever() {
        return Double.isInfinite(value);
    }

    /**
     * The value in hundredths of a millimetre; {@link Long#MAX_VALUE} where it {@link #isNever() never} is enough, so that a
     * comparison with a measured length comes out right.
     *
     * @throws IllegalStateException for an angle or a factor
     */
    public long hundredths() {
        if (!limit.isLength()) {
            throw new IllegalStateException(limit.id() + " is no length");
        }
        return isNever() ? Long.MAX_VALUE : Math.round(value * 100);
    }

    /** Whether a measured value, in the limit's own unit, is enough. */
    public boolean isMetBy(double measured) {
        return strict ? measured > value : measured >= value;
    }

    /** The bare number as text: {@code 150}, {@code 62.5}, or {@code never}. */
    public String number() {
        if (value == Math.rint(value) && value < Integer.MAX_VALUE) {
            return Integer.toString((int) value);
        }
        return isNever() ? "never" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** Number and unit as text: {@code 150 mm}, {@code over 3 x}, {@code 150 mm or taped}, {@code never}. */
    public String text() {
        if (isNever()) {
            return number();
        }
        return (strict ? "over " : "") + number() + " " + limit.unit() + (orTaped ? " or taped" : "");
    }
}
