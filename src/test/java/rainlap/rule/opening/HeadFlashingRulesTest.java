package rainlap.rule.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rainlap.practice.Accepting;
import rainlap.practice.Limit;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.wall.Elevation;

/** The three rules that walk along the upper edge of a head flashing, and the two that look at it as a whole. */
class HeadFlashingRulesTest {
    private static final String SHEET = Window.sheet("diagonal", "90");
    private static final String OVER_ALL = "{'id': 'T1', 'material': 'foil-tape-75', 'line': [[320,1175],[1480,1175]]}";

    private static String said(Rule rule, Elevation e) {
        return Written.said(rule, e);
    }

    private static Elevation behind(String rect, String... more) {
        String[] pieces = new String[2 + more.length];
        pieces[0] = SHEET;
        pieces[1] = Window.flashing(rect, "'under': ['M1']");
        System.arraycopy(more, 0, pieces, 2, more.length);
        return Window.wall(Window.W1, pieces);
    }

    private static Elevation inFront(String... more) {
        String[] pieces = new String[2 + more.length];
        pieces[0] = SHEET;
        pieces[1] = Window.flashing("[350,1100,1100,75]", "");
        System.arraycopy(more, 0, pieces, 2, more.length);
        return Window.wall(Window.W1, pieces);
    }

    @Test void withoutAHeadFlashingTheyHaveNothingToJudge() {
        Elevation e = Window.wall(Window.W1, SHEET);
        assertEquals("not here: the wall has no head flashing", said(new FlashingInFront(), e));
        assertEquals("not here: the wall has no head flashing", said(new MissingHeadFlap(), e));
        assertEquals("not here: the wall has no head flashing", said(new ShortUpstand(), e));
        assertEquals("not here: W1 has no head flashing", said(new ShortFlashing(), e));
    }

    @Test void behindTheSheetAllHold() {
        Elevation e = behind("[350,1100,1100,75]");
        assertEquals("holds H1", said(new FlashingInFront(), e));
        assertEquals("holds H1", said(new MissingHeadFlap(), e));
        assertEquals("holds H1", said(new ShortUpstand(), e));
    }

    @Test void theLapEndsWhereTheSheetFoldsIntoTheHead() {
        assertEquals("broken H1 M1 | +1150, x 500 to 1300 | 49.99 of 50",
                said(new ShortUpstand(), behind("[350,1000,1100,149.99]")));
        assertEquals("holds H1", said(new ShortUpstand(), behind("[350,1000,1100,150]")));
    }

    @Test void severalShapesAreOneFlashing() {
        String h = "{'id': 'H1', 'material': 'head-flashing', 'under': ['M1'], 'shapes': [{'rect': [350,1120,1100,55]},"
                + " {'rect': [350,1095,1100,25]}]}";
        Elevation e = Window.wall(Window.W1, SHEET, h);
        assertEquals("holds H1", said(new ShortUpstand(), e));
        assertEquals("holds H1", said(new MissingHeadFlap(), e));
    }

    @Test void tapeOverPartOfAFlashingInFrontIsNoDefence() {
        assertEquals("broken H1 M1 | +1175, x 350 to 1450 | 0 of 50", said(new FlashingInFront(), inFront(OVER_ALL)));
        assertEquals("broken H1 M1 | +1175, x 350 to 1450 | 0 of 50",
                said(new FlashingInFront(), inFront(OVER_ALL.replace("1480", "1449"))));
    }

    @Test void tapeLaidBeforeTheFlashingIsNoDefence() {
        Elevation e = Window.wall(Window.W1, SHEET, OVER_ALL, Window.flashing("[350,1100,1100,75]", ""));
        assertEquals("broken H1 M1 | +1175, x 350 to 1450 | 0 of 50", said(new FlashingInFront(), e));
    }

    @Test void aPracticeThatAcceptsTapeIsContentWithIt() {
        assertEquals("holds H1 M1",
                Written.said(new FlashingInFront(), inFront(OVER_ALL), Accepting.tapeInsteadOf(Limit.HEAD_UPSTAND, 50)));
        assertEquals("broken H1 M1 | +1175, x 350 to 1450 | 0 of 50",
                Written.said(new FlashingInFront(), inFront(), Accepting.tapeInsteadOf(Limit.HEAD_UPSTAND, 50)));
    }

    @Test void aSecondLayerLapsOverAFlashingInFront() {
        String flap = Window.membrane("M2", "'rect': [300,%s,1200,530]");
        assertEquals("holds H1", said(new FlashingInFront(), inFront(flap.formatted("1125"))));
        assertEquals("holds H1", said(new ShortUpstand(), inFront(flap.formatted("1125"))));
        assertEquals("broken H1 M2 | +1175, x 350 to 1450 | 49.99 of 50", said(new ShortUpstand(), inFront(flap.formatted("1125.01"))));
        assertEquals("broken H1 M1 | +1175, x 350 to 1450 | 0 of 50", said(new FlashingInFront(), inFront(flap.formatted("1175"))));
    }

    @Test void ofTwoLayersOverTheUpstandTheLongerCounts() {
        String high = Window.membrane("M2", "'rect': [300,1150,1200,500]"), low = Window.membrane("M3", "'rect': [300,1110,600,540]");
        assertEquals("broken H1 M2 | +1175, x 900 to 1450 | 25 of 50", said(new ShortUpstand(), inFront(high, low)));
    }

    @Test void aSlantedFlapIsShortWhereItIsShort() {
        String flap = Window.membrane("M2", "'ring': [[350,1100],[1450,1165],[1450,1650],[350,1650]]");
        assertEquals("broken H1 M2 | +1175, x 773 to 1450 | 10 of 50", said(new ShortUpstand(), inFront(flap)));
    }

    @Test void theStatedWindDecidesWhatALapIsWorth() {
        String json = "{'rainlap': 1, 'exposure': {'wind_m_s': %s}, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]], 'edges': ["
                + Window.FREE + "]}, 'openings': [" + Window.W1 + "], 'pieces': [" + SHEET + ", "
                + Window.flashing("[350,1100,1100,40]", "'under': ['M1']") + "]}";
        // 25 m/s hold up 39.8 mm of water, 25.1 m/s 40.2 mm
        assertEquals("broken H1 M1 | +1140, x 350 to 1450 | 40 of 50", said(new ShortUpstand(), Written.read(json.formatted("25"))));
        assertEquals("broken H1 M1 | +1140, x 350 to 1450 | 40 of 50", said(new ShortUpstand(), Written.read(json.formatted("25.1"))));
    }

    @Test void onlyWhatLiesOnTheWallIsJudged() {
        Elevation e = Window.wall(Window.W1, Window.membrane("M1", "'rect': [0,0,1800,1600]"), Window.flashing("[-100,1100,2000,75]", ""));
        assertEquals("broken H1 M1 | +1175, x 0 to 1800 | 0 of 50", said(new FlashingInFront(), e));
        assertEquals("holds H1", said(new MissingHeadFlap(), e));
    }

    @Test void aFlashingThatEndsWithTheWallCannotBeTold() {
        String wide = "{'id': 'W1', 'kind': 'window', 'rect': [100,400,1500,700], 'reveal': 90}";
        Elevation e = Window.wall(wide, SHEET, Window.flashing("[0,1100,1750,75]", "'under': ['M1']"));
        assertEquals("cannot tell H1: H1 ends at the edge of the wall, 100 past the left jamb of W1; whether it goes on round that edge "
                + "is not drawn here\nholds H1", said(new ShortFlashing(), e));
        Elevation shorter = Window.wall(wide, SHEET, Window.flashing("[0.01,1100,1749.98,75]", "'under': ['M1']"));
        assertEquals("broken H1 | +1100, x 0 to 100 | 99.99 of 150\nbroken H1 | +1100, x 1600 to 1750 | 149.99 of 150",
                said(new ShortFlashing(), shorter));
    }

    @Test void aFlashingFlushWithTheJambHasNothingPastIt() {
        assertEquals("broken H1 | x 500, +1100 to +1175 | 0 of 150\nholds H1", said(new ShortFlashing(), behind("[500,1100,950,75]")));
    }

    @Test void aReasonWithoutTheEavesFiguresCannotBeTold() {
        String reason = Window.window("'reveal': 90, 'head-flashing': 'none', 'reason': 'under a deep porch'");
        assertEquals("cannot tell: W1 has no head flashing, for the reason given (\"under a deep porch\"); without eave_overhang and eave_above "
                + "nobody can tell whether that is enough", said(new MissingHeadFlashing(), Window.wall(reason, SHEET)));
    }

    @Test void anEaveAtTheHeadItselfShelters() {
        String at = Window.window("'reveal': 90, 'head-flashing': 'none', 'eave_overhang': 300, 'eave_above': 0");
        String none = Window.window("'reveal': 90, 'head-flashing': 'none', 'eave_overhang': 0, 'eave_above': 0");
        assertEquals("holds", said(new MissingHeadFlashing(), Window.wall(at, SHEET)));
        assertEquals("broken M1 | +1100, x 500 to 1300 | 0 of 4", said(new MissingHeadFlashing(), Window.wall(none, SHEET)));
    }

    @Test void anEaveSheltersWhetherOrNotAReasonIsGiven() {
        String eave = Window.window("'reveal': 90, 'eave_overhang': 800, 'eave_above': 200");
        assertEquals("holds", said(new MissingHeadFlashing(), Window.wall(eave, SHEET)));
    }

    @Test void aVentNeedsNone() {
        String vent = Window.W1.replace("'window'", "'vent'");
        assertEquals("not here: W1 is neither a window nor a door", said(new MissingHeadFlashing(), Window.wall(vent, SHEET)));
    }
}
