package rainlap.geom;

/** A place on the grid, in hundredths of a millimetre. */
public record Point(long x, long y) implements Comparable<Point> {
    /** From millimetres. */
    public static Point ofMm(double x, double y) {
        return new Point(Grid.of(x), Grid.of(y));
    }

    /**
     * On which side of the line a to b this point lies: positive left, negative right, zero on it. Exact within the grid's range.
     */
    public long side(Point a, Point b) {
        return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
    }

    @Override
    public int compareTo(Point o) {
        return x != o.x ? Long.compare(x, o.x) : Long.compare(y, o.y);
    }
}
