package rainlap.water;

/** An edge of something as the sweep meets it, slab after slab. */
final class Border {
    static final int OUTLINE = -1;
    private static final int FIRST_OPENING = -2;
    private static final int FIRST_PIPE = -1_000_000_000;

    private final Line line;
    private final int owner;
    private final boolean enters;
    /** The pile below it in the slab where it was crossed last, and what that was above. */
    private Pile below;
    private Pile above;

    /**
     * @param owner the piece's number, or one of the codes above
     * @param enters whether the owner lies above the line
     */
    Border(Line line, int owner, boolean enters) {
        this.line = line;
        this.owner = owner;
        this.enters = enters;
    }

    Line line() {
        return line;
    }

    int owner() {
        return owner;
    }

    boolean enters() {
        return enters;
    }

    /** The pile above a piece's edge. Mostly that below is the same as in the slab before. */
    Pile above(Pile now, Pile.Source piles) {
        if (now != below) {
            above = piles.toggle(now, owner);
            below = now;
        }
        return above;
    }

    static int ofOpening(int number) {
        return FIRST_OPENING - number;
    }

    static int ofPipe(int number) {
        return FIRST_PIPE - number;
    }

    /** The number of the opening that owns this border, or -1. */
    int opening() {
        return owner <= FIRST_OPENING && owner > FIRST_PIPE ? FIRST_OPENING - owner : -1;
    }

    /** The number of the penetration that owns it, or -1. */
    int pipe() {
        return owner <= FIRST_PIPE ? FIRST_PIPE - owner : -1;
    }
}
