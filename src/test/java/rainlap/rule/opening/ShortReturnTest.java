package rainlap.rule.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rainlap.rule.Written;
import rainlap.wall.Elevation;

class ShortReturnTest {
    private static final String NO_REVEAL = Window.window("'reveal': 0");

    private static String said(Elevation e) {
        return Written.said(new ShortReturn(), e);
    }

    private static String found(Elevation e) {
        return Written.found(new ShortReturn(), e);
    }

    @Test void aWallWithoutOpeningsOrRevealsHasNothingToTurnInto() {
        assertEquals("not here: the wall has no opening", said(Window.wall("", Window.membrane("M1", "'rect': [0,0,1800,1600]"))));
        assertEquals("not here: W1 has no reveal", said(Window.wall(NO_REVEAL, Window.sheet("diagonal", "0"))));
    }

    @Test void allFourSidesAnswer() {
        assertEquals("holds M1\nholds M1\nholds M1\nholds M1", said(Window.wall(Window.W1, Window.sheet("diagonal", "50"))));
    }

    @Test void aHundredthOfAMillimetreShortIsShort() {
        assertEquals(4, found(Window.wall(Window.W1, Window.sheet("diagonal", "49.99"))).lines().count());
        assertEquals("", found(Window.wall(Window.W1, Window.sheet("diagonal", "50"))));
    }

    @Test void aSillPieceThatDoesNotGoOnOntoTheWallTurnsNothing() {
        String alone = Window.tape("A1", "{'on': 'W1.sill', 'rect': [0,0,800,90]}");
        String turned = Window.tape("A1", "{'rect': [500,340,800,60]}, {'on': 'W1.sill', 'rect': [0,0,800,90]}");
        String head = Window.tape("A2", "{'rect': [500,1100,800,60]}, {'on': 'W1.head', 'rect': [0,0,800,90]}");
        assertEquals("broken M1 | W1 sill, +400, x 550 to 1250 | 0 of 50",
                found(Window.wall(Window.W1, head, Window.sheet("i", "90"), alone)));
        assertEquals("", found(Window.wall(Window.W1, head, Window.sheet("i", "90"), turned)));
    }

    @Test void aSillPieceSetBackFromTheEdgeTurnsNothing() {
        String setBack = Window.tape("A1", "{'rect': [500,340,800,60]}, {'on': 'W1.sill', 'rect': [0,0.01,800,89]}");
        String head = Window.tape("A2", "{'rect': [500,1100,800,60]}, {'on': 'W1.head', 'rect': [0,0,800,90]}");
        assertEquals("broken M1 | W1 sill, +400, x 550 to 1250 | 0 of 50",
                found(Window.wall(Window.W1, head, Window.sheet("i", "90"), setBack)));
    }

    @Test void whatIsShortAndWhatIsNotTurnedAreTwoFindingsWithTheirOwnEnds() {
        String sill = Window.tape("A1", "{'rect': [500,340,300,60]}, {'on': 'W1.sill', 'rect': [0,0,300,30]}");
        String head = Window.tape("A2", "{'rect': [500,1100,800,60]}, {'on': 'W1.head', 'rect': [0,0,800,90]}");
        assertEquals("broken M1 | W1 sill, +400, x 800 to 1250 | 0 of 50\n"
                + "broken A1 | W1 sill, +400, x 550 to 800 | 30 of 50",
                found(Window.wall(Window.W1, head, Window.sheet("i", "90"), sill)));
    }

    @Test void aSlopedReturnIsShortWhereItIsShort() {
        String sill = Window.tape("A1", "{'rect': [500,340,800,60]}, {'on': 'W1.sill', 'ring': [[0,0],[800,0],[800,80],[0,40]]}");
        String head = Window.tape("A2", "{'rect': [500,1100,800,60]}, {'on': 'W1.head', 'rect': [0,0,800,90]}");
        assertEquals("broken A1 | W1 sill, +400, x 550 to 700 | 42.5 of 50",
                found(Window.wall(Window.W1, head, Window.sheet("i", "90"), sill)));
    }

    @Test void theTwoCoursesOfAJambAreJudgedAlongTheWholeJamb() {
        String lower = "{'id': 'M1', 'material': 'foil-membrane', 'rect': [-50,-50,1900,850],"
                + " 'cuts': [{'at': 'W1', 'pattern': 'diagonal', 'return': 90}]}";
        String upper = "{'id': 'M2', 'material': 'foil-membrane', 'rect': [-50,650,1900,1000],"
                + " 'cuts': [{'at': 'W1', 'pattern': 'diagonal', 'return': 40}]}";
        assertEquals("broken M2 | W1 left jamb, x 500, +800 to +1050 | 40 of 50\n"
                + "broken M2 | W1 right jamb, x 1300, +800 to +1050 | 40 of 50\n"
                + "broken M2 | W1 head, +1100, x 550 to 1250 | 40 of 50", found(Window.wall(Window.W1, lower, upper)));
    }

    @Test void theFootOfADoorHasNoWallToTurnFrom() {
        String door = "{'id': 'D1', 'kind': 'door', 'rect': [500,0,800,1100], 'reveal': 90}";
        String sheet = Window.sheet("diagonal", "90").replace("W1", "D1");
        assertEquals("not here: beyond the sill of D1 there is no wall\nholds M1\nholds M1\nholds M1", said(Window.wall(door, sheet)));
    }

    @Test void onAShortEdgeTheMiddleIsJudgedAsDeepAsAFlapCanReachThere() {
        String vent = "{'id': 'V1', 'kind': 'vent', 'rect': [500,400,80,80], 'reveal': 90}";
        String sheet = Window.sheet("diagonal", "90").replace("W1", "V1");
        assertEquals("holds M1\nholds M1\nholds M1\nholds M1", said(Window.wall(vent, sheet)));
        assertEquals("broken M1 | V1 sill, +400, x 539 to 541 | 38 of 39",
                found(Window.wall(vent, sheet.replace("'return': 90", "'return': 38"))).lines().findFirst().orElse(""));
    }

    @Test void aSlitOfLessThanAMillimetreIsWithinTheDrawingsTolerance() {
        String head = Window.tape("A3", "{'rect': [500,1100,800,60]}, {'on': 'W1.head', 'rect': [0,0,800,90]}");
        String left = Window.tape("A1", "{'rect': [500,340,400,60]}, {'on': 'W1.sill', 'rect': [0,0,400,90]}");
        String near = Window.tape("A2", "{'rect': [900.99,340,399,60]}, {'on': 'W1.sill', 'rect': [400.99,0,399.01,90]}");
        String far = Window.tape("A2", "{'rect': [901,340,399,60]}, {'on': 'W1.sill', 'rect': [401,0,399,90]}");
        assertEquals("", found(Window.wall(Window.W1, head, Window.sheet("i", "90"), left, near)));
        assertEquals("broken M1 | W1 sill, +400, x 900 to 901 | 0 of 50",
                found(Window.wall(Window.W1, head, Window.sheet("i", "90"), left, far)));
    }
}
