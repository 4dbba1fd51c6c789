package rainlap.material;

import java.util.Arrays;
import java.util.Optional;

/** What a material is, as far as water is concerned. */
public enum MaterialKind {
    MEMBRANE("membrane", Layer.WRAP),
    TAPE("tape", Layer.WRAP),
    FLASHING("flashing", Layer.WRAP),
    BATTEN("batten", Layer.CAVITY),
    CLADDING("cladding", Layer.FACE),
    TRIM("trim", Layer.FACE),
    SEALANT("sealant", Layer.WRAP),
    COLLAR("collar", Layer.WRAP),
    CORNER_PIECE("corner-piece", Layer.WRAP),
    /** The flange of a window or door. */
    FRAME("frame", Layer.WRAP);

    private final String word;
    private final Layer layer;

    MaterialKind(String word, Layer layer) {
        this.word = word;
        this.layer = layer;
    }

    /** The word in files: {@code corner-piece}. */
    public String word() {
        return word;
    }

    /** The kind whose {@link #word()} is exactly {@code word}. */
    public static Optional<MaterialKind> find(String word) {
        return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
    }

    /** The barrier its pieces belong to. */
    public Layer layer() {
        return layer;
    }

    /** Whether its pieces are sheets that form joints with one another; tapes cover joints, they do not form them. */
    public boolean isSheetLike() {
        return switch (this) {
            case MEMBRANE, FLASHING, COLLAR, CORNER_PIECE, CLADDING -> true;
            case TAPE, BATTEN, TRIM, SEALANT, FRAME -> false;
        };
    }

    /** Whether it is soft enough to be folded round a corner or into a reveal on site. */
    public boolean folds() {
        return switch (this) {
            case MEMBRANE, TAPE, COLLAR, CORNER_PIECE -> true;
            case FLASHING, BATTEN, CLADDING, TRIM, SEALANT, FRAME -> false;
        };
    }

    /** How its pieces hold where neither piece nor material says: tapes and self-adhered corner pieces stick, the rest is loose. */
    public Bond defaultBond() {
        return switch (this) {
            case TAPE, CORNER_PIECE -> Bond.FULL;
            case MEMBRANE, FLASHING, BATTEN, CLADDING, TRIM, SEALANT, COLLAR, FRAME -> Bond.LOOSE;
        };
    }
}
