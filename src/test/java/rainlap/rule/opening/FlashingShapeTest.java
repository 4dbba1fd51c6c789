package rainlap.rule.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.wall.Elevation;

/** Fall, drip and end dams: what an elevation cannot show and a file may leave open. */
class FlashingShapeTest {
    private static final String SHEET = Window.sheet("diagonal", "90");

    private static Elevation with(String... pieces) {
        String[] all = new String[pieces.length + 1];
        all[0] = SHEET;
        System.arraycopy(pieces, 0, all, 1, pieces.length);
        return Window.wall(Window.W1, all);
    }

    private static String said(Rule rule, String rect, String more) {
        return Written.said(rule, with(Window.flashing(rect, more)));
    }

    @Test void whatNobodyStatesNobodyCanTell() {
        Elevation e = Written.read("{'rainlap': 1, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]], 'edges': [" + Window.FREE + "]},"
                + " 'openings': [" + Window.W1 + "], 'materials': [{'id': 'bent', 'is': 'flashing'}], 'pieces': [" + SHEET
                + ", {'id': 'H1', 'material': 'bent', 'rect': [350,1100,1100,75], 'under': ['M1']}]}");
        assertEquals("cannot tell H1: neither H1 nor its material bent states how far it falls outwards (fall_deg)", Written.said(new FlatFlashing(), e));
        assertEquals("cannot tell H1: neither H1 nor its material bent states how far its drip stands off the face below (drip)", Written.said(new NoDrip(), e));
        String dams = "cannot tell H1: neither H1 nor its material bent states which ends are turned up (end_dams)";
        assertEquals(dams + "\n" + dams, Written.said(new NoEndDam(), e));
    }

    @Test void aTurnedUpEndWithoutAHeightCannotBeTold() {
        Elevation e = Written.read("{'rainlap': 1, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]], 'edges': [" + Window.FREE + "]},"
                + " 'openings': [" + Window.W1 + "], 'materials': [{'id': 'bent', 'is': 'flashing', 'end_dams': 'left'}], 'pieces': [" + SHEET
                + ", {'id': 'H1', 'material': 'bent', 'rect': [350,1100,1100,75], 'under': ['M1']}]}");
        assertEquals("cannot tell H1: neither H1 nor its material bent states how high its ends are turned up (end_dam)\n"
                + "broken H1 | x 1450, +1100 to +1175 | 0 of 25", Written.said(new NoEndDam(), e));
    }

    @Test void anUprightFlashingIsAskedForNoFall() {
        String none = "not here: no flashing lies across the wall";
        assertEquals(none, said(new FlatFlashing(), "[350,300,75,900]", "'fall_deg': 0"));
        assertEquals(none, said(new NoDrip(), "[350,300,75,900]", "'drip': 0"));
    }

    @Test void whereOneFlashingRunsOnIntoAnotherThereIsNoEnd() {
        Elevation e = with("{'id': 'H1', 'material': 'head-flashing', 'rect': [350,1100,600,75], 'under': ['M1'], 'end_dams': 'left'}",
                "{'id': 'H2', 'material': 'head-flashing', 'rect': [850,1100,600,75], 'under': ['M1'], 'end_dams': 'right'}");
        assertEquals("holds H1\nnot here: at the right end of H1 the flashing goes on as H2\nnot here: at the left end of H2 the flashing goes on as H1\nholds H2",
                Written.said(new NoEndDam(), e));
    }

    @Test void flashingsThatOnlyMeetEndToEndAreOneRun() {
        Elevation e = with("{'id': 'H1', 'material': 'head-flashing', 'rect': [350,1100,500,75], 'under': ['M1'], 'end_dams': 'left'}",
                "{'id': 'H2', 'material': 'head-flashing', 'rect': [850,1100,600,75], 'under': ['M1'], 'end_dams': 'right'}");
        assertEquals("holds H1\nnot here: at the right end of H1 the flashing goes on as H2\nnot here: at the left end of H2 the flashing goes on as H1\nholds H2",
                Written.said(new NoEndDam(), e));
    }

    @Test void atTheEdgeOfTheWallItMayGoOn() {
        assertEquals("cannot tell H1: the left end of H1 lies at the edge of the wall; whether the flashing goes on round that edge is not drawn here\nholds H1",
                said(new NoEndDam(), "[0,1100,1450,75]", "'end_dams': 'right', 'under': ['M1']"));
    }
}
