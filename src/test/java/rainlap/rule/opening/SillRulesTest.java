package rainlap.rule.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rainlap.rule.Written;
import rainlap.wall.Elevation;

/** What lines a sill, and what closes it. */
class SillRulesTest {
    private static final String FLUSH = Window.sheet("flush", "0");

    private static Elevation taped(String onSill, String... more) {
        String[] pieces = new String[4 + more.length];
        pieces[0] = FLUSH;
        pieces[1] = Window.tape("A1", "{'rect': [500,340,800,60]}, " + onSill);
        pieces[2] = Window.tape("A2", "{'rect': [440,400,60,700]}, {'on': 'W1.left', 'rect': [0,0,700,50]}");
        pieces[3] = Window.tape("A3", "{'rect': [1300,400,60,700]}, {'on': 'W1.right', 'rect': [0,0,700,50]}");
        System.arraycopy(more, 0, pieces, 4, more.length);
        return Window.wall(Window.W1, pieces);
    }

    @Test void eachCornerIsJudgedByItself() {
        assertEquals("holds A1\nbroken A1 | W1 sill, x 1300, +400 to +490 | 10 of 25", Written.said(new FlatSill(), taped(
                "{'on': 'W1.sill', 'rect': [0,0,800,50]}, {'on': 'W1.left', 'rect': [0,0,30,50]}, {'on': 'W1.right', 'rect': [0,0,10,50]}")));
    }

    @Test void aPanThatStatesItsDamsHolds() {
        String pan = "{'id': 'P1', 'material': 'sill-flashing', 'on': 'W1.sill', 'rect': [0,0,800,50], 'end_dams': 'right'}";
        assertEquals("broken A1 P1 | W1 sill, x 500, +400 to +490 | 0 of 25\nholds A1 P1",
                Written.said(new FlatSill(), taped("{'on': 'W1.sill', 'rect': [0,0,800,50]}", pan)));
    }

    @Test void theBackOfEachPanIsReadFromWhatItStates() {
        String pan = "{'id': 'P1', 'material': '%s', 'on': 'W1.sill', 'rect': [0,0,800,%s]%s}";
        String none = "not here: no pan lies on the sill of W1";
        assertEquals(none, Written.said(new NoBackDam(), Window.wall(Window.W1, FLUSH)));
        assertEquals("holds P1", Written.said(new NoBackDam(), Window.wall(Window.W1, FLUSH, pan.formatted("sill-flashing", "90", ""))));
        assertEquals("holds P1", Written.said(new NoBackDam(), Window.wall(Window.W1, FLUSH, pan.formatted("sill-flashing", "89", ", 'upstand': 8"))));
        assertEquals("broken P1 | W1 sill, +489, x 500 to 1300 | - of 8 | defences 1",
                Written.said(new NoBackDam(), Window.wall(Window.W1, FLUSH, pan.formatted("sill-flashing", "88.99", ", 'upstand': 8"))));
        assertEquals("broken P1 | W1 sill, +490, x 500 to 1300 | 7.99 of 8 | defences 1",
                Written.said(new NoBackDam(), Window.wall(Window.W1, FLUSH, pan.formatted("sill-flashing", "90", ", 'upstand': 7.99"))));
    }

    @Test void theFlapsOfADiagonalCutAreNoTurn() {
        String bare = "not here: the lower %s corner of W1 is not covered on both its sides: that is no turn to measure";
        assertEquals(bare.formatted("left") + "\n" + bare.formatted("right"),
                Written.said(new FlatSill(), Window.wall(Window.W1, Window.sheet("diagonal", "90"))));
    }

    @Test void withoutAFlangeNothingIsKnownOfTheSeal() {
        assertEquals("not here: no flange is drawn at the foot of W1", Written.said(new ClosedSill(), Window.wall(Window.W1, FLUSH)));
    }

    @Test void oneBreakInTheTapeIsEnough() {
        String flange = "{'id': 'F1', 'material': 'window-flange', 'rect': [500,365,800,35]}";
        String left = "{'id': 'T1', 'material': 'foil-tape-60', 'line': [[470,365],[800,365]]}", right = "{'id': 'T2', 'material': 'foil-tape-60', 'line': [[%s,365],[1330,365]]}";
        assertEquals("holds F1", Written.said(new ClosedSill(), Window.wall(Window.W1, FLUSH, flange, left, right.formatted("802"))));
        assertEquals("broken F1 T1 T2 | +365, x 500 to 1300 | - of -",
                Written.said(new ClosedSill(), Window.wall(Window.W1, FLUSH, flange, left, right.formatted("800"))));
    }

    @Test void flashingsThatOnlyMeetAreToldAndSealedOnesAskedForLess() {
        String h1 = "{'id': 'H1', 'material': 'head-flashing', 'rect': [300,1100,500,75], 'under': ['M1']}";
        String h2 = "{'id': 'H2', 'material': 'head-flashing', 'rect': [%s,1100,700,75], 'under': ['M1']%s}";
        assertEquals("broken H1 H2 | x 800, +1100 to +1175 | 0 of 150",
                Written.said(new ShortFlashingLap(), Window.wall(Window.W1, Window.sheet("diagonal", "90"), h1, h2.formatted("800", ""))));
        assertEquals("broken H2 H1 | x 700, +1100 to +1175 | 100 of 150",
                Written.said(new ShortFlashingLap(), Window.wall(Window.W1, Window.sheet("diagonal", "90"), h1, h2.formatted("700", ""))));
        assertEquals("holds H2 H1",
                Written.said(new ShortFlashingLap(), Window.wall(Window.W1, Window.sheet("diagonal", "90"), h1, h2.formatted("700", ", 'bond': ['left']"))));
    }
}
