package rainlap.rule;

import rainlap.practice.LimitValue;
import rainlap.source.Known;
import rainlap.source.Source;

/** What a practice asks, in words for findings. */
public final class Asked {
    /** What stands for a document where a practice of ours chose among published values. */
    private static final String CHOSEN = "Chosen from published values";

    private Asked() {}

    /** For a row of a table, without a unit: {@code 150}, {@code 150, or tape}, {@code over 3}, {@code always}. */
    public static String briefly(LimitValue v) {
        return v.isNever() ? "always" : (v.strict() ? "over " : "") + v.number() + (v.orTaped() ? ", or tape" : "");
    }

    /**
     * As a sentence of a finding: {@code ABCB Housing Provisions 2022, 7.5.2(3)(c), asks for 150, or tape.}; for a chosen value
     * {@code 150 is asked for (chosen from published values: as …).}; {@code Common practice asks for 25.}
     */
    public static String sentence(LimitValue v, String what) {
        Source s = v.source();
        if (s.known() == Known.COMMON_PRACTICE) {
            return "Common practice asks for " + what + ".";
        }
        String titled = s.edition().isBlank() ? s.document() : s.document() + " " + s.edition();
        if (s.known() == Known.DERIVED) {
            return what.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + what.substring(1) + " is asked for ("
                    + (titled.equals(CHOSEN) ? "chosen from published values" : titled) + ": " + s.clause() + ").";
        }
        return titled + (s.clause().isBlank() ? "" : ", " + s.clause() + ",") + " asks for " + what + ".";
    }

    /** {@link #sentence(LimitValue, String)} with the bare number. */
    public static String sentence(LimitValue v) {
        return sentence(v, briefly(v));
    }
}
