package rainlap.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rainlap.joint.Drawn.on;
import static rainlap.joint.Drawn.wall;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rainlap.geom.Region;
import rainlap.geom.Wkt;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

class OpeningTest {
    private static Drawn diagonal(double returned) {
        return wall().window("W", 500, 500, 1000, 800, 90)
                .cutSheet("M", 0, 0, 2000, 2000, "W", CutPattern.DIAGONAL, returned);
    }

    @Test
    void diagonalCutLeavesFourTrapezoids() {
        Stack s = diagonal(90).stack();
        assertEquals("POLYGON ((0 0, 1000 0, 910 90, 90 90, 0 0))", wkt(s, Side.SILL));
        assertEquals("POLYGON ((0 0, 1000 0, 910 90, 90 90, 0 0))", wkt(s, Side.HEAD));
        assertEquals("POLYGON ((0 0, 800 0, 710 90, 90 90, 0 0))", wkt(s, Side.LEFT));
        assertEquals("POLYGON ((0 0, 800 0, 710 90, 90 90, 0 0))", wkt(s, Side.RIGHT));
    }

    private static String wkt(Stack s, Side side) {
        List<Region> r = s.on(new Surface("W", side)).stream().map(Face::region).toList();
        return r.isEmpty() ? "nothing" : Wkt.of(rotated(r.get(0)));
    }

    /** Starts the ring at its lowest left point, so that texts compare. */
    private static Region rotated(Region r) {
        List<rainlap.geom.Point> p = new java.util.ArrayList<>(r.shell().points());
        rainlap.geom.Point first = p.stream().min(java.util.Comparator.comparingLong(rainlap.geom.Point::y)
                .thenComparingLong(rainlap.geom.Point::x)).get();
        java.util.Collections.rotate(p, -p.indexOf(first));
        return new Region(rainlap.geom.Ring.of(p), List.of());
    }

    @Test
    void patternsLeaveWhatTheySay() {
        Stack y = wall().window("W", 500, 500, 1000, 800, 90).cutSheet("M", 0, 0, 2000, 2000, "W", CutPattern.INVERTED_Y, 60).stack();
        assertEquals("POLYGON ((0 0, 1000 0, 940 60, 60 60, 0 0))", wkt(y, Side.SILL));
        assertEquals("POLYGON ((0 0, 800 0, 800 60, 60 60, 0 0))", wkt(y, Side.LEFT));
        assertEquals("nothing", wkt(y, Side.HEAD));
        Stack i = wall().window("W", 500, 500, 1000, 800, 90).cutSheet("M", 0, 0, 2000, 2000, "W", CutPattern.I, 60).stack();
        assertEquals("nothing", wkt(i, Side.SILL));
        assertEquals("POLYGON ((0 0, 800 0, 800 60, 0 60, 0 0))", wkt(i, Side.RIGHT));
        Stack f = wall().window("W", 500, 500, 1000, 800, 90).cutSheet("M", 0, 0, 2000, 2000, "W", CutPattern.FLUSH, 0).stack();
        assertEquals("nothing", wkt(f, Side.LEFT));
    }

    @Test
    void diagonalCutLeavesABareTriangleOnEachFaceOfEachCorner() {
        List<OpeningCorner> corners = Reveals.of(diagonal(90).stack()).corners();
        assertEquals(4, corners.size());
        for (OpeningCorner c : corners) {
            assertEquals(90 * 90 / 2.0, c.onLevel().get(0).areaMm2(), 1e-9, c.inWords());
            assertEquals(90 * 90 / 2.0, c.onJamb().get(0).areaMm2(), 1e-9, c.inWords());
        }
        assertEquals("lower left corner, lower right corner, upper left corner, upper right corner",
                corners.stream().map(OpeningCorner::inWords).collect(Collectors.joining(", ")));
    }

    @Test
    void cornerPieceCoversBothFaces() {
        Drawn d = diagonal(90).piece("K", MaterialKind.CORNER_PIECE,
                new Shape(Surface.WALL, List.of(Drawn.region(425, 425, 600, 425, 600, 500, 500, 500, 500, 600, 425, 600))),
                on("W", Side.SILL, 0, 0, 100, 0, 100, 90, 0, 90), on("W", Side.LEFT, 0, 0, 100, 0, 100, 90, 0, 90));
        OpeningCorner c = Reveals.of(d.stack()).corners().get(0);
        assertTrue(!c.isBare(), c::toString);
        assertEquals(List.of("M", "K"), c.pieces());
        OpeningEdge sill = Reveals.of(d.stack()).edges().get(0);
        assertEquals(9000, sill.depth().leastWithin(0, 9000), 1e-6);
        assertEquals(0, sill.depth().leastWithin(99000, 100000), 1e-6);
    }

    @Test
    void returnDepthAlongEachEdge() {
        List<OpeningEdge> edges = Reveals.of(diagonal(40).stack()).edges();
        for (OpeningEdge e : edges) {
            assertEquals(4000, e.depth().leastWithin(4000, e.opening().along(e.side()) - 4000), 1e-6, e.side().word());
            assertEquals(0, e.depth().least(), 1e-6);
            assertEquals("M", e.turns().get(0).face().piece().id());
            assertEquals(e.opening().along(e.side()), e.turns().get(0).where().total(), 1e-6);
        }
    }

    @Test
    void aSeparateSillPieceThatDoesNotReachTheWallTurnsNothing() {
        OpeningEdge sill = Reveals.of(wall().window("W", 500, 500, 1000, 800, 90)
                .cutSheet("M", 0, 0, 2000, 2000, "W", CutPattern.I, 90)
                .piece("S", MaterialKind.TAPE, on("W", Side.SILL, 0, 0, 1000, 0, 1000, 90, 0, 90)).stack()).edges().get(0);
        assertEquals(0, sill.depth().greatest(), 1e-6);
        assertTrue(sill.turns().isEmpty());
    }

    @Test
    void tapeThatRunsIntoAnOpeningIsReturned() {
        Stack s = wall().window("W", 500, 500, 1000, 800, 90).tape("T", 0, 700, 2000, 75).stack();
        assertEquals("POLYGON ((200 0, 275 0, 275 90, 200 90, 200 0))", wkt(s, Side.LEFT));
        assertEquals("POLYGON ((200 0, 275 0, 275 90, 200 90, 200 0))", wkt(s, Side.RIGHT));
        assertEquals("nothing", wkt(s, Side.SILL));
    }

    @Test
    void flashingStaysInFrontOfTheOpening() {
        Stack s = wall().window("W", 500, 500, 1000, 800, 90)
                .piece("F", MaterialKind.FLASHING, new Shape(Surface.WALL, List.of(Drawn.region(400, 1250, 1600, 1250, 1600, 1400, 400, 1400)))).stack();
        assertEquals(1, s.on(Surface.WALL).size());
        assertEquals("nothing", wkt(s, Side.HEAD));
    }

    @Test
    void wrapOfABuildingCorner() {
        Drawn d = wall().outline(0, 0, 1000, 2000, EdgeRole.EXTERNAL_CORNER).sheet("M1", -300, 0, 1100, 1000)
                .sheet("M2", 0, 900, 1300, 1100).tape("T", -40, 500, 80, 200);
        List<BuildingCorner> corners = BuildingCorner.of(d.stack());
        BuildingCorner right = corners.get(0), left = corners.get(1);
        assertEquals(0, right.wrap().leastWithin(0, 89_000), 1e-6);
        assertEquals(30_000, right.wrap().leastWithin(91_000, 200_000), 1e-6);
        // down a left-hand corner: M2 ends exactly at the fold above 1000
        assertEquals(0, left.wrap().leastWithin(0, 99_000), 1e-6);
        assertEquals(30_000, left.wrap().leastWithin(101_000, 200_000), 1e-6);
        assertEquals(20_000, left.taped().total(), 1e-6);
    }

    @Test
    void bareWallIsFoundWhereItIs() {
        Drawn d = wall().outline(0, 0, 3000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 3000, 1000).sheet("M2", 0, 1300, 3000, 700);
        assertEquals("POLYGON ((0 1000, 3000 1000, 3000 1300, 0 1300, 0 1000))", bare(d));
        Drawn gap = wall().outline(0, 0, 3000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 3000, 1000).sheet("M2", 0, 1080, 3000, 920);
        assertEquals("", bare(gap));
        Drawn foot = wall().outline(0, 0, 3000, 2000, EdgeRole.FREE).sheet("M1", 0, 30, 3000, 1970);
        assertEquals("POLYGON ((0 0, 3000 0, 3000 30, 0 30, 0 0))", bare(foot));
        Drawn hole = wall().outline(0, 0, 3000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 3000, 1000)
                .sheet("M2", 0, 900, 1000, 1100).sheet("M3", 1400, 900, 1600, 1100).sheet("M4", 900, 1500, 600, 500);
        assertEquals("POLYGON ((1000 1000, 1400 1000, 1400 1500, 1000 1500, 1000 1000))", bare(hole));
        assertEquals("POLYGON ((0 0, 3000 0, 3000 2000, 0 2000, 0 0))", bare(wall().outline(0, 0, 3000, 2000, EdgeRole.FREE)));
    }

    private static String bare(Drawn d) {
        Stack s = d.stack();
        return Bare.of(s, Joints.of(s)).stream().map(b -> Wkt.of(rotated(b.region()))).collect(Collectors.joining("; "));
    }
}
