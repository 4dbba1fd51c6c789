package rainlap.rule.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.rule.Finding;
import rainlap.rule.Written;
import rainlap.wall.Elevation;

class BareCornerTest {
    private static final String HEAD = Window.tape("A2", "{'rect': [500,1100,800,60]}, {'on': 'W1.head', 'rect': [0,0,800,90]}");

    private static String said(Elevation e) {
        return Written.said(new BareCorner(), e);
    }

    @Test void aDiagonalCutLeavesTwoTrianglesAtEachCorner() {
        List<Finding> found = Written.findings(new BareCorner(), Window.wall(Window.W1, Window.sheet("diagonal", "90")));
        assertEquals(4, found.size());
        for (Finding f : found) {
            assertEquals(List.of(4050.0, 4050.0), f.where().area().stream().map(Region::areaMm2).toList());
            assertEquals(8100, Overlay.union(f.where().area()).get(0).areaMm2(), "laid flat the two make a square");
        }
        assertEquals(Box.ofMm(500, 400, 90, 90), found.get(0).where().box());
        assertEquals(Box.ofMm(1210, 1010, 90, 90), found.get(3).where().box());
    }

    @Test void theUntrimmedRestOfADeepRevealIsNotTheCornersFault() {
        String deep = Window.window("'reveal': 200");
        Finding f = Written.findings(new BareCorner(), Window.wall(deep, Window.sheet("diagonal", "60"))).get(0);
        assertEquals("2 bare 60 × 60", f.drawn());
        assertEquals(60, f.required().orElseThrow());
    }

    @Test void whereNothingTurnsInShortReturnSpeaks() {
        String all = said(Window.wall(Window.W1, Window.sheet("flush", "")));
        assertEquals(8, all.lines().count());
        assertTrue(all.lines().allMatch(l -> l.startsWith("not here: at the ")), all);
        assertTrue(all.contains("not here: at the lower left corner of W1 nothing turns into the sill"), all);
    }

    @Test void aFaceWithoutAReturnIsLeftOutAndTheOtherJudged() {
        String all = said(Window.wall(Window.W1, Window.sheet("inverted-y", "90")));
        assertEquals("not here: at the upper left corner of W1 nothing turns into the head\nholds M1",
                all.lines().skip(2).limit(2).reduce((a, b) -> a + "\n" + b).orElseThrow());
        assertTrue(all.startsWith("broken M1 | W1 sill, +400 to +490, x 500 to 590 | 0 of 90\n"), all);
    }

    @Test void aPartThinnerThanAMillimetreIsWithinTheDrawingsTolerance() {
        String upright = "{'rect': [500,340,800,60]}, {'on': 'W1.sill', 'rect': [%s,0,%s,90]}, {'on': 'W1.left', 'rect': [0,0,90,90]},"
                + " {'on': 'W1.right', 'rect': [0,0,90,90]}";
        Elevation near = Window.wall(Window.W1, HEAD, Window.sheet("i", "90"), Window.tape("A1", upright.formatted("0.99", "799.01")));
        Elevation far = Window.wall(Window.W1, HEAD, Window.sheet("i", "90"), Window.tape("A1", upright.formatted("1.02", "798.98")));
        assertEquals("", Written.found(new BareCorner(), near));
        assertEquals("broken M1 A1 | W1 sill, x 500 to 501, +400 to +490 | 0 of 90", Written.found(new BareCorner(), far));
    }

    @Test void aPinholeInsideACornerPieceIsFound() {
        String piece = "{'id': 'K1', 'material': 'corner-piece', 'shapes': [{'rect': [425,325,75,200]}, {'on': 'W1.sill',"
                + " 'ring': [[0,0],[125,0],[125,90],[0,90]], 'holes': [[[5,40],[8,40],[8,43],[5,43]]]}, {'on': 'W1.left', 'rect': [0,0,125,90]}]}";
        String found = Written.found(new BareCorner(), Window.wall(Window.W1, Window.sheet("diagonal", "90"), piece));
        assertTrue(found.startsWith("broken M1 K1 | W1 sill, +440 to +443, x 505 to 508 | 40 of 90\n"), found);
    }

    @Test void atTheFootOfADoorTheJambAloneIsJudged() {
        String door = "{'id': 'D1', 'kind': 'door', 'rect': [500,0,800,1100], 'reveal': 90}";
        String all = said(Window.wall(door, Window.sheet("diagonal", "90").replace("W1", "D1")));
        assertEquals("not here: at the lower left corner of D1 nothing turns into the sill\n"
                + "broken M1 | D1 left jamb, ±0 to +90, x 500 to 590 | 0 of 90", all.lines().limit(2).reduce((a, b) -> a + "\n" + b)
                .orElseThrow());
    }

    @Test void theRemedyCoversTheBarePartAndTheTapeCoverMore() {
        Finding f = Written.findings(new BareCorner(), Window.wall(Window.W1, Window.sheet("diagonal", "60"))).get(0);
        assertEquals("Stick one corner piece into the lower left corner of W1, 60 deep, at least 85 along the sill and 85 up the jamb, "
                + "and turn it at least 25 out onto the wall.", f.remedy());
    }
}
