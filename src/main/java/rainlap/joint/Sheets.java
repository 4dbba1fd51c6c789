package rainlap.joint;

import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.wall.Piece;

/** Who forms joints and who covers them. */
public final class Sheets {
    private Sheets() {}

    /** An adhered strip: it covers joints and closes gaps, and forms no joints itself. */
    public static boolean isStrip(Face f) {
        return mayBeStrip(f.kind()) && f.piece().bond().isFull();
    }

    /** The same of a piece, wherever it lies. */
    public static boolean isStrip(Piece p) {
        return mayBeStrip(p.material().kind()) && p.bond().isFull();
    }

    /** Whether pieces of a kind are strips where they are stuck over their whole face. */
    public static boolean mayBeStrip(MaterialKind kind) {
        return switch (kind) {
            case TAPE, CORNER_PIECE, COLLAR -> true;
            case MEMBRANE, FLASHING, BATTEN, CLADDING, TRIM, SEALANT, FRAME -> false;
        };
    }

    /** A sheet that forms joints with others of its barrier. */
    public static boolean isSheet(Face f) {
        return f.kind().isSheetLike() && !isStrip(f);
    }

    /** A tape that is not stuck over its whole face: it covers nothing, and its upper edge catches water. */
    static boolean isLooseTape(Face f) {
        return f.kind() == MaterialKind.TAPE && !f.piece().bond().isFull();
    }

    /** Whether it keeps rain off what lies beneath: a sheet or an adhered strip of the wrap. */
    public static boolean covers(Face f) {
        return isStrip(f) || isSheet(f) && f.kind() != MaterialKind.CLADDING;
    }

    static boolean sameBarrier(Face a, Face b) {
        return a.piece().material().layer() == b.piece().material().layer();
    }

    static boolean seals(Face f, Edge edge) {
        return f.piece().bond().seals(edge);
    }
}
