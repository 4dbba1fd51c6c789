package rainlap.building;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.wall.EdgeRole;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;

/**
 * Where two walls are joined: the stretch of height that the corner edges of both share. Levels are the same on both.
 *
 * @param role external or internal
 * @param left where it stands on the wall to its left, x
 * @param right where it stands on the wall to its right, x
 * @param from its foot, y
 * @param to its top, y
 */
public record Corner(EdgeRole role, long left, long right, long from, long to) {

    /** Empty where the sides are no corners, are of two kinds, or share no height. */
    public static Optional<Corner> between(Outline left, Outline right) {
        Optional<OutlineEdge> a = sideOf(left, true), b = sideOf(right, false);
        if (a.isEmpty() || b.isEmpty() || a.get().role() != b.get().role()) {
            return Optional.empty();
        }
        Box one = a.get().line().box(), other = b.get().line().box();
        long from = Math.max(one.minY(), other.minY()), to = Math.min(one.maxY(), other.maxY());
        return from < to ? Optional.of(new Corner(a.get().role(), one.minX(), other.minX(), from, to)) : Optional.empty();
    }

    /** The plumb corner at the right or left end of an outline; one drawn in several sides is one. */
    public static Optional<OutlineEdge> sideOf(Outline outline, boolean right) {
        long x = right ? outline.box().maxX() : outline.box().minX();
        List<OutlineEdge> edges = outline.edges().stream().filter(e -> e.role().isCorner() && e.line().isPlumb() && e.line().a().x() == x).toList();
        return edges.isEmpty() ? Optional.empty() : edges.stream().map(e -> e.line().box()).reduce(Box::join)
                .map(b -> new OutlineEdge(line(x, b.minY(), b.maxY(), right), edges.get(0).role(), edges.get(0).neighbour()));
    }

    /** Up a right-hand corner, down a left-hand one, as outlines run. */
    static Segment line(long x, long from, long to, boolean up) {
        Segment s = new Segment(new Point(x, from), new Point(x, to));
        return up ? s : s.reversed();
    }

    /** How far a place of the wall to the right moves when that wall is laid flat beside the one to the left. */
    long shift() {
        return left - right;
    }
}
