package rainlap.water;

/**
 * Water that enters a cell sideways, pushed by the wind or overrunning a lap. Where it enters and how far it gets run straight from its lowest to
 * its highest place.
 *
 * @param low and high: between which heights
 * @param lowAt and highAt: the x where it enters, at these heights
 * @param lowReach and highReach: the x it can get to
 * @param behind whether it has got behind what it was on: where it did, it is running too
 * @param line the line by which it enters, in its source's frame
 * @param onto the lower sheet of a lap that is overrun, whose upper one lies over the cell; -1 for a push
 */
record Push(Cell cell, int cost, boolean right, double low, double high, double lowAt, double highAt, double lowReach, double highReach,
        boolean behind, int onto, Wet source, How how, Line line) implements Driven {
    /** Further than any wall is wide. */
    static final double WITHOUT_END = 1e12;
    /** How many numbers are remembered of one. */
    static final int ROW = 7;

    @Override
    public boolean isKnown() {
        Been been = cell.beenOrNull();
        return been != null && been.covers(this);
    }

    @Override
    public void go(Winds winds) {
        winds.pushes().push(this);
    }

    /** Where it gets to, but not where it came from: what is remembered of it. */
    double[] row() {
        return new double[] {sort(), low, high, lowAt, highAt, lowReach, highReach};
    }

    /** What must be the same for one to cover another; then, in two bits, what it costs, and last whether it is driven only. */
    private int sort() {
        return onto + 1 << 4 | (right ? 8 : 0) | cost << 1 | (behind ? 0 : 1);
    }

    @Override
    public boolean isOverrun() {
        return onto >= 0;
    }

    double at(double y) {
        return between(y, low, high, lowAt, highAt);
    }

    double reach(double y) {
        return between(y, low, high, lowReach, highReach);
    }

    private static double between(double y, double low, double high, double atLow, double atHigh) {
        return atLow + (y - low) * (atHigh - atLow) / (high - low);
    }

    /** How far beyond x it can still get at a height; less than 0 if it does not get there. */
    double beyond(double x, double y) {
        return right ? reach(y) - x : x - reach(y);
    }

    /** Whether it tells nothing new beside what is remembered of another one in the same cell. */
    boolean isCovered(double[] rows, int at) {
        int other = (int) rows[at], own = sort();
        return other >> 3 == own >> 3 && (other & 6) <= (own & 6) && (other & 1) <= (own & 1) && rows[at + 1] <= low && rows[at + 2] >= high
                && isWithin(rows, at, low) && isWithin(rows, at, high);
    }

    private boolean isWithin(double[] rows, int at, double y) {
        double otherAt = between(y, rows[at + 1], rows[at + 2], rows[at + 3], rows[at + 4]), otherReach = between(y, rows[at + 1], rows[at + 2], rows[at + 5], rows[at + 6]);
        return right ? otherAt <= at(y) && otherReach >= reach(y) : otherAt >= at(y) && otherReach <= reach(y);
    }

    /** What of it lies between two heights. */
    Push between(double from, double to) {
        return from == low && to == high ? this
                : new Push(cell, cost, right, from, to, at(from), at(to), reach(from), reach(to), behind, onto, source, how, line);
    }

    /** It, but no further than a line from one x to another. */
    Push upTo(double lowX, double highX) {
        return new Push(cell, cost, right, low, high, lowAt, highAt, lowX, highX, behind, onto, source, how, line);
    }

    /** The same water on its way through the next cell, which it enters along a line from one place to another. */
    Push into(Cell next, int nextCost, boolean toRight, double from, double to, double shiftX, double shiftY, double fromX, double toX,
            boolean isBehind, Wet here, How way, Line where) {
        double turn = toRight == right ? 1 : -1;
        double fromReach = fromX + turn * (reach(from) - fromX), toReach = toX + turn * (reach(to) - toX);
        return new Push(next, nextCost, toRight, from + shiftY, to + shiftY, fromX + shiftX, toX + shiftX, fromReach + shiftX, toReach + shiftX,
                isBehind, onto, here, way, where);
    }
}
