package rainlap.wall;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.geom.Segment;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.EndDams;
import rainlap.material.Material;
import rainlap.material.Profile;

/** The same wall elsewhere: mirrored left to right about x = 0 with all that knows left from right, or moved. */
public final class Changed {
    private final Elevation wall;
    private final boolean mirrored;
    private final UnaryOperator<Point> to;

    private Changed(Elevation wall, boolean mirrored, UnaryOperator<Point> to) {
        this.wall = wall;
        this.mirrored = mirrored;
        this.to = to;
    }

    public static Elevation mirrored(Elevation e) {
        return new Changed(e, true, p -> new Point(-p.x(), p.y())).all();
    }

    /** By grid units. */
    public static Elevation moved(Elevation e, long right, long up) {
        return new Changed(e, false, p -> new Point(p.x() + right, p.y() + up)).all();
    }

    /** Where a place of a surface of the wall comes to lie when the wall is mirrored. */
    public static Point mirrored(Point p, Surface on, Elevation e) {
        long width = on.isWall() || on.side().isJamb() ? 0 : e.findOpening(on.opening()).orElseThrow().along(on.side());
        return on.side().isJamb() ? p : new Point(width - p.x(), p.y());
    }

    public static Surface mirrored(Surface s) {
        return switch (s.side()) {
            case LEFT -> new Surface(s.opening(), Side.RIGHT);
            case RIGHT -> new Surface(s.opening(), Side.LEFT);
            case WALL, SILL, HEAD -> s;
        };
    }

    private Elevation all() {
        List<Opening> openings = wall.openings().stream().map(o -> new Opening(o.id(), o.kind(), box(o.rect()), o.reveal(), o.noHeadFlashing(),
                o.eaveOverhang(), o.eaveAbove())).toList();
        List<OutlineEdge> edges = wall.outline().edges().stream().map(s -> new OutlineEdge(line(s.line()), s.role(), s.neighbour())).toList();
        List<Abutment> abutting = wall.outline().abutting().stream().map(a -> new Abutment(a.kind(), leftToRight(line(a.line())))).toList();
        long up = to.apply(new Point(0, 0)).y();
        OptionalLong ground = wall.outline().ground().isPresent() ? OptionalLong.of(wall.outline().ground().getAsLong() + up) : OptionalLong.empty();
        List<Piece> pieces = wall.pieces().stream().map(this::piece).toList();
        List<Penetration> pipes = wall.penetrations().stream().map(p -> new Penetration(p.id(), p.kind(), region(p.region(), to))).toList();
        return new Elevation(wall.name(), wall.practice(), exposure(), new Outline(region(wall.outline().region(), to), edges, ground, wall.outline().groundCover(), abutting),
                openings, pipes, wall.materials(), pieces, List.of());
    }

    private static Segment leftToRight(Segment s) {
        return s.a().x() < s.b().x() ? s : s.reversed();
    }

    private Exposure exposure() {
        Exposure x = wall.exposure();
        return !mirrored ? x : new Exposure(x.windMPerS(), x.pressurePa(), x.windFrom().map(Changed::mirrored), x.rainMmPerH(), x.towingKmPerH(),
                x.leading().map(Changed::mirrored), x.temperatureC(), x.sunDays(), x.road());
    }

    private static Exposure.From mirrored(Exposure.From side) {
        return switch (side) {
            case LEFT -> Exposure.From.RIGHT;
            case RIGHT -> Exposure.From.LEFT;
            case FRONT -> side;
        };
    }

    private Box box(Box b) {
        return Box.of(List.of(to.apply(new Point(b.minX(), b.minY())), to.apply(new Point(b.maxX(), b.maxY()))));
    }

    private Segment line(Segment s) {
        return mirrored ? new Segment(to.apply(s.b()), to.apply(s.a())) : new Segment(to.apply(s.a()), to.apply(s.b()));
    }

    private Piece piece(Piece p) {
        List<Shape> shapes = p.shapes().stream().map(this::shape).toList();
        return mirrored ? new Piece(p.id(), mirrored(p.material()), shapes, p.under(), mirrored(p.bond()), p.cuts())
                : new Piece(p.id(), p.material(), shapes, p.under(), p.bond(), p.cuts());
    }

    private Shape shape(Shape s) {
        if (s.on().isWall()) {
            return new Shape(s.on(), s.regions().stream().map(r -> region(r, to)).toList());
        }
        return mirrored ? new Shape(mirrored(s.on()), s.regions().stream().map(r -> region(r, p -> mirrored(p, s.on(), wall))).toList()) : s;
    }

    private static Material mirrored(Material m) {
        Profile p = m.profile();
        Optional<EndDams> dams = p.endDams().map(d -> switch (d) {
            case LEFT -> EndDams.RIGHT;
            case RIGHT -> EndDams.LEFT;
            case BOTH, NONE -> d;
        });
        return m.withProfile(new Profile(p.depthMm(), p.fallDeg(), p.upstandMm(), dams, p.endDamMm(), p.dripMm(), p.hemMm(), p.turnDownMm()));
    }

    private static Bond mirrored(Bond b) {
        return b.isFull() ? b : Bond.sealedAt(b.sealedEdges().stream().map(e -> switch (e) {
            case LEFT -> Edge.RIGHT;
            case RIGHT -> Edge.LEFT;
            case TOP, BOTTOM -> e;
        }).toList());
    }

    public static Region region(Region r, UnaryOperator<Point> to) {
        return new Region(ring(r.shell(), to), r.holes().stream().map(h -> ring(h, to)).toList());
    }

    private static Ring ring(Ring r, UnaryOperator<Point> to) {
        return Ring.of(r.points().stream().map(to).toList());
    }
}
