package rainlap.paper;

import java.util.List;

/**
 * The line from a label to its site: a segment square to the side, then one at 45 degrees that ends at the site, or one
 * at another angle where the site lies too near the side or the room is crowded. Bend and site coincide when the leader
 * is straight.
 */
final class Leader {

    /** Nearer than this counts as touching, in millimetres: well below what prints. */
    private static final double TOUCH = 1e-6;
    private static final double STRAIGHT = 1e-7;

    private final PaperPoint port;
    private final PaperPoint bend;
    private final PaperPoint site;
    private final boolean steep;
    private final boolean straight;
    private final double slant;
    private final double length;
    private final double left;
    private final double top;
    private final double right;
    private final double bottom;

    private Leader(PaperPoint port, PaperPoint bend, PaperPoint site, boolean steep) {
        this.port = port;
        this.bend = bend;
        this.site = site;
        this.steep = steep;
        straight = bend.equals(site);
        slant = bend.distance(site);
        length = port.distance(bend) + slant;
        left = Math.min(port.x(), Math.min(bend.x(), site.x())) - TOUCH;
        top = Math.min(port.y(), Math.min(bend.y(), site.y())) - TOUCH;
        right = Math.max(port.x(), Math.max(bend.x(), site.x())) + TOUCH;
        bottom = Math.max(port.y(), Math.max(bend.y(), site.y())) + TOUCH;
    }

    /**
     * @param inner the drawing with its margin, where bends may lie
     * @param outside distance of the label from that box
     * @param direct straight from the edge of that box to the site, whatever the angle
     */
    static Leader of(BoundarySide side, PaperBox inner, double outside, double along, PaperPoint site,
            boolean direct) {
        double shift = Math.abs(along - side.along(site));
        double depth = side.depth(inner, site);
        if (shift < STRAIGHT) {
            return new Leader(side.point(inner, side.along(site), -outside), site, site, false);
        }
        PaperPoint port = side.point(inner, along, -outside);
        boolean steep = direct || shift > depth;
        return new Leader(port, side.point(inner, along, steep ? 0 : depth - shift), site, steep);
    }

    PaperPoint port() {
        return port;
    }

    PaperPoint bend() {
        return bend;
    }

    PaperPoint site() {
        return site;
    }

    /** True when it ends at another angle than 45 degrees or square. */
    boolean steep() {
        return steep;
    }

    boolean straight() {
        return straight;
    }

    double length() {
        return length;
    }

    /** Length of the last segment, 0 for a straight leader. */
    double slant() {
        return slant;
    }

    List<PaperPoint> points() {
        return straight ? List.of(port, site) : List.of(port, bend, site);
    }

    /** True when the boxes of the two are nearer than {@code by} millimetres: what is not, cannot cross. */
    boolean near(Leader other, double by) {
        return left - by < other.right && other.left - by < right && top - by < other.bottom && other.top - by < bottom;
    }

    /** True when its box and another have a point in common. */
    boolean meets(PaperBox b) {
        return left < b.right() && b.left() < right && top < b.bottom() && b.top() < bottom;
    }

    /** True when the two have a point in common, other than a site that both end at. */
    boolean crosses(Leader other) {
        if (!near(other, 0)) {
            return false;
        }
        boolean shared = near(site, other.site, TOUCH);
        return meet(port, bend, straight && shared, other.port, other.bend, other.straight && shared)
                || !other.straight && meet(port, bend, straight && shared, other.bend, other.site, shared)
                || !straight && meet(bend, site, shared, other.port, other.bend, other.straight && shared)
                || !straight && !other.straight && meet(bend, site, shared, other.bend, other.site, shared);
    }

    /** Distance from the leader to a point in millimetres. */
    double distance(PaperPoint p) {
        double square = square(port, bend, p);
        return Math.sqrt(straight ? square : Math.min(square, square(bend, site, p)));
    }

    /** Segments a-b and c-d, each drawn back a little at its end where the leaders share their site. */
    private static boolean meet(PaperPoint a, PaperPoint b, boolean openB, PaperPoint c, PaperPoint d, boolean openD) {
        if (apart(a.x(), b.x(), c.x(), d.x()) || apart(a.y(), b.y(), c.y(), d.y())) {
            return false;
        }
        PaperPoint bb = openB ? b.towards(a, Math.min(0.5, 20 * TOUCH / a.distance(b))) : b;
        PaperPoint dd = openD ? d.towards(c, Math.min(0.5, 20 * TOUCH / c.distance(d))) : d;
        if (side(a, bb, c) * side(a, bb, dd) < 0 && side(c, dd, a) * side(c, dd, bb) < 0) {
            return true;
        }
        double touch = TOUCH * TOUCH;
        return square(a, bb, c) < touch || square(a, bb, dd) < touch || square(c, dd, a) < touch
                || square(c, dd, bb) < touch;
    }

    private static boolean apart(double a, double b, double c, double d) {
        return Math.max(a, b) + TOUCH < Math.min(c, d) || Math.max(c, d) + TOUCH < Math.min(a, b);
    }

    private static boolean near(PaperPoint a, PaperPoint b, double by) {
        return Math.abs(a.x() - b.x()) < by && Math.abs(a.y() - b.y()) < by;
    }

    private static double side(PaperPoint a, PaperPoint b, PaperPoint p) {
        return Math.signum((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x()));
    }

    /** Square of the distance from a segment to a point. */
    private static double square(PaperPoint a, PaperPoint b, PaperPoint p) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
        double t = Math.max(0, Math.min(1, share));
        double x = p.x() - a.x() - t * dx;
        double y = p.y() - a.y() - t * dy;
        return x * x + y * y;
    }
}
