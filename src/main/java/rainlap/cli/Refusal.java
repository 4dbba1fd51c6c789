package rainlap.cli;

import java.util.List;
import rainlap.drawing.Sheets;

/** A command that cannot go on, for a reason that the person at the terminal can do something about. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    static final String SEVERAL = "give it as several elevations";

    private final ExitStatus status;
    private final String hint;

    private Refusal(ExitStatus status, String what, String hint) {
        super(what, null, false, false);
        this.status = status;
        this.hint = hint;
    }

    /** The command line asks for something that cannot be done. */
    static Refusal usage(String what, String hint) {
        return new Refusal(ExitStatus.USAGE, what, hint);
    }

    /** A wall that no sheet can hold. */
    static Refusal tooLarge(String file, Sheets.TooLarge e) {
        return usage(file + ": " + e.getMessage(), SEVERAL + ", or check it with --no-sheet");
    }

    /** A word that is none of those known. */
    static Refusal unknown(String kind, String word, List<String> known) {
        return usage("there is no " + kind + " " + Suggestion.quoted(word),
                Suggestion.of(word, known).orElse("known are " + String.join(", ", known)));
    }

    ExitStatus status() {
        return status;
    }

    /** What to do, or empty. */
    String hint() {
        return hint;
    }
}
