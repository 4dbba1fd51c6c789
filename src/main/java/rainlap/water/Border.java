package rainlap.water;

/**
 * An edge of something as the sweep meets it.
 *
 * @param owner the piece's number, or one of the codes below
 * @param enters whether the owner lies above the line
 */
record Border(Line line, int owner, boolean enters) {
    static final int OUTLINE = -1;
    static final int PIPE = -2;
    private static final int FIRST_OPENING = -3;

    static int ofOpening(int number) {
        return FIRST_OPENING - number;
    }

    /** The number of the opening that owns this border, or less than 0. */
    int opening() {
        return owner <= FIRST_OPENING ? FIRST_OPENING - owner : -1;
    }
}
