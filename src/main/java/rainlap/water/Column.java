package rainlap.water;

import java.util.Arrays;

/** What lies over one another between two lines of a slab: a pile with the cell of each of its gaps, an opening of the wall, or the hole of a pipe. */
final class Column {
    private static final Run[] NO_RUNS = {};

    final Pile pile;
    final Line lower;
    final Line upper;
    /** The opening it lies in, or -1: then there is a frame behind it. */
    final int opening;
    /** The pipe that passes there, or -1. */
    final int pipe;
    /** Of each gap what belongs to it in this slab, from the frame outwards; the last is open to the air. None without a frame. */
    Run[] runs = NO_RUNS;
    private Cell[] cells;

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

    /** The cell of each gap, once the runs know theirs. */
    Cell[] cells() {
        if (cells == null) {
            cells = new Cell[runs.length];
            for (int i = 0; i < runs.length; i++) {
                cells[i] = runs[i].cell;
            }
        }
        return cells;
    }

    /** Whether it is one of the same cells. */
    boolean isLike(Column o) {
        return pile == o.pile && opening == o.opening && pipe == o.pipe && Arrays.equals(cells(), o.cells());
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

    /** What of one gap lies over one another in a slab: a trapezoid, and a part of a cell. */
    static final class Run {
        final int on;
        final int over;
        /** The whole pile where the gap is open and cells end at each edge beneath, else null. */
        final Pile open;
        final Column first;
        Column last;
        /** The pipe over which it begins, or under which it ends, or -1. */
        int pipe = -1;
        boolean overPipe;
        boolean underPipe;
        Cell cell;

        Run(Column first, int gap, boolean isFine) {
            this.first = first;
            this.last = first;
            Pile p = first.pile;
            on = gap == 0 ? -1 : p.at(gap - 1);
            over = gap == p.depth() ? -1 : p.at(gap);
            open = over < 0 && isFine ? p : null;
        }

        /** Whether it is the same trapezoid as one of the next slab. */
        boolean goesOnIn(Run o) {
            return on == o.on && over == o.over && open == o.open && pipe == o.pipe && overPipe == o.overPipe && underPipe == o.underPipe
                    && first.lower.isSame(o.first.lower) && last.upper.isSame(o.last.upper);
        }

        Cell begin(Ground ground, long from, long to) {
            Cell c = new Cell(ground, from, to, first.lower, last.upper, on, over);
            c.pipe = pipe;
            c.overPipe = overPipe;
            c.underPipe = underPipe;
            return c;
        }
    }
}
