package rainlap.water;

/** Where a walk from the bottom of a slab upwards has got to: what pieces lie there, and whether there is a frame behind them. */
final class Zone {
    private final Pile.Source piles;
    private Pile pile;
    private boolean inside;
    private int pipes;
    private int pipe = -1;
    private int opening = -1;

    Zone(Pile.Source piles) {
        this.piles = piles;
        this.pile = piles.empty();
    }

    void cross(Border b) {
        if (b.owner() >= 0) {
            pile = b.above(pile, piles);
        } else if (b.owner() == Border.OUTLINE) {
            inside = b.enters();
        } else if (b.pipe() >= 0) {
            pipes += b.enters() ? 1 : -1;
            pipe = b.enters() ? b.pipe() : pipe;
        } else if (b.enters()) {
            opening = b.opening();
        } else if (opening == b.opening()) {
            opening = -1;
        }
    }

    boolean isInside() {
        return inside;
    }

    /** Whether a column of the slab before goes on here between two lines, but perhaps for its cells. */
    boolean isStill(Column before, Line lower, Line upper) {
        return before.pile == pile && before.opening == opening && before.pipe == pipeHere() && before.lower.isSame(lower) && before.upper.isSame(upper);
    }

    private int pipeHere() {
        return pipes > 0 ? pipe : -1;
    }

    Column column(Line lower, Line upper) {
        return new Column(pile, lower, upper, opening, pipeHere());
    }
}
