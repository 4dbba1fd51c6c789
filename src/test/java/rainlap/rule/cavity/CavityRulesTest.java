package rainlap.rule.cavity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.practice.Practices;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** What the rules of the cavity do not know, and cases beside those of their examples. */
class CavityRulesTest {
    private static final List<Rule> ALL = List.of(new ShallowCavity(), new ClosedCavity(), new OpenOutlet());
    private static final String BASE = "'base','free','free','free'";

    private static Elevation wall(String roles, String... pieces) {
        return Written.read("{'rainlap': 1, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]], 'edges': [" + roles + "]},"
                + " 'materials': [{'id': 'sheet', 'is': 'cladding'}, {'id': 'lath', 'is': 'batten'}, {'id': 'deep', 'is': 'batten', 'depth': 20},"
                + " {'id': 'mesh', 'is': 'trim', 'mesh': true}], 'pieces': [" + String.join(",\n", pieces) + "]}");
    }

    private static String piece(String id, String material, double x, double y, double w, double h) {
        return "{'id': '" + id + "', 'material': '" + material + "', 'rect': [" + x + "," + y + "," + w + "," + h + "]}";
    }

    private static String said(Rule rule, Elevation e) {
        return Written.said(rule, e, Practices.common(), Stage.FINISHED);
    }

    @Test void noneSpeaksAtTheWrapStage() {
        Elevation e = wall(BASE, piece("B1", "deep", 0, 0, 45, 1600), piece("C1", "sheet", 0, 0, 1800, 1600));
        for (Rule rule : ALL) {
            assertEquals("not here: no cladding is drawn at this stage", Written.said(rule, e), rule.info().id());
        }
    }

    @Test void aBattenWithoutADepthCannotBeJudged() {
        Elevation e = wall(BASE, piece("B1", "lath", 0, 0, 45, 1600), piece("C1", "sheet", 0, 0, 1800, 1600));
        assertEquals("cannot tell B1: neither the batten nor its material states its depth\nholds B1", said(new ShallowCavity(), e));
        assertEquals("cannot tell C1: the depth of the battens is not stated", said(new ClosedCavity(), e));
    }

    @Test void aFreeEdgeIsWhereTheDrawingStops() {
        Elevation e = wall("'free','free','free','free'", piece("B1", "deep", 0, 0, 45, 1600), piece("C1", "sheet", 0, 0, 1800, 1600));
        assertEquals("not here: the cladding has no foot on this wall", said(new OpenOutlet(), e));
    }

    @Test void claddingThatEndsOnTheWallHasAFootThere() {
        Elevation e = wall("'free','free','free','free'", piece("B1", "deep", 0, 400, 45, 1200), piece("C1", "sheet", 0, 400, 1800, 1200));
        assertEquals("broken C1 | +400, x 45 to 1800 | - of -", said(new OpenOutlet(), e));
    }

    @Test void sheetsSideBySideHaveOneFootAndLapsNone() {
        Elevation e = wall(BASE, piece("B1", "deep", 0, 0, 45, 1600), piece("C1", "sheet", 0, -20, 1000, 900), piece("C2", "sheet", 900, -20, 900, 900),
                piece("C3", "sheet", 0, 700, 1800, 900));
        assertEquals("broken C1 C2 | −20, x 45 to 1800 | - of -", said(new OpenOutlet(), e));
    }

    @Test void aBattenOnUprightBattensDoesNotCloseTheCavityItRestsOn() {
        Elevation e = wall(BASE, piece("B1", "deep", 0, 0, 45, 1600), piece("B2", "deep", 1755, 0, 45, 1600), piece("L1", "deep", 0, 300, 1800, 45),
                piece("C1", "sheet", 0, 0, 1800, 1600));
        assertEquals("holds C1", said(new ClosedCavity(), e));
        assertEquals("holds L1\nholds B1 B2", said(new ShallowCavity(), e));
    }

    @Test void battensInARingEndTheCount() {
        Elevation e = wall(BASE, piece("B1", "deep", 0, 0, 600, 45), piece("B2", "deep", 555, 0, 45, 600), piece("B3", "deep", 0, 555, 600, 45),
                "{'id': 'B4', 'material': 'deep', 'rect': [0, 0, 45, 600], 'under': []}", piece("C1", "sheet", 0, 0, 1800, 1600));
        assertTrue(said(new ShallowCavity(), e).contains("holds"));
    }

    @Test void meshMustLieAtTheFoot() {
        String[] low = {piece("B1", "deep", 0, 0, 45, 1600), piece("N1", "mesh", 0, 0, 1800, 40), piece("C1", "sheet", 0, 0, 1800, 1600)};
        assertEquals("holds C1", said(new OpenOutlet(), wall(BASE, low)));
        String[] high = {low[0], piece("N1", "mesh", 0, 200, 1800, 40), low[2]};
        assertEquals("broken C1 | ±0, x 45 to 1800 | - of -", said(new OpenOutlet(), wall(BASE, high)));
    }
}
