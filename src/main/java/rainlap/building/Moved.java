package rainlap.building;

import java.util.List;
import java.util.function.UnaryOperator;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.wall.Cut;
import rainlap.wall.Opening;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Penetration;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/**
 * A wall laid flat beside another: its places moved sideways, its things named as the other calls them.
 *
 * @param dx how far, grid units
 * @param name what one of its things is called there
 */
record Moved(long dx, UnaryOperator<String> name) {

    Point point(Point p) {
        return dx == 0 ? p : new Point(p.x() + dx, p.y());
    }

    Segment line(Segment s) {
        return new Segment(point(s.a()), point(s.b()));
    }

    Region region(Region r) {
        return dx == 0 ? r : r.mapped(this::point);
    }

    private Box box(Box b) {
        return new Box(b.minX() + dx, b.minY(), b.maxX() + dx, b.maxY());
    }

    Opening opening(Opening o) {
        return new Opening(name.apply(o.id()), o.kind(), box(o.rect()), o.reveal(), o.noHeadFlashing(), o.eaveOverhang(), o.eaveAbove());
    }

    Penetration penetration(Penetration p) {
        return new Penetration(name.apply(p.id()), p.kind(), region(p.region()));
    }

    OutlineEdge edge(OutlineEdge e) {
        return new OutlineEdge(line(e.line()), e.role(), e.neighbour());
    }

    /** What lies on a reveal keeps the reveal's own frame. */
    Shape shape(Shape s) {
        return s.on().isWall() ? new Shape(s.on(), s.regions().stream().map(this::region).toList(), s.run().stream().map(this::point).toList())
                : new Shape(new Surface(name.apply(s.on().opening()), s.on().side()), s.regions(), s.run());
    }

    List<Cut> cuts(List<Cut> cuts) {
        return cuts.stream().map(c -> new Cut(name.apply(c.opening()), c.pattern(), c.returned())).toList();
    }
}
