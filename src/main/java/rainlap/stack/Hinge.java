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
 * The line two surfaces share, seen from the first of them. A wall has one for every second piece.
 *
 * @param level whether it is level on the first surface; else it is plumb
 * @param at its height there, or how far along it stands
 * @param flat how the second surface comes to lie when it is folded flat onto the first; some are mirrored by that
 */
record Hinge(boolean level, int at, Isometry flat) {
    /** Those edges of a region on the first surface that lie on the hinge's line. */
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
        return level ? r.ay(edge) == at && r.by(edge) == at : r.ax(edge) == at && r.bx(edge) == at;
    }

    /** Where along the line the stretch begins that two edges on it share; it ends at {@link #to}, and there is none if that is no further. */
    long from(Segment a, Segment b) {
        return Math.max(Math.min(along(a.a()), along(a.b())), Math.min(along(b.a()), along(b.b())));
    }

    long to(Segment a, Segment b) {
        return Math.min(Math.max(along(a.a()), along(a.b())), Math.max(along(b.a()), along(b.b())));
    }

    /** A stretch of the line. */
    Segment part(long from, long to) {
        return level ? Segment.level(at, from, to) : Segment.plumb(at, from, to);
    }

    private long along(Point p) {
        return level ? p.x() : p.y();
    }

    /** Of two sides of an opening, or one and the wall, that share a line. */
    static Hinge between(Opening o, Side here, Side there) {
        if (here == Side.WALL) {
            Segment line = o.edge(there);
            return new Hinge(line.isLevel(), Math.toIntExact(line.isLevel() ? line.ay() : line.ax()), Isometry.of(p -> o.toWall(there, p)));
        }
        return there != Side.WALL ? acrossCorner(o, here, there) : new Hinge(true, 0, Isometry.of(p -> o.toSurface(here, p)));
    }

    /** A sill or head against a jamb, or the reverse: both run v inwards, so only u changes. */
    private static Hinge acrossCorner(Opening o, Side here, Side there) {
        boolean hereAtStart = here.isJamb() ? there == Side.SILL : there == Side.LEFT;
        boolean thereAtStart = there.isJamb() ? here == Side.SILL : here == Side.LEFT;
        long at = hereAtStart ? 0 : o.along(here), from = thereAtStart ? 0 : o.along(there);
        return new Hinge(false, Math.toIntExact(at), Isometry.of(p -> new Point(at + (hereAtStart == thereAtStart ? from - p.x() : p.x() - from), p.y())));
    }
}
