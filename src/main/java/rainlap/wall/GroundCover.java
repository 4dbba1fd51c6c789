package rainlap.wall;

import java.util.Arrays;
import java.util.Optional;

/** What the ground under a wall is, as far as codes let cladding come nearer to it. */
public enum GroundCover {
    SOIL("soil", "ground"),
    /** Sandy soil, or where little rain falls. */
    SANDY("sandy", "sandy ground"),
    /** Impermeable paving that slopes away from the wall. */
    PAVED("paved", "sloping paving");

    private final String word;
    private final String inWords;

    GroundCover(String word, String inWords) {
        this.word = word;
        this.inWords = inWords;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** The name in a sentence. */
    public String inWords() {
        return inWords;
    }

    public static Optional<GroundCover> find(String word) {
        return Arrays.stream(values()).filter(c -> c.word.equals(word)).findFirst();
    }
}
