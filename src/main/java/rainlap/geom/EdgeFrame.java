package rainlap.geom;

/**
 * The frame of a directed edge: s along it from its first end, t square to it, positive to the left (the inside of a region whose
 * edge it is). Both in grid units; exact for level and plumb edges.
 */
public final class EdgeFrame {
    /** Looking to the side of an edge that is level or plumb: grid points lie at whole units, so half a unit decides exactly. */
    private static final double SIDE_ALIGNED = 0.5;
    /** Beside a sloped edge: two sloped edges that should coincide may differ by a unit or two after snapping to the grid. */
    private static final double SIDE_SLOPED = 2;

    private final double ax;
    private final double ay;
    private final double ux;
    private final double uy;
    private final double length;
    private final boolean aligned;

    private EdgeFrame(double ax, double ay, double ux, double uy, double length, boolean aligned) {
        this.ax = ax;
        this.ay = ay;
        this.ux = ux;
        this.uy = uy;
        this.length = length;
        this.aligned = aligned;
    }

    public static EdgeFrame of(Segment e) {
        long dx = (long) e.bx() - e.ax(), dy = (long) e.by() - e.ay();
        boolean aligned = dx == 0 || dy == 0;
        double length = aligned ? Math.abs(dx + dy) : Math.sqrt((double) dx * dx + (double) dy * dy);
        return new EdgeFrame(e.ax(), e.ay(), dx / length, dy / length, length, aligned);
    }

    /** The same line walked the other way, so that t points to the other side; s runs backwards from the far end. */
    public EdgeFrame turned() {
        return new EdgeFrame(ax + ux * length, ay + uy * length, -ux, -uy, length, aligned);
    }

    public double length() {
        return length;
    }

    public double s(double x, double y) {
        return (x - ax) * ux + (y - ay) * uy;
    }

    public double t(double x, double y) {
        return (y - ay) * ux - (x - ax) * uy;
    }

    public Point at(double s) {
        return at(s, 0);
    }

    public Point at(double s, double t) {
        return new Point(Math.round(ax + s * ux - t * uy), Math.round(ay + s * uy + t * ux));
    }

    /** Unit vector of the edge. */
    public double ux() {
        return ux;
    }

    public double uy() {
        return uy;
    }

    /** How far beside the edge one looks to tell one side from the other. */
    public double side() {
        return aligned ? SIDE_ALIGNED : SIDE_SLOPED;
    }

    /** Where the line at distance t beside the edge runs inside a region, within the edge's length. */
    public Intervals inside(Region r, double t) {
        return inside(r, t, 0, length);
    }

    public Intervals inside(Region r, double t, double from, double to) {
        if (r.isBox() && aligned) {
            return insideBox(r.box(), t, from, to);
        }
        int n = r.edgeCount(), count = 0;
        double[] crossings = new double[n];
        for (int i = 0; i < n; i++) {
            double t0 = t(r.ax(i), r.ay(i)), t1 = t(r.bx(i), r.by(i));
            if ((t0 > t) != (t1 > t)) {
                double s0 = s(r.ax(i), r.ay(i)), s1 = s(r.bx(i), r.by(i));
                crossings[count++] = s0 + (t - t0) / (t1 - t0) * (s1 - s0);
            }
        }
        return Intervals.ofCrossings(crossings, count, from, to);
    }

    private Intervals insideBox(Box b, double t, double from, double to) {
        double x = ax - t * uy, y = ay + t * ux;
        if (uy == 0) {
            return y <= b.minY() || y >= b.maxY() ? Intervals.NONE
                    : clip((b.minX() - ax) * ux, (b.maxX() - ax) * ux, from, to);
        }
        return x <= b.minX() || x >= b.maxX() ? Intervals.NONE
                : clip((b.minY() - ay) * uy, (b.maxY() - ay) * uy, from, to);
    }

    private static Intervals clip(double a, double b, double from, double to) {
        double lo = Math.max(from, Math.min(a, b)), hi = Math.min(to, Math.max(a, b));
        return hi > lo ? Intervals.of(lo, hi) : Intervals.NONE;
    }
}
