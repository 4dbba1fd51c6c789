package rainlap.wall;

import java.util.Arrays;
import java.util.Optional;
import rainlap.material.Layer;

/** When the check is made: at the hold point before cladding, or on the finished wall. */
public enum Stage {
    WRAP("wrap"), FINISHED("finished");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether pieces of a layer are looked at. */
    public boolean sees(Layer layer) {
        return this == FINISHED || layer == Layer.WRAP;
    }

    /** The stage that a wall is drawn for: finished where any piece of the cavity or the face is drawn. */
    public static Stage drawn(Elevation e) {
        return e.pieces().stream().allMatch(p -> WRAP.sees(p.material().layer())) ? WRAP : FINISHED;
    }

    public static Optional<Stage> find(String word) {
        return Arrays.stream(values()).filter(s -> s.word.equals(word)).findFirst();
    }
}
