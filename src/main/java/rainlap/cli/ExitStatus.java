package rainlap.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** How a run ended; the number is the process's exit status. */
public enum ExitStatus {
    DONE(0, "ran to its end, whatever was found"),
    CRASHED(1, "Rainlap itself failed"),
    USAGE(2, "the command line is wrong, or an output cannot be written"),
    BAD_INPUT(3, "an input cannot be read or is invalid; nothing was checked or written"),
    WEAK_POINTS(4, "with --strict: there are weak points"),
    INCOMPLETE(5, "finished, but a rule failed, so that part was not checked");

    private final int code;
    private final String meaning;

    ExitStatus(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    /** The number, 0 to 5. */
    public int code() {
        return code;
    }

    /** When a run ends so. */
    public String meaning() {
        return meaning;
    }

    /** Numbers and meanings up to the last one that a command can end in. */
    static Map<String, String> forHelp(ExitStatus last) {
        Map<String, String> list = new LinkedHashMap<>();
        Arrays.stream(values()).filter(s -> s.compareTo(last) <= 0).forEach(s -> list.put(" " + s.code, s.meaning));
        return list;
    }
}
