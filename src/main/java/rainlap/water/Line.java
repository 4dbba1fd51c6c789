package rainlap.water;

/** A straight edge that is not plumb, from left to right, grid units. */
record Line(int ax, int ay, int bx, int by) {
    /** Places are within {@link rainlap.geom.Grid#LIMIT_MM}, so an int holds them, and how far they lie apart; a wall has some fifteen of these a piece. */
    Line(long ax, long ay, long bx, long by) {
        this(Math.toIntExact(ax), Math.toIntExact(ay), Math.toIntExact(bx), Math.toIntExact(by));
    }

    static Line level(long y, long from, long to) {
        return new Line(from, y, to, y);
    }

    /** The part of a level line between two x; a sloped one is told whole. */
    Line part(long a, long b) {
        return isLevel() && (a != ax || b != bx) ? level(ay, a, b) : this;
    }

    boolean isLevel() {
        return ay == by;
    }

    /** The height at x, also beyond the ends. */
    double at(double x) {
        return isLevel() ? ay : ay + (x - ax) * (by - ay) / (bx - ax);
    }

    /** Rise over run, signed. */
    double slope() {
        return isLevel() ? 0 : (double) (by - ay) / (bx - ax);
    }

    /** Whether two lines bound the same places: level ones by their height alone. */
    boolean isSame(Line o) {
        return isLevel() ? o.isLevel() && ay == o.ay : ax == o.ax && ay == o.ay && bx == o.bx && by == o.by;
    }
}
