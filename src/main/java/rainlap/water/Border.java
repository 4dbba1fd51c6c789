package rainlap.water;

/**
 * An edge of something as the sweep meets it.
 *
 * @param owner the piece's number, or one of the codes below
 * @param enters whether the owner lies above the line
 */
record Border(Line line, int owner, boolean enters) {
    static final int OUTLINE = -1;
    private static final int FIRST_OPENING = -2;
    private static final int FIRST_PIPE = -1_000_000_000;

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
