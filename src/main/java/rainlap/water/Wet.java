package rainlap.water;

import rainlap.geom.Box;

/**
 * Water in a cell: everything between two x, from a top edge down to the cell's lower line.
 *
 * @param running else driven
 * @param leftTop and rightTop: how high it stands at {@code from} and {@code to}
 * @param source the water it came from; null for rain
 * @param how how it came
 * @param line the line it crossed, or along which it came, in its source's frame; null where {@link #crossed} can tell without, and for rain
 * @param steps how many steps its way is told by, about
 */
record Wet(Cell cell, boolean running, byte cost, int from, int to, double leftTop, double rightTop, Wet source, How how, Line line, short steps) implements Coming {
    /** Places are within {@link rainlap.geom.Grid#LIMIT_MM}, so an int holds them; a wall has some eighty of these a piece. */
    Wet(Cell cell, boolean running, int cost, long from, long to, double leftTop, double rightTop, Wet source, How how, Line line) {
        this(cell, running, (byte) cost, Math.toIntExact(from), Math.toIntExact(to), leftTop, rightTop, source, how, line, steps(cell, source, how));
    }

    private static short steps(Cell cell, Wet source, How how) {
        boolean tells = source != null && (how.under() >= 0 || cell.on != source.cell.on || how.move() != source.how.move());
        return source == null ? 0 : (short) Math.min(Short.MAX_VALUE, source.steps + (tells ? 1 : 0));
    }

    static Wet rain(Cell c) {
        return new Wet(c, true, 0, c.x0, c.x1, c.upper.at(c.x0), c.upper.at(c.x1), null, How.RAIN, null);
    }

    /**
     * The line it crossed, or along which it came, in its source's frame; null for rain, and where it spread sideways. What falls crossed its source's lower line,
     * unless another is named.
     */
    Line crossed() {
        if (line != null || how.move() != How.Move.FALL) {
            return line;
        }
        // Stretches that touch are one and tell the leftmost's way: a part of that may lie beyond its source.
        int a = Math.max(from, source.from), b = Math.min(to, source.to);
        return a < b ? source.cell.lower.part(a, b) : source.cell.lower.part(from, to);
    }

    /** It, told as having crossed all of a level line that two others crossed parts of. */
    Wet along(Wet one, Wet other) {
        Line a = one.crossed(), b = other.crossed();
        return a == null || b == null || !a.isLevel() || !a.isSame(b) ? this
                : new Wet(cell, running, cost, from, to, leftTop, rightTop, source, how, Line.level(a.ay(), Math.min(a.ax(), b.ax()), Math.max(a.bx(), b.bx())));
    }

    /** How high it stands at x, within its ends. */
    double top(double x) {
        return to == from ? leftTop : leftTop + (x - from) * (rightTop - leftTop) / (to - from);
    }

    /** Whether it leaves nothing new of another in the same cell. */
    boolean covers(Wet o) {
        return cost <= o.cost && (running || !o.running) && from <= o.from && to >= o.to && top(o.from) >= o.leftTop - Uncovered.SAME
                && top(o.to) >= o.rightTop - Uncovered.SAME;
    }

    /** Whether it stands as high as its cell between two x. */
    boolean isFull(long a, long b) {
        return top(a) >= cell.upper.at(a) - Uncovered.SAME && top(b) >= cell.upper.at(b) - Uncovered.SAME;
    }

    Wet between(long a, long b) {
        return a == from && b == to ? this : new Wet(cell, running, cost, a, b, top(a), top(b), source, how, line);
    }

    /** What of it lies in a box, and below it. */
    Wet in(Box place) {
        long a = Math.max(from, place.minX()), b = Math.min(to, place.maxX());
        return new Wet(cell, running, cost, a, b, Math.min(top(a), place.maxY()), Math.min(top(b), place.maxY()), source, how, line);
    }

    @Override
    public void into(Flow flow) {
        flow.wet(this);
    }

    /** What of it stands over its cell's lower line, or on it to within a grid unit: under a sloped edge that rises above its top there is none of it. */
    Wet overFloor() {
        double near = 1 + Math.abs(cell.lower.slope());
        double left = leftTop - cell.lower.at(from) + near, right = rightTop - cell.lower.at(to) + near;
        if (from >= to || left >= 0 && right >= 0) {
            return this;
        }
        double meets = from + (to - from) * left / (left - right);
        return left < 0 && right < 0 ? between(from, from) : left < 0 ? between((long) Math.floor(meets), to) : between(from, (long) Math.ceil(meets));
    }

    boolean isOnFrame() {
        return cell.on < 0;
    }

    /** Whether other water came by the same move, under the same piece, from the same layer. */
    boolean isLike(Wet o) {
        return how.move() == o.how.move() && how.under() == o.how.under() && layerBefore() == o.layerBefore();
    }

    /** The piece it was on before it came here, or -1. */
    private int layerBefore() {
        return source == null ? -1 : source.cell.on;
    }
}
