package rainlap.material;

import java.util.Arrays;
import java.util.Optional;

/** Which ends of a flashing are turned up, seen from outside. */
public enum EndDams {
    BOTH("both", true, true),
    LEFT("left", true, false),
    RIGHT("right", false, true),
    NONE("none", false, false);

    private final String word;
    private final boolean atLeft;
    private final boolean atRight;

    EndDams(String word, boolean atLeft, boolean atRight) {
        this.word = word;
        this.atLeft = atLeft;
        this.atRight = atRight;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** Whether the left end is turned up. */
    public boolean atLeft() {
        return atLeft;
    }

    /** Whether the right end is turned up. */
    public boolean atRight() {
        return atRight;
    }

    /** The value whose {@link #word()} is exactly {@code word}. */
    public static Optional<EndDams> find(String word) {
        return Arrays.stream(values()).filter(e -> e.word.equals(word)).findFirst();
    }
}
