package rainlap.stack;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Isometry;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * The line two surfaces share, seen from the first of them.
 *
 * @param line on the first surface, level or plumb
 * @param flat how the second surface comes to lie when it is folded flat onto the first; some are mirrored by that
 */
record Hinge(Segment line, Isometry flat) {
    /** Those edges of a region on the first surface that lie on the hinge's line; it is always level or plumb. */
    List<Segment> edgesOn(Region r) {
        List<Segment> out = new ArrayList<>(1);
        for (int i = 0; i < r.edgeCount(); i++) {
            if (holds(r, i)) {
                out.add(r.edge(i));
            }
        }
        return out;
    }

    /** Whether an edge of a region on the first surface lies on the hinge's line, within its ends or beyond. */
    boolean holds(Region r, int edge) {
        if (line.isLevel()) {
            return r.ay(edge) == line.ay() && r.by(edge) == line.ay();
        }
        return r.ax(edge) == line.ax() && r.bx(edge) == line.ax();
    }

    /** Where along the line the stretch begins that two edges on it share; it ends at {@link #to}, and there is none if that is no further. */
    long from(Segment a, Segment b) {
        boolean level = line.isLevel();
        return Math.max(Math.min(along(a.a(), level), along(a.b(), level)), Math.min(along(b.a(), level), along(b.b(), level)));
    }

    long to(Segment a, Segment b) {
        boolean level = line.isLevel();
        return Math.min(Math.max(along(a.a(), level), along(a.b(), level)), Math.max(along(b.a(), level), along(b.b(), level)));
    }

    /** A stretch of the line. */
    Segment part(long from, long to) {
        return line.isLevel() ? Segment.level(line.ay(), from, to) : Segment.plumb(line.ax(), from, to);
    }

    private static long along(Point p, boolean level) {
        return level ? p.x() : p.y();
    }

    /** Of two sides of an opening, or one and the wall, that share a line. */
    static Hinge between(Opening o, Side here, Side there) {
        if (here == Side.WALL) {
            return new Hinge(o.edge(there), Isometry.of(p -> o.toWall(there, p)));
        }
        return there != Side.WALL ? acrossCorner(o, here, there)
                : new Hinge(new Segment(new Point(0, 0), new Point(o.along(here), 0)), Isometry.of(p -> o.toSurface(here, p)));
    }

    /** A sill or head against a jamb, or the reverse: both run v inwards, so only u changes. */
    private static Hinge acrossCorner(Opening o, Side here, Side there) {
        boolean hereAtStart = here.isJamb() ? there == Side.SILL : there == Side.LEFT;
        boolean thereAtStart = there.isJamb() ? here == Side.SILL : here == Side.LEFT;
        long at = hereAtStart ? 0 : o.along(here), from = thereAtStart ? 0 : o.along(there);
        return new Hinge(new Segment(new Point(at, 0), new Point(at, o.reveal())),
                Isometry.of(p -> new Point(at + (hereAtStart == thereAtStart ? from - p.x() : p.x() - from), p.y())));
    }
}
