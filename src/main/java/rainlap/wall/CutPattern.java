package rainlap.wall;

import java.util.Arrays;
import java.util.Optional;

/**
 * How a sheet is cut at an opening it covers, and so which flaps are left to return.
 *
 * <ul>
 * <li>{@code diagonal}: slit from corner to corner; four flaps, parted by the corner bisectors.
 * <li>{@code inverted-y}: cut along the head, slit down the middle and to both lower corners; jambs full height, a sill flap, no head
 * return.
 * <li>{@code i}: cut along head and sill, slit down the middle; jambs full height, nothing on sill and head, head flap free upwards.
 * <li>{@code flush}: cut round the edge; no return.
 * </ul>
 */
public enum CutPattern {
    DIAGONAL("diagonal"), INVERTED_Y("inverted-y"), I("i"), FLUSH("flush");

    private final String word;

    CutPattern(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether a flap is left on this side of the reveal. */
    public boolean leaves(Side side) {
        return switch (this) {
            case DIAGONAL -> true;
            case INVERTED_Y -> side != Side.HEAD;
            case I -> side.isJamb();
            case FLUSH -> false;
        };
    }

    public static Optional<CutPattern> find(String word) {
        return Arrays.stream(values()).filter(p -> p.word.equals(word)).findFirst();
    }
}
