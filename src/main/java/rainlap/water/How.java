package rainlap.water;

/**
 * How water came where it is. There is one of each in a {@link Coat}.
 *
 * @param move what it did
 * @param under the piece it got under, or left by; -1 if none
 */
record How(Move move, int under) {
    static final How RAIN = new How(Move.RAIN, -1);

    /** The moves of the package description. */
    enum Move {
        RAIN, FALL, LIFT, PUSH, OVERRUN, ALONG, LEDGE, SPREAD, PIPE
    }
}
