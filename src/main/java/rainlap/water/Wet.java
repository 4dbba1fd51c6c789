package rainlap.water;

/**
 * Water in one gap of a cell: everything between two x, from a top edge down to the cell's lower line.
 *
 * @param running else driven
 * @param leftTop and rightTop: how high it stands at {@code from} and {@code to}
 * @param source the water it came from; null for rain and pipes
 * @param how how it came
 */
record Wet(Cell cell, int gap, boolean running, int cost, long from, long to, double leftTop, double rightTop, Wet source, How how) implements Coming {
    static Wet rain(Cell c) {
        return new Wet(c, c.openGap(), true, 0, c.x0, c.x1, c.upper.at(c.x0), c.upper.at(c.x1), null, How.RAIN);
    }

    /** How high it stands at x, within its ends. */
    double top(double x) {
        return to == from ? leftTop : leftTop + (x - from) * (rightTop - leftTop) / (to - from);
    }

    /** Whether it leaves nothing new of another in the same gap. */
    boolean covers(Wet o) {
        return cost <= o.cost && (running || !o.running) && from <= o.from && to >= o.to && top(o.from) >= o.leftTop - Uncovered.SAME
                && top(o.to) >= o.rightTop - Uncovered.SAME;
    }

    Wet between(long a, long b) {
        return a == from && b == to ? this : new Wet(cell, gap, running, cost, a, b, top(a), top(b), source, how);
    }

    @Override
    public void into(Flow flow) {
        flow.wet(this);
    }

    boolean isOnFrame() {
        return gap == 0;
    }

    /** Whether other water came by the same move, under the same piece, from the same layer. */
    boolean isLike(Wet o) {
        return how.move() == o.how.move() && how.under() == o.how.under() && layerBefore() == o.layerBefore();
    }

    /** The piece it was on before it came here, or -1. */
    private int layerBefore() {
        return source == null || source.gap == 0 ? -1 : source.cell.pile.at(source.gap - 1);
    }
}
