package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.EndDams;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Expectation;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Every shape and every key becomes what it says. */
class ShapesTest {
    /** The example of the tests with one more piece; the piece read. */
    private static Piece piece(String keys) {
        Elevation e = ElevationFileTest.sound(withPiece(keys));
        return e.pieces().get(e.pieces().size() - 1);
    }

    static String withPiece(String keys) {
        return ElevationFileTest.HUT.replace("\"under\": [\"M2\"] },", "\"under\": [\"M2\"] }, { \"id\": \"X\", " + keys + " }");
    }

    private static List<Region> regions(String shape) {
        return piece("\"material\": \"foil-membrane\", " + shape).shapes().get(0).regions();
    }

    @Test
    void rectIsABox() {
        assertEquals(List.of(Region.of(new Box(-1050, 20, 99, 1000020))), regions("\"rect\": [-10.5, 0.2, 11.49, 10000]"));
    }

    @Test
    void ringMayRunEitherWayAndRepeatItsFirstPoint() {
        List<Region> square = List.of(Region.of(new Box(0, 0, 10000, 5000)));
        assertEquals(square, regions("\"ring\": [[0, 0], [100, 0], [100, 50], [0, 50]]"));
        assertEquals(square.get(0).areaMm2(), regions("\"ring\": [[0, 0], [0, 50], [100, 50], [100, 0], [0, 0]]").get(0).areaMm2());
    }

    @Test
    void holesAreCutOut() {
        Region r = regions("\"ring\": [[0, 0], [100, 0], [100, 50], [0, 50]], \"holes\": [[[10, 10], [20, 10], [20, 20], [10, 20]]]").get(0);
        assertEquals(5000 - 100, r.areaMm2());
        assertEquals(1, r.holes().size());
    }

    @Test
    void wktIsPolygonOrSeveral() {
        assertEquals(5000 - 100, regions("\"wkt\": \"POLYGON ((0 0, 100 0, 100 50, 0 50, 0 0), (10 10, 20 10, 20 20, 10 20, 10 10))\"").get(0).areaMm2());
        List<Region> two = regions("\"wkt\": \" multipolygon(((0 0,1e2 0,100 50,0 0)),((200 0,300 0,300 50,200 0)))\"");
        assertEquals(List.of(2500.0, 2500.0), two.stream().map(Region::areaMm2).toList());
    }

    @Test
    void polygonsOfOneWktMayTouch() {
        assertEquals(2, regions("\"wkt\": \"MULTIPOLYGON (((0 0, 100 0, 100 50, 0 50, 0 0)), ((100 0, 200 0, 200 50, 100 50, 100 0)))\"").size());
    }

    @Test
    void circleIsWithinAThousandth() {
        assertEquals(Math.PI * 62 * 62, regions("\"circle\": [3000, 1700, 62]").get(0).areaMm2(), 20);
    }

    @Test
    void lineHasTheWidthOfItsMaterialOrItsOwn() {
        assertEquals(new Box(0, -3750, 100000, 3750), piece("\"material\": \"foil-tape-75\", \"line\": [[0, 0], [1000, 0]]").wallBox().orElseThrow());
        assertEquals(new Box(-2000, 0, 2000, 100000), piece("\"material\": \"foil-tape-75\", \"line\": [[0, 1000], [0, 0]], \"width\": 40").wallBox().orElseThrow());
        assertEquals(List.of(new Point(0, 100000), new Point(0, 0)),
                piece("\"material\": \"foil-tape-75\", \"line\": [[0, 1000], [0, 0]]").shapes().get(0).run());
    }

    @Test
    void bendsAreMitredAndEndsSquare() {
        Region r = piece("\"material\": \"foil-tape-75\", \"line\": [[0, 0], [1000, 0], [1000, 1000]], \"width\": 100").shapes().get(0).regions().get(0);
        assertEquals(new Box(0, -5000, 105000, 100000), r.box());
        assertEquals(100 * 1050 + 100 * 950, r.areaMm2());
    }

    @Test
    void slopedRunsKeepTheirWidth() {
        Region r = piece("\"material\": \"foil-tape-75\", \"line\": [[0, 0], [300, 400]], \"width\": 50").shapes().get(0).regions().get(0);
        assertEquals(500 * 50, r.areaMm2(), 1);
    }

    @Test
    void oddWidthsStayWhole() {
        assertEquals(75.01, Region.of(piece("\"material\": \"foil-tape-75\", \"line\": [[0, 0], [1000, 0]], \"width\": 75.01")
                .wallBox().orElseThrow()).areaMm2() / 1000, 1e-9);
    }

    @Test
    void pieceMayLieOnSeveralSurfaces() {
        Piece p = piece("\"material\": \"foil-tape-75\", \"shapes\": [ { \"rect\": [1140, 830, 1320, 70] }, "
                + "{ \"on\": \"W1.sill\", \"rect\": [0, 0, 1200, 90] }, { \"on\": \"W1.head\", \"line\": [[0, 30], [1200, 30]], \"width\": 60 } ]");
        assertEquals(List.of(Surface.WALL, new Surface("W1", Side.SILL), new Surface("W1", Side.HEAD)), p.shapes().stream().map(Shape::on).toList());
        assertEquals(new Box(0, 0, 120000, 6000), p.shapes().get(2).box());
    }

    @Test
    void surfaceNamesOfOpeningsWithADot() {
        String hut = withPiece("\"material\": \"foil-tape-75\", \"on\": \"W.1.left\", \"rect\": [0, 0, 100, 60]").replace("\"W1\"", "\"W.1\"");
        Elevation e = ElevationFileTest.sound(hut);
        assertEquals(new Surface("W.1", Side.LEFT), e.pieces().get(4).shapes().get(0).on());
    }

    @Test
    void keysOfAFlashingOnThePieceOverrideItsMaterial() {
        Piece p = piece("\"material\": \"head-flashing\", \"rect\": [0, 0, 100, 75], \"fall_deg\": 5, \"end_dams\": \"left\"");
        assertEquals(5, p.material().profile().fallDeg().orElseThrow());
        assertEquals(Optional.of(EndDams.LEFT), p.material().profile().endDams());
        assertEquals(75, p.material().profile().upstandMm().orElseThrow(), "what the piece leaves open comes from the material");
        assertEquals("head-flashing", p.material().id());
    }

    @Test
    void bondOfThePieceOverridesItsMaterial() {
        assertEquals(Bond.LOOSE, piece("\"material\": \"foil-tape-75\", \"rect\": [0, 0, 9, 9], \"bond\": \"loose\"").bond());
        assertEquals(Bond.sealedAt(Edge.TOP, Edge.LEFT),
                piece("\"material\": \"foil-tape-75\", \"rect\": [0, 0, 9, 9], \"bond\": [\"left\", \"top\"]").bond());
    }

    @Test
    void cutWithoutReturnIsAsDeepAsTheReveal() {
        String rect = "\"material\": \"foil-membrane\", \"rect\": [1000, 800, 600, 600], \"cuts\": [ { \"at\": \"W1\", \"pattern\": ";
        assertEquals(9000, piece(rect + "\"inverted-y\" } ]").cuts().get(0).returned());
        assertEquals(0, piece(rect + "\"flush\" } ]").cuts().get(0).returned());
        assertEquals(12050, piece(rect + "\"i\", \"return\": 120.5 } ]").cuts().get(0).returned());
    }

    @Test
    void clockwiseOutlineKeepsTheRoleOfEachSide() {
        String clockwise = ElevationFileTest.HUT
                .replace("[[0, 0], [3600, 0], [3600, 2400], [0, 2400]]", "[[0, 0], [0, 2400], [1800, 2400], [3600, 2400], [3600, 0]]")
                .replace("[\"base\", \"external-corner\", \"eave\", { \"role\": \"external-corner\", \"neighbour\": \"west.json\" }]",
                        "[{ \"role\": \"external-corner\", \"neighbour\": \"west.json\" }, \"eave\", \"parapet\", \"internal-corner\", \"base\"]");
        Elevation e = ElevationFileTest.sound(clockwise);
        List<OutlineEdge> edges = e.outline().edges();
        assertEquals(List.of(EdgeRole.BASE, EdgeRole.INTERNAL_CORNER, EdgeRole.PARAPET, EdgeRole.EAVE, EdgeRole.EXTERNAL_CORNER),
                edges.stream().map(OutlineEdge::role).toList());
        assertEquals(new Segment(Point.ofMm(0, 0), Point.ofMm(3600, 0)), edges.get(0).line(), "counter-clockwise");
        assertEquals(new Segment(Point.ofMm(3600, 2400), Point.ofMm(1800, 2400)), edges.get(2).line(), "points in line part roles");
        assertEquals(Optional.of("west.json"), edges.get(4).neighbour());
        assertEquals(4, e.outline().region().shell().size());
    }

    @Test
    void noHeadFlashingForAReason() {
        String eave = "\"reveal\": 90, \"head-flashing\": \"none\", \"eave_overhang\": 600, \"eave_above\": 250 }";
        var o = ElevationFileTest.sound(ElevationFileTest.HUT.replace("\"reveal\": 90 }", eave)).openings().get(0);
        assertEquals(Optional.of("under the eave"), o.noHeadFlashing());
        assertEquals(OptionalLong.of(60000), o.eaveOverhang());
        assertEquals(OptionalLong.of(25000), o.eaveAbove());
        for (String key : List.of("head-flashing", "head_flashing")) {
            String words = "\"reveal\": 90, \"" + key + "\": \"none\", \"reason\": \"awning\" }";
            assertEquals(Optional.of("awning"), ElevationFileTest.sound(ElevationFileTest.HUT.replace("\"reveal\": 90 }", words))
                    .openings().get(0).noHeadFlashing());
        }
    }

    @Test
    void briefHasNoPiecesAndNoName() {
        Elevation e = ElevationFileTest.sound("{\"rainlap\":1,\"wall\":{\"outline\":[[0,0],[90,0],[90,90]],\"edges\":[\"base\",\"free\",\"free\"]}}");
        assertEquals("hut", e.name(), "named after its file");
        assertTrue(e.pieces().isEmpty() && e.practice().isEmpty() && e.exposure().windMPerS().isEmpty());
    }

    @Test
    void expectationsNameRulesAndPieces() {
        String json = ElevationFileTest.HUT.replace("\"pieces\": [", "\"expect\": [ { \"rule\": \"reverse-lap\", \"pieces\": [\"M2\", \"M1\"] } ], \"pieces\": [");
        assertEquals(List.of(new Expectation("reverse-lap", List.of("M2", "M1"))), ElevationFileTest.sound(json).expected());
    }
}
