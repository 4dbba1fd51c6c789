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
    private static final double STRAIGHT = 1e-9;

    private final PaperPoint port;
    private final PaperPoint bend;
    private final PaperPoint site;
    private final boolean steep;
    private final PaperBox box;

    private Leader(PaperPoint port, PaperPoint bend, PaperPoint site, boolean steep) {
        this.port = port;
        this.bend = bend;
        this.site = site;
        this.steep = steep;
        box = PaperBox.of(List.of(port, bend, site)).grown(TOUCH);
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
        PaperPoint port = side.point(inner, along, -outside);
        if (shift < STRAIGHT) {
            return new Leader(port, site, site, false);
        }
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
        return bend.equals(site);
    }

    double length() {
        return port.distance(bend) + bend.distance(site);
    }

    /** Length of the last segment, 0 for a straight leader. */
    double slant() {
        return bend.distance(site);
    }

    List<PaperPoint> points() {
        return straight() ? List.of(port, site) : List.of(port, bend, site);
    }

    /** True when the boxes of the two are nearer than {@code by} millimetres: what is not, cannot cross. */
    boolean near(Leader other, double by) {
        return box.left() - by < other.box.right() && other.box.left() - by < box.right()
                && box.top() - by < other.box.bottom() && other.box.top() - by < box.bottom();
    }

    /** True when the two have a point in common, other than a site that both end at. */
    boolean crosses(Leader other) {
        if (!near(other, 0)) {
            return false;
        }
        boolean shared = site.distance(other.site) < TOUCH;
        return meet(port, bend, straight() && shared, other.port, other.bend, other.straight() && shared)
                || meet(port, bend, straight() && shared, other.bend, other.site, shared)
                || meet(bend, site, shared, other.port, other.bend, other.straight() && shared)
                || meet(bend, site, shared, other.bend, other.site, shared);
    }

    /** Distance from the leader to a point in millimetres. */
    double distance(PaperPoint p) {
        return Math.min(distance(port, bend, p), distance(bend, site, p));
    }

    /** Segments a-b and c-d, each drawn back a little at its end where the leaders share their site. */
    private static boolean meet(PaperPoint a, PaperPoint b, boolean openB, PaperPoint c, PaperPoint d, boolean openD) {
        if (a.equals(b) || c.equals(d)) {
            return false;
        }
        PaperPoint bb = openB ? b.towards(a, Math.min(0.5, 20 * TOUCH / a.distance(b))) : b;
        PaperPoint dd = openD ? d.towards(c, Math.min(0.5, 20 * TOUCH / c.distance(d))) : d;
        return new PaperSegment(a, bb).meets(new PaperSegment(c, dd))
                || distance(a, bb, c) < TOUCH || distance(a, bb, dd) < TOUCH
                || distance(c, dd, a) < TOUCH || distance(c, dd, bb) < TOUCH;
    }

    private static double distance(PaperPoint a, PaperPoint b, PaperPoint p) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
        double t = Math.max(0, Math.min(1, share));
        double x = p.x() - a.x() - t * dx;
        double y = p.y() - a.y() - t * dy;
        return Math.sqrt(x * x + y * y);
    }
}
