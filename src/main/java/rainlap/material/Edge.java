package rainlap.material;

import java.util.Arrays;
import java.util.Optional;

/** An edge of a piece as drawn, seen from outside. */
public enum Edge {
    TOP("top"),
    BOTTOM("bottom"),
    LEFT("left"),
    RIGHT("right");

    private final String word;

    Edge(String word) {
        this.word = word;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** The edge whose {@link #word()} is exactly {@code word}. */
    public static Optional<Edge> find(String word) {
        return Arrays.stream(values()).filter(e -> e.word.equals(word)).findFirst();
    }
}
