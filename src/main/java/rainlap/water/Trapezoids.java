package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What of each gap lies over one another in a slab is a trapezoid, and a part of a cell: of that of the slab before, where it goes on unchanged. Room is used again, slab after slab. */
final class Trapezoids {
    private final Ground ground;
    private final List<Cell> made;
    /** Of the slab before and of this one, from the bottom up. */
    private Row before = new Row();
    private Row now = new Row();
    /** By column of this slab, from the frame outwards. */
    private Run[][] byGap = new Run[16][];

    /** @param made is handed every cell that begins */
    Trapezoids(Ground ground, List<Cell> made) {
        this.ground = ground;
        this.made = made;
    }

    /** Those of one slab. */
    private static final class Row {
        private final List<Run> all = new ArrayList<>();
        private int size;

        Run add() {
            if (size == all.size()) {
                all.add(new Run());
            }
            return all.get(size++);
        }

        Run get(int i) {
            return all.get(i);
        }
    }

    private static final class Run {
        private int on;
        private int over;
        /** The whole pile where the gap is open and cells end at each edge beneath, else null. */
        private Pile open;
        private Line lower;
        private Line upper;
        /** The pipe over which it begins, or under which it ends, or -1. */
        private int pipe;
        private boolean overPipe;
        private boolean underPipe;
        private Cell cell;

        void begin(Column c, int gap, boolean isFine, int pipeBelow) {
            Pile p = c.pile;
            on = gap == 0 ? -1 : p.at(gap - 1);
            over = gap == p.depth() ? -1 : p.at(gap);
            open = over < 0 && isFine ? p : null;
            lower = c.lower;
            upper = c.upper;
            pipe = pipeBelow;
            overPipe = pipeBelow >= 0;
            underPipe = false;
            cell = null;
        }

        void endUnder(int pipeAbove) {
            underPipe = true;
            pipe = Math.max(pipe, pipeAbove);
        }

        boolean goesOnIn(Run o) {
            return on == o.on && over == o.over && open == o.open && pipe == o.pipe && overPipe == o.overPipe && underPipe == o.underPipe
                    && lower.isSame(o.lower) && upper.isSame(o.upper);
        }

        Cell newCell(Ground ground, long from, long to) {
            Cell c = new Cell(ground, from, to, lower, upper, on, over);
            c.pipe = pipe;
            c.overPipe = overPipe;
            c.underPipe = underPipe;
            return c;
        }
    }

    /**
     * Finds those of a slab.
     *
     * @param columns from the bottom up
     * @param isCut whether nothing goes on over the slab's left side
     */
    void find(List<Column> columns, long from, long to, boolean isCut) {
        Row last = before;
        before = now;
        now = last;
        now.size = 0;
        byGap = byGap.length < columns.size() ? Arrays.copyOf(byGap, 2 * columns.size()) : byGap;
        double mid = (from + to) / 2.0;
        for (int i = 0; i < columns.size(); i++) {
            boolean isOnTop = i > 0 && columns.get(i - 1).isUnder(columns.get(i), mid);
            stack(isOnTop ? columns.get(i - 1) : null, i, columns.get(i));
        }
        findCells(from, to, isCut);
    }

    /** The cell of a gap of a column of this slab. */
    Cell cell(int column, int gap) {
        return byGap[column][gap].cell;
    }

    /** Adds a column on top: gaps between the same two layers go on in it. */
    private void stack(Column low, int number, Column high) {
        if (low != null && low.hasCells() && high.pipe >= 0) {
            for (int gap = 0; gap <= low.pile.depth(); gap++) {
                byGap[number - 1][gap].endUnder(high.pipe);
            }
        }
        if (!high.hasCells()) {
            return;
        }
        boolean goesOn = low != null && low.hasCells();
        int gaps = high.pile.depth() + 1;
        Run[] runs = byGap[number] != null && byGap[number].length >= gaps ? byGap[number] : new Run[gaps + 4];
        byGap[number] = runs;
        for (int gap = 0; gap < gaps; gap++) {
            int below = goesOn ? high.goesOnFrom(low.pile, gap, ground.isFine()) : -1;
            if (below < 0) {
                runs[gap] = now.add();
                runs[gap].begin(high, gap, ground.isFine(), low == null ? -1 : low.pipe);
            } else {
                runs[gap] = byGap[number - 1][below];
                runs[gap].upper = high.upper;
            }
        }
    }

    private void findCells(long from, long to, boolean isCut) {
        int k = 0;
        for (int i = 0; i < now.size; i++) {
            Run r = now.get(i);
            double low = r.lower.at(from);
            while (k < before.size && before.get(k).lower.at(from) < low - 1) {
                k++;
            }
            Cell same = isCut ? null : same(r, low, from, k);
            if (same != null) {
                r.cell = same;
                same.x1 = Math.toIntExact(to);
            } else {
                r.cell = r.newCell(ground, from, to);
                made.add(r.cell);
            }
        }
    }

    private Cell same(Run r, double low, long x, int start) {
        for (int k = start; k < before.size; k++) {
            Run o = before.get(k);
            if (o.goesOnIn(r)) {
                return o.cell;
            }
            if (o.lower.at(x) > low + 1) {
                return null;
            }
        }
        return null;
    }
}
