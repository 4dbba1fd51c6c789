package rainlap.defect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.joint.Drawn;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** Holes in small walls, each result reasoned by hand. No wind is stated: the wall's own rise is the course lap of the practice, 150. */
class StudyTest {
    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 4000, 2400, EdgeRole.EXTERNAL_CORNER);
    }

    private static Drawn lap(double lap) {
        return wall().sheet("M1", -300, -40, 4600, 1040).sheet("M2", -300, 1000 - lap, 4600, 2000).tape("T", -300, 1000 - lap - 30, 4600, 60);
    }

    private static Shape rect(double x, double y, double w, double h) {
        return new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(x, y, w, h))));
    }

    private static Study study(Drawn wall, Stage stage) {
        return Study.of(Evidence.of(wall.elevation(), stage, Practices.common()));
    }

    /** One line a hole: kind, of, piece, then the result at each pressure: f for the frame, p and the battens, or -; w where it is wet as drawn. */
    private static String text(Study s) {
        return s.holes().stream().map(h -> h.hole().kind().word() + " " + h.hole().of() + " " + h.hole().piece().id() + " " + h.hole().middleInWords() + ":"
                + h.results().stream().map(StudyTest::text).collect(Collectors.joining(","))).collect(Collectors.joining("\n"));
    }

    /** Without what is wet as drawn, for walls of which only the hole matters. */
    private static String plain(Study s) {
        return text(s).replaceAll("w(?=[,\\n]|$)", "");
    }

    private static String text(Result r) {
        return (r.holds() ? "-" : (r.frame().isPresent() ? "f" : "") + (r.pools().isEmpty() ? "" : "p" + String.join("+", r.pools()))) + (r.asDrawn() ? "w" : "");
    }

    @Test
    void aHoleInTheTapeOfASoundLapLetsNothingIn() {
        assertEquals("joint seal M2/M1:course-lap@2000,850 T +850, x 2000:-,-", text(study(lap(150), Stage.WRAP)));
    }

    @Test
    void aLapShorterThanTheRiseIsDrivenOverThroughTheHoleAndNotAt50Pa() {
        Study s = study(lap(149.99), Stage.WRAP);
        assertEquals("joint seal M2/M1:course-lap@2000,850 T +850, x 2000:-,f", text(s));
        Result own = s.holes().get(0).results().get(1);
        assertEquals("+1000, x 1997 to 2003", own.frame().orElseThrow().inWords(), "over the top of M1, above the hole");
        assertEquals(List.of("rain wets M1", "wind lifts it under M2", "wind lifts it on, onto the frame"),
                own.path().stream().map(p -> p.why()).toList());
    }

    /** 50 Pa hold up 5.0986 mm of water (50 / 9.80665), on the grid 5.10. */
    @Test
    void the50PaLiftWaterByTheirHead() {
        assertEquals(510, study(lap(150), Stage.WRAP).asDrawn().get(0).pressure().drive().rise());
        assertEquals("joint seal M2/M1:course-lap@2000,995 T +995, x 2000:-,f", text(study(lap(5.1), Stage.WRAP)), "at exactly the rise it holds");
        assertTrue(text(study(lap(5.09), Stage.WRAP)).endsWith(":f,f"));
    }

    @Test
    void buttsGapsAndReverseLapsHaveNothingBehindTheirTape() {
        assertTrue(text(study(lap(0), Stage.WRAP)).endsWith(":f,f"), () -> text(study(lap(0), Stage.WRAP)));
        assertTrue(text(study(lap(-20), Stage.WRAP)).endsWith(":f,f"));
        Drawn reverse = wall().sheet("M2", -300, 850, 4600, 2000).sheet("M1", -300, -40, 4600, 1040).tape("T", -300, 970, 4600, 60);
        assertEquals("joint seal M1/M2:reverse-lap@2000,1000 T +1000, x 2000:f,f", text(study(reverse, Stage.WRAP)));
    }

    private static Drawn window() {
        return wall().window("W1", 1000, 900, 1000, 1000, 90).cutSheet("M", -300, -40, 4600, 2600, "W1", CutPattern.DIAGONAL, 90);
    }

    @Test
    void aJambNeedsMoreThanOneLayer() {
        assertEquals("jamb W1.left M +1650, x 997:f,f\njamb W1.right M +1650, x 2003:f,f", plain(study(window(), Stage.WRAP)));
        Drawn taped = window().piece("J1", MaterialKind.TAPE, rect(940, 900, 60, 1000), Drawn.on("W1", Side.LEFT, 0, 0, 1000, 0, 1000, 90, 0, 90));
        assertEquals("jamb W1.left J1 +1650, x 997:-,-\njamb W1.right M +1650, x 2003:f,f", plain(study(taped, Stage.WRAP)));
    }

    /** A sheet cut flush ends at the jamb: through the hole in the tape over it, what runs down the reveal is pushed in under it. */
    @Test
    void aSheetCutFlushIsOpenAtTheJambThroughAHoleInItsTape() {
        Drawn flush = wall().window("W1", 1000, 900, 1000, 1000, 90).cutSheet("M", -300, -40, 4600, 2600, "W1", CutPattern.FLUSH, 0)
                .piece("J1", MaterialKind.TAPE, rect(940, 900, 60, 1000), Drawn.on("W1", Side.LEFT, 0, 0, 1000, 0, 1000, 90, 0, 90));
        assertTrue(plain(study(flush, Stage.WRAP)).startsWith("jamb W1.left J1 +1650, x 997:f,f"), () -> text(study(flush, Stage.WRAP)));
    }

    @Test
    void aHoleAboveAFlashingIsHarmlessWhereTheMembraneLiesOverItsUpstand() {
        Drawn over = wall().window("W1", 1000, 900, 1000, 1000, 0).sheet("M1", -300, -40, 4600, 1990)
                .piece("H", MaterialKind.FLASHING, rect(800, 1890, 1400, 190)).sheet("M2", -300, 1910, 4600, 700);
        assertTrue(plain(study(over, Stage.WRAP)).contains("head flashing H M2 +1919, x 1500:-,-"), () -> plain(study(over, Stage.WRAP)));
        Drawn inFront = wall().window("W1", 1000, 900, 1000, 1000, 0).sheet("M1", -300, -40, 4600, 2600)
                .piece("H", MaterialKind.FLASHING, rect(800, 1890, 1400, 190));
        assertTrue(plain(study(inFront, Stage.WRAP)).contains("head flashing H M1 +2089, x 1500:f,f"), () -> plain(study(inFront, Stage.WRAP)));
    }

    @Test
    void waterPoolsOnALevelBattenAndOnlyTouchesTheEndOfOneThatStands() {
        Drawn level = window().piece("B", MaterialKind.BATTEN, rect(100, 500, 1500, 45)).piece("C", MaterialKind.CLADDING, rect(0, 0, 1000, 2400));
        assertTrue(plain(study(level, Stage.FINISHED)).startsWith("jamb W1.left C +1650, x 997:pB,pB"), () -> plain(study(level, Stage.FINISHED)));
        Drawn standing = window().piece("B", MaterialKind.BATTEN, rect(970, 0, 45, 545)).piece("C", MaterialKind.CLADDING, rect(0, 0, 1000, 2400));
        assertTrue(plain(study(standing, Stage.FINISHED)).startsWith("jamb W1.left C +1650, x 997:-,-"));
        assertEquals(List.of(), study(level, Stage.WRAP).asDrawn().get(0).pools(), "no battens at the wrap stage");
    }

    /** A seal along an edge of the piece is not at the rim of a hole in it. */
    @Test
    void aPieceSealedAlongItsEdgesIsOpenRoundTheHole() {
        Drawn sealed = window().piece("F", MaterialKind.FRAME, rect(900, 800, 100, 1200)).bond(Bond.sealedAt(Edge.TOP, Edge.LEFT, Edge.RIGHT, Edge.BOTTOM));
        Drawn bare = wall().window("W1", 1000, 900, 1000, 1000, 90).piece("M", MaterialKind.MEMBRANE, rect(-300, -40, 1300, 1650))
                .piece("F", MaterialKind.FRAME, rect(900, 800, 100, 1200)).bond(Bond.sealedAt(Edge.TOP, Edge.LEFT, Edge.RIGHT, Edge.BOTTOM));
        assertTrue(plain(study(sealed, Stage.WRAP)).startsWith("jamb W1.left F +1650, x 997:-,-"));
        assertTrue(plain(study(bare, Stage.WRAP)).startsWith("jamb W1.left F +1650, x 997:f,f"), "M ends below the hole");
    }

    @Test
    void whatIsNotThereIsNamed() {
        Study s = study(wall().sheet("M", -300, -40, 4600, 2600), Stage.WRAP);
        assertEquals(List.of(), s.holes());
        assertEquals(List.of("jamb: no opening is drawn", "head flashing: no opening is drawn", "joint seal: no joint is drawn",
                "penetration: no penetration is drawn"), s.notPlaced().stream().map(n -> n.kind().word() + ": " + n.why()).toList());
    }

    @Test
    void everyPlaceIsEitherPlacedOrNamed() {
        Study s = study(window().sheet("M2", -300, 2300, 4600, 300), Stage.WRAP);
        assertEquals(2, s.holes().size(), () -> text(s));
        assertEquals(List.of("head flashing W1: it has no head flashing", "joint seal M2/M:course-lap@2000,2300: no tape, corner piece, collar or sealant seals it",
                "penetration : no penetration is drawn"), s.notPlaced().stream().map(n -> n.kind().word() + " " + n.of() + ": " + n.why()).toList());
        Study edge = study(wall().window("W1", 0, 900, 1000, 1000, 90).sheet("M", -300, -40, 4600, 2600), Stage.WRAP);
        assertTrue(edge.notPlaced().stream().anyMatch(n -> n.of().equals("W1.left") && n.why().startsWith("it lies on the outline")));
        Study bare = study(wall().window("W1", 1000, 900, 1000, 1000, 90), Stage.WRAP);
        assertEquals(2, bare.notPlaced().stream().filter(n -> n.why().equals("nothing lies there to make a hole in")).count());
    }
}
