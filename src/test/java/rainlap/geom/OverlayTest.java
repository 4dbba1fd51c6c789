package rainlap.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Overlays against JTS's snap rounding, asked for directly: where no edge slopes the short way gives the same, to the point. */
class OverlayTest {
    private static final PrecisionModel GRID = new PrecisionModel(1);
    private static final int RUNS = 3_000;

    @Test void uprightRegionsAreTheSameEitherWay() throws ParseException {
        Random random = new Random(11);
        int parts = 0, holes = 0;
        for (int i = 0; i < RUNS; i++) {
            List<Region> a = boxes(random), b = boxes(random);
            Geometry one = united(a), other = united(b);
            assertSame(one, Overlay.union(a), i);
            assertSame(OverlayNG.overlay(one, other, OverlayNG.DIFFERENCE, GRID), Overlay.difference(a, b), i);
            assertSame(OverlayNG.overlay(one, other, OverlayNG.INTERSECTION, GRID), Overlay.intersection(Overlay.union(a), Overlay.union(b)), i);
            List<Region> left = Overlay.difference(a, b);
            parts += left.size() > 1 ? 1 : 0;
            holes += left.stream().anyMatch(r -> !r.holes().isEmpty()) ? 1 : 0;
        }
        assertTrue(parts > RUNS / 20 && holes > RUNS / 100, "several parts in " + parts + ", holes in " + holes);
    }

    /** On a coarse raster, so that edges often coincide and corners often touch; far away, so that products of coordinates do not fit a double. */
    private static List<Region> boxes(Random random) {
        List<Region> out = new ArrayList<>();
        for (int i = random.nextInt(6) + 1; i > 0; i--) {
            long x = at(random), y = at(random);
            out.add(Region.of(new Box(x, y, x + 33 * (1 + random.nextInt(5)), y + 33 * (1 + random.nextInt(5)))));
        }
        return out;
    }

    private static long at(Random random) {
        return 987_654_321 + 33 * random.nextInt(8);
    }

    private static Geometry united(List<Region> all) throws ParseException {
        return UnaryUnionNG.union(jts(all), GRID);
    }

    private static Geometry jts(List<Region> all) throws ParseException {
        List<Geometry> out = new ArrayList<>();
        for (Region r : all) {
            out.add(polygon(r));
        }
        return out.isEmpty() ? new WKTReader().read("MULTIPOLYGON EMPTY") : out.get(0).getFactory().buildGeometry(out);
    }

    private static Geometry polygon(Region r) throws ParseException {
        StringBuilder text = new StringBuilder("POLYGON (");
        ring(text, r.shell());
        r.holes().forEach(h -> ring(text.append(", "), h));
        return new WKTReader().read(text.append(')').toString());
    }

    private static void ring(StringBuilder text, Ring r) {
        text.append('(');
        for (int i = 0; i <= r.size(); i++) {
            text.append(i == 0 ? "" : ", ").append(r.x(i)).append(' ').append(r.y(i));
        }
        text.append(')');
    }

    /** The same parts with the same holes; a point straight between two others is none of a region. */
    private static void assertSame(Geometry expected, List<Region> actual, int run) throws ParseException {
        List<Polygon> parts = new ArrayList<>();
        for (Object p : PolygonExtracter.getPolygons(expected)) {
            parts.addAll(((Polygon) p).isEmpty() ? List.of() : List.of((Polygon) p));
        }
        Geometry whole = expected.getFactory().buildGeometry(parts), got = jts(actual);
        assertTrue(got.isValid(), () -> "run " + run + ": " + got);
        assertEquals(0, OverlayNG.overlay(whole, got, OverlayNG.SYMDIFFERENCE, GRID).getArea(), () -> "run " + run);
        assertEquals(parts.stream().map(p -> Math.round(p.getArea()) + ", holes " + p.getNumInteriorRing()).sorted().toList(),
                actual.stream().map(r -> Math.round(r.areaMm2() * Grid.MM * Grid.MM) + ", holes " + r.holes().size()).sorted().toList(), () -> "run " + run);
    }
}
