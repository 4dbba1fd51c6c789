package rainlap.water;

/** Where water that runs along the lower line of cells has got to. */
final class Walk {
    Cell cell;
    long x;

    Walk(Cell cell, long x) {
        go(cell, x);
    }

    void go(Cell to, long at) {
        cell = to;
        x = at;
    }

    boolean isAtEnd(boolean right) {
        return x == (right ? cell.x1 : cell.x0);
    }

    /** The seam just beyond, or null where there is none. */
    Seam seamBeyond(boolean right) {
        for (Seam s : cell.down) {
            if (right ? s.from <= x && x < s.to : s.from < x && x <= s.to) {
                return s;
            }
        }
        return null;
    }

    /** Where the next seam begins, or the cell ends. */
    long nextSeam(boolean right) {
        long next = right ? cell.x1 : cell.x0;
        for (Seam s : cell.down) {
            if (right && s.from > x) {
                next = Math.min(next, s.from);
            } else if (!right && s.to < x) {
                next = Math.max(next, s.to);
            }
        }
        return next;
    }

    /** The flank on one side that holds the place just above a height, or null. */
    Flank flank(boolean right, double y) {
        for (Flank f : cell.flanks) {
            if (f.right == right && f.from <= y + 0.5 && f.to > y + 0.5) {
                return f;
            }
        }
        return null;
    }
}
