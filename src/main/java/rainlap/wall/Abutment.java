package rainlap.wall;

import java.util.Arrays;
import java.util.Optional;
import rainlap.geom.Segment;

/**
 * What is built against the wall and meets it along a line: rain splashes up from it, and stands on it, as on the ground.
 *
 * @param line along its upper side, from left to right
 */
public record Abutment(Kind kind, Segment line) {
    /** What it is. */
    public enum Kind {
        DECK("deck"), ROOF("roof");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word in files and sentences. */
        public String word() {
            return word;
        }

        public static Optional<Kind> find(String word) {
            return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
        }
    }

    /** @throws IllegalArgumentException if the line does not run from left to right */
    public Abutment {
        if (line.a().x() >= line.b().x()) {
            throw new IllegalArgumentException("the line of a " + kind.word() + " runs from left to right, not " + line);
        }
    }
}
