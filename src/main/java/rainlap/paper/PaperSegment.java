package rainlap.paper;

/** A straight piece of line on the sheet. */
public record PaperSegment(PaperPoint from, PaperPoint to) {

    public static PaperSegment of(double x1, double y1, double x2, double y2) {
        return new PaperSegment(new PaperPoint(x1, y1), new PaperPoint(x2, y2));
    }

    public double length() {
        return from.distance(to);
    }

    /** True when the two have a point in common, ends included. */
    public boolean meets(PaperSegment other) {
        int a = side(from, to, other.from);
        int b = side(from, to, other.to);
        int c = side(other.from, other.to, from);
        int d = side(other.from, other.to, to);
        if (a * b < 0 && c * d < 0) {
            return true;
        }
        return a == 0 && holds(other.from) || b == 0 && holds(other.to)
                || c == 0 && other.holds(from) || d == 0 && other.holds(to);
    }

    /** How far a point is from the nearest of the segment. */
    public double distance(PaperPoint p) {
        double dx = to.x() - from.x(), dy = to.y() - from.y(), square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((p.x() - from.x()) * dx + (p.y() - from.y()) * dy) / square;
        return p.distance(from.towards(to, Math.max(0, Math.min(1, share))));
    }

    private boolean holds(PaperPoint p) {
        return Math.min(from.x(), to.x()) <= p.x() && p.x() <= Math.max(from.x(), to.x())
                && Math.min(from.y(), to.y()) <= p.y() && p.y() <= Math.max(from.y(), to.y());
    }

    private static int side(PaperPoint a, PaperPoint b, PaperPoint p) {
        return (int) Math.signum((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x()));
    }
}
