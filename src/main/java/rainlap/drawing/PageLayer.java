package rainlap.drawing;

import rainlap.material.MaterialKind;

/** What can be shown and hidden by itself on a page. */
public enum PageLayer {
    MEMBRANE("membrane"), LAPS("laps"), TAPES("tapes, corner pieces, collars"), FLASHINGS("flashings"), OPENINGS("openings, returns"),
    PENETRATIONS("ducts and pipes"), BATTENS("battens"), CLADDING("cladding"), TRIMS("trims"), WET("frame that gets wet"), NAMES("names"),
    DIMENSIONS("dimensions, levels"), WEAK("weak points");

    private final String words;

    PageLayer(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The name by which drawing and page find each other. */
    public String id() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    static PageLayer of(MaterialKind kind) {
        return switch (kind) {
            case MEMBRANE -> MEMBRANE;
            case TAPE, CORNER_PIECE, COLLAR, SEALANT -> TAPES;
            case FLASHING, FRAME -> FLASHINGS;
            case BATTEN -> BATTENS;
            case CLADDING -> CLADDING;
            case TRIM -> TRIMS;
        };
    }
}
