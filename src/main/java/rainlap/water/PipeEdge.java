package rainlap.water;

import java.util.ArrayList;

/**
 * Where a cell borders on a pipe: along its lower line, its upper one, or a plumb side.
 *
 * @param gap the cell's, in the column
 * @param from between which x; at a plumb side, which heights
 * @param x of a plumb side
 */
record PipeEdge(Column column, int gap, Where where, long from, long to, long x) {
    /** Where the cell is. */
    enum Where {
        OVER, UNDER, BESIDE
    }

    /** Tells each cell of a column; what goes on where the last one ends is that. */
    static void tell(Column c, int pipe, Where where, long from, long to, long x) {
        for (int gap = 0; gap < c.cells().length && from < to; gap++) {
            Cell cell = c.cells()[gap];
            cell.pipe = Math.max(cell.pipe, pipe);
            cell.atPipe = cell.atPipe.isEmpty() ? new ArrayList<>(1) : cell.atPipe;
            PipeEdge next = new PipeEdge(c, gap, where, from, to, x), last = cell.atPipe.isEmpty() ? null : cell.atPipe.get(cell.atPipe.size() - 1);
            if (last != null && last.goesOnIn(next)) {
                cell.atPipe.set(cell.atPipe.size() - 1, new PipeEdge(c, gap, where, last.from, to, x));
            } else {
                cell.atPipe.add(next);
            }
        }
    }

    private boolean goesOnIn(PipeEdge o) {
        return where == o.where && x == o.x && to == o.from && column.isLike(o.column);
    }
}
