package rainlap.joint;

import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Surface;

/**
 * Where the wall, or the surface of a reveal, goes on to the right of an edge. At a building corner it does: the sheet is unfolded there.
 */
final class Ground {
    private final Elevation elevation;

    Ground(Elevation elevation) {
        this.elevation = elevation;
    }

    Intervals beside(Surface surface, EdgeFrame e) {
        if (!surface.isWall()) {
            return elevation.findOpening(surface.opening())
                    .map(o -> o.reveal() == 0 ? Intervals.NONE
                            : e.inside(Region.of(o.surface(surface.side())), -e.side()))
                    .orElse(Intervals.NONE);
        }
        Intervals left = e.inside(elevation.outline().region(), -e.side()).union(onCorner(e));
        for (Opening o : elevation.openingsMeeting(new Segment(e.at(0), e.at(e.length())).box().grow(3))) {
            left = left.minus(e.inside(Region.of(o.rect()), -e.side()));
        }
        return left;
    }

    private Intervals onCorner(EdgeFrame e) {
        Intervals out = Intervals.NONE;
        for (OutlineEdge o : elevation.outline().edges()) {
            Point a = o.line().a(), b = o.line().b();
            if (o.role().isCorner() && e.t(a.x(), a.y()) == 0 && e.t(b.x(), b.y()) == 0) {
                double s0 = e.s(a.x(), a.y()), s1 = e.s(b.x(), b.y());
                double from = Math.max(0, Math.min(s0, s1)), to = Math.min(e.length(), Math.max(s0, s1));
                out = to > from ? out.union(Intervals.of(from, to)) : out;
            }
        }
        return out;
    }
}
