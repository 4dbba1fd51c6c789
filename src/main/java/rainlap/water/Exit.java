package rainlap.water;

/**
 * Where water that runs along a line gets away from it.
 *
 * @param cell what it comes into; null where it leaves the elevation
 * @param cost of getting in; along a closed line always nothing
 * @param from the left end of its stream there, one grid unit wide
 * @param level how high it stands there; NaN for all of the cell
 * @param over the piece under which it ran, or off whose end it comes; -1 if none
 * @param line where it gets away, in the frame of the ground it ran on
 * @param out how it leaves the elevation; null where it comes into a cell
 */
record Exit(Cell cell, int cost, long from, double level, int over, Line line, Out out) {
    /** How water leaves: off the foot, into an opening, over a side of the outline, or clear of the wall in front of an opening. */
    enum Out {
        FOOT, OPENING, SIDE, CLEAR
    }

    static Exit into(Cell cell, int cost, long from, double level, int over, Line line) {
        return new Exit(cell, cost, from, level, over, line, null);
    }

    static Exit leaving(Out out) {
        return new Exit(null, 0, 0, 0, -1, null, out);
    }

    boolean leaves() {
        return cell == null;
    }

    /** The water it brings into the next cell. */
    Wet wet(Wet source, How how) {
        double left = Double.isNaN(level) ? cell.upper.at(from) : level, right = Double.isNaN(level) ? cell.upper.at(from + 1) : level;
        return new Wet(cell, true, source.cost() + cost, from, from + 1, left, right, source, how, line);
    }
}
