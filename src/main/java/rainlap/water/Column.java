package rainlap.water;

import java.util.Arrays;

/** What lies over one another between two lines of a slab: a pile with the cell of each of its gaps, an opening of the wall, or the hole of a pipe. */
final class Column {
    private static final Cell[] NO_CELLS = {};

    final Pile pile;
    final Line lower;
    final Line upper;
    /** The opening it lies in, or -1: then there is a frame behind it. */
    final int opening;
    /** The pipe that passes there, or -1. */
    final int pipe;
    /** Of each gap, from the frame outwards; the last is open to the air. None without a frame. */
    private Cell[] cells = NO_CELLS;
    /** What lies on it, as far as it is known to, and since which x; null if nothing does. */
    Column above;
    long since;
    /** What lies on it in the slab that is looked at; null if nothing does, or it is not there any more. */
    Column next;

    Column(Pile pile, Line lower, Line upper, int opening, int pipe) {
        this.pile = pile;
        this.lower = lower;
        this.upper = upper;
        this.opening = opening;
        this.pipe = pipe;
    }

    /** Whether water is followed here: there is a frame, and no pipe. */
    boolean hasCells() {
        return opening < 0 && pipe < 0;
    }

    /** The cell of each gap, once they are found. */
    Cell[] cells() {
        return cells;
    }

    /** Itself with its cells, or, if it has others than in the slab before, another one. */
    Column with(Trapezoids found, int number) {
        if (!hasCells()) {
            return this;
        }
        boolean isNew = cells.length == 0, isSame = !isNew;
        for (int gap = 0; isSame && gap < cells.length; gap++) {
            isSame = cells[gap] == found.cell(number, gap);
        }
        if (isSame) {
            return this;
        }
        Column c = isNew ? this : new Column(pile, lower, upper, opening, pipe);
        c.cells = new Cell[pile.depth() + 1];
        for (int gap = 0; gap < c.cells.length; gap++) {
            c.cells[gap] = found.cell(number, gap);
        }
        return c;
    }

    /** Whether the cell of a gap begins at its lower line. */
    boolean begins(int gap) {
        return cells[gap].lower.isSame(lower);
    }

    /** Whether the cell of a gap ends at its upper line. */
    boolean ends(int gap) {
        return cells[gap].upper.isSame(upper);
    }

    /** Whether it is one of the same cells. */
    boolean isLike(Column o) {
        return pile == o.pile && opening == o.opening && pipe == o.pipe && Arrays.equals(cells, o.cells);
    }

    /** Whether it lies right under another one, whatever is rounded between sloped lines. */
    boolean isUnder(Column high, double mid) {
        return upper.isSame(high.lower) || Math.abs(upper.at(mid) - high.lower.at(mid)) < 0.5;
    }

    /**
     * The gap of it that goes on from a pile below, where the same layers lie next to one another; -1 if it begins here.
     *
     * @param isFine whether in the open all layers must be the same
     */
    int goesOnFrom(Pile below, int gap, boolean isFine) {
        if (below == pile) {
            return gap;
        }
        boolean open = gap == pile.depth();
        int on = gap == 0 ? 0 : below.find(pile.at(gap - 1)) + 1;
        boolean isThere = gap == 0 || on > 0;
        boolean same = open ? !isFine && on == below.depth() : on < below.depth() && below.at(on) == pile.at(gap);
        return isThere && same ? on : -1;
    }
}
