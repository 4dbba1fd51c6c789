package rainlap.paper;

/** A point on the sheet in printed millimetres, y down. */
public record PaperPoint(double x, double y) {

    public PaperPoint {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point on paper needs finite coordinates, not " + x + ", " + y);
        }
    }

    public static PaperPoint of(double x, double y) {
        return new PaperPoint(x, y);
    }

    public PaperPoint plus(double dx, double dy) {
        return new PaperPoint(x + dx, y + dy);
    }

    /** Distance in millimetres. */
    public double distance(PaperPoint other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** The point at {@code share} of the way to {@code other}: 0 here, 1 there. */
    public PaperPoint towards(PaperPoint other, double share) {
        return new PaperPoint(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
