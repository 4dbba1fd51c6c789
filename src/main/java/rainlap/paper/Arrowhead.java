package rainlap.paper;

/** A filled arrowhead: drawn, since the typeface has no arrows. */
public final class Arrowhead {

    /** Width at the back as a share of the length. */
    private static final double SLENDER = 0.5;

    private Arrowhead() {
    }

    /**
     * The head of an arrow that comes from a point.
     *
     * @param from any point behind the tip
     * @param length of the head in millimetres
     */
    public static Area of(PaperPoint tip, PaperPoint from, double length, Tone tone) {
        double whole = tip.distance(from);
        double dx = (from.x() - tip.x()) / whole * length;
        double dy = (from.y() - tip.y()) / whole * length;
        double half = SLENDER / 2;
        return Area.filled(PaperRegion.of(tip, tip.plus(dx - dy * half, dy + dx * half),
                tip.plus(dx + dy * half, dy - dx * half)), tone);
    }
}
