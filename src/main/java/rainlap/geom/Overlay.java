package rainlap.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.CoverageUnion;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.PrecisionReducer;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/**
 * The one gate to JTS: overlays on the grid by {@code OverlayNG}, fully noded every time ({@link Noding}). JTS coordinates here are grid units, so
 * its precision model has scale 1. Results of lower dimension (touching edges, points) are dropped: only areas come back, sorted
 * by place so that equal input gives equal output.
 */
public final class Overlay {
    private static final GeometryFactory JTS = new GeometryFactory(Noding.GRID);

    private Overlay() {}

    public static List<Region> union(List<Region> regions) {
        if (regions.size() < 2) {
            return List.copyOf(regions);
        }
        return regions(united(regions));
    }

    /**
     * The union of rings that lie side by side and share whole edges: x, y, x, y … each, without a repeated point. Their shared edges cancel out, so it costs
     * little more than their outline. Where sloped edges, rounded to the grid, make some of them overlap, they are overlaid instead.
     */
    public static List<Region> coverage(List<long[]> rings) {
        Polygon[] all = rings.stream().map(Overlay::polygon).filter(p -> p.getArea() > 0).toArray(Polygon[]::new);
        Geometry parts = JTS.createGeometryCollection(all);
        return regions(coverage(parts).orElseGet(() -> overlaid(all)));
    }

    /** Where rounding has made a part cross itself it is made sound first. */
    private static Geometry overlaid(Polygon[] parts) {
        List<Geometry> sound = Stream.of(parts).map(p -> p.isValid() ? p : GeometryFixer.fix(p)).toList();
        return UnaryUnionNG.union(JTS.buildGeometry(sound), JTS.getPrecisionModel());
    }

    /** Empty if the parts are no coverage. */
    private static Optional<Geometry> coverage(Geometry parts) {
        try {
            Geometry whole = CoverageUnion.union(parts);
            boolean kept = Math.abs(whole.getArea() - parts.getArea()) <= 1e-9 * parts.getArea();
            return kept && whole.isValid() ? Optional.of(whole) : Optional.empty();
        } catch (TopologyException overlapping) {
            return Optional.empty();
        }
    }

    private static Polygon polygon(long[] ring) {
        int n = ring.length / 2;
        boolean closed = ring[0] == ring[2 * n - 2] && ring[1] == ring[2 * n - 1];
        Coordinate[] points = new Coordinate[closed ? n : n + 1];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Coordinate(ring[2 * (i % n)], ring[2 * (i % n) + 1]);
        }
        return JTS.createPolygon(points);
    }

    public static List<Region> intersection(List<Region> a, List<Region> b) {
        if (a.size() == 1 && b.size() == 1) {
            if (!a.get(0).box().overlaps(b.get(0).box())) {
                return List.of();
            }
            if (a.get(0).isConvex() && b.get(0).isConvex()) {
                return BoxCut.within(a.get(0).shell(), b.get(0).shell());
            }
        }
        return overlay(a, b, OverlayNG.INTERSECTION);
    }

    public static List<Region> difference(List<Region> a, List<Region> b) {
        return b.isEmpty() ? List.copyOf(a) : overlay(a, b, OverlayNG.DIFFERENCE);
    }

    private static List<Region> overlay(List<Region> a, List<Region> b, int op) {
        if (a.isEmpty() || b.isEmpty()) {
            return List.of();
        }
        return regions(Noding.of(a).and(Noding.of(b)).overlay(single(a), single(b), op));
    }

    private static Geometry united(List<Region> regions) {
        return Noding.of(regions).union(polygons(regions), JTS);
    }

    private static Geometry single(List<Region> regions) {
        return regions.size() == 1 ? polygon(regions.get(0)) : united(regions);
    }

    /** What remains when every edge moves inwards by a distance in grid units; corners stay sharp. */
    public static List<Region> shrink(List<Region> regions, long by) {
        return offset(single(regions), -by, BufferParameters.CAP_FLAT);
    }

    /** Whether nothing is left of a region when every edge moves inwards by a distance in grid units. */
    public static boolean vanishes(Region r, long by) {
        return r.isConvex() ? r.shell().leastWidth() <= 2 * by : shrink(List.of(r), by).isEmpty();
    }

    /** A run along a polyline, {@code width} grid units across it, flat ends, mitred bends. */
    public static List<Region> run(List<Point> line, long width) {
        Coordinate[] at = line.stream().map(Overlay::coordinate).toArray(Coordinate[]::new);
        LineString path = JTS.createLineString(at);
        return offset(path, width / 2.0, BufferParameters.CAP_FLAT);
    }

    /** A circle as the regular 64-gon inscribed in it (its sagitta on a 62 mm radius is 0.07 mm). */
    public static Region circle(Point centre, long radius) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 64; i++) {
            double a = 2 * Math.PI * i / 64;
            points.add(new Point(centre.x() + Math.round(radius * StrictMath.cos(a)),
                    centre.y() + Math.round(radius * StrictMath.sin(a))));
        }
        return Region.of(points);
    }

    private static List<Region> offset(Geometry g, double by, int cap) {
        BufferParameters how = new BufferParameters(1, cap, BufferParameters.JOIN_MITRE, 5);
        return regions(PrecisionReducer.reducePrecision(BufferOp.bufferOp(g, by, how), JTS.getPrecisionModel()));
    }

    /** What is wrong with a region as a polygon (crosses itself, hole outside shell), or empty when it is sound. */
    public static Optional<Flaw> flaw(List<Point> shell, List<List<Point>> holes) {
        Polygon p = JTS.createPolygon(closed(shell), holes.stream().map(Overlay::closed).toArray(LinearRing[]::new));
        TopologyValidationError error = new IsValidOp(p).getValidationError();
        return Optional.ofNullable(error).map(e -> new Flaw(e.getMessage(),
                new Point(Math.round(e.getCoordinate().x), Math.round(e.getCoordinate().y))));
    }

    /** A geometry error as data: what JTS says of it and where. */
    public record Flaw(String what, Point where) {}

    /**
     * A POLYGON or MULTIPOLYGON in millimetres; each polygon as its shell and holes, unchecked.
     *
     * @throws IllegalArgumentException when the text is not such a geometry or leaves the grid's range
     */
    public static List<List<List<Point>>> parseWkt(String text) {
        Geometry g;
        try {
            g = new WKTReader().read(text);
        } catch (ParseException | IllegalArgumentException e) {
            throw new IllegalArgumentException("not well-known text: " + e.getMessage(), e);
        }
        List<List<List<Point>>> out = new ArrayList<>();
        for (int i = 0; i < g.getNumGeometries(); i++) {
            if (!(g.getGeometryN(i) instanceof Polygon p) || p.isEmpty()) {
                throw new IllegalArgumentException("a POLYGON or MULTIPOLYGON is needed, this is " + g.getGeometryType());
            }
            List<List<Point>> rings = new ArrayList<>();
            rings.add(pointsMm(p.getExteriorRing()));
            for (int h = 0; h < p.getNumInteriorRing(); h++) {
                rings.add(pointsMm(p.getInteriorRingN(h)));
            }
            out.add(List.copyOf(rings));
        }
        return out;
    }

    private static List<Point> pointsMm(LinearRing ring) {
        List<Point> out = new ArrayList<>();
        for (Coordinate c : ring.getCoordinates()) {
            if (!Grid.holds(c.x) || !Grid.holds(c.y)) {
                throw new IllegalArgumentException("a coordinate lies more than 10 km away");
            }
            out.add(Point.ofMm(c.x, c.y));
        }
        return out;
    }

    private static List<Geometry> polygons(List<Region> regions) {
        return regions.stream().map(r -> (Geometry) polygon(r)).toList();
    }

    private static Polygon polygon(Region r) {
        return JTS.createPolygon(closed(r.shell().points()),
                r.holes().stream().map(h -> closed(h.points())).toArray(LinearRing[]::new));
    }

    private static LinearRing closed(List<Point> points) {
        List<Coordinate> out = new ArrayList<>(points.stream().map(Overlay::coordinate).toList());
        if (!out.get(0).equals2D(out.get(out.size() - 1)) || out.size() < 4) {
            out.add(out.get(0).copy());
        }
        return JTS.createLinearRing(out.toArray(Coordinate[]::new));
    }

    private static Coordinate coordinate(Point p) {
        return new Coordinate(p.x(), p.y());
    }

    private static List<Region> regions(Geometry g) {
        List<Region> out = new ArrayList<>();
        for (int i = 0; i < g.getNumGeometries(); i++) {
            if (g.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
                region(p).ifPresent(out::add);
            }
        }
        out.sort(Comparator.comparing((Region r) -> r.box().minX()).thenComparing(r -> r.box().minY())
                .thenComparing(Wkt::of));
        return List.copyOf(out);
    }

    private static Optional<Region> region(Polygon p) {
        try {
            List<Ring> holes = new ArrayList<>();
            for (int i = 0; i < p.getNumInteriorRing(); i++) {
                holes.add(Ring.of(points(p.getInteriorRingN(i))));
            }
            return Optional.of(new Region(Ring.of(points(p.getExteriorRing())), holes));
        } catch (IllegalArgumentException collapsed) {
            return Optional.empty(); // a sliver whose points fell into one line on the grid has no area
        }
    }

    private static List<Point> points(LinearRing ring) {
        List<Point> out = new ArrayList<>();
        for (Coordinate c : ring.getCoordinates()) {
            out.add(new Point(Math.round(c.x), Math.round(c.y)));
        }
        return out;
    }
}
