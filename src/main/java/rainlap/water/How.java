package rainlap.water;

/**
 * How water came where it is.
 *
 * @param move what it did
 * @param under the piece it got under, or left by; -1 if none
 * @param line the line it crossed, or along which it came, in its cell's frame; null for rain
 */
record How(Move move, int under, Line line) {
    static final How RAIN = new How(Move.RAIN, -1, null);

    /** The moves of the package description. */
    enum Move {
        RAIN, FALL, LIFT, PUSH, OVERRUN, ALONG, LEDGE, SPREAD, PIPE
    }
}
