package rainlap.rule.edge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.wall.Elevation;

class CornerRulesTest {
    private static final String LEFT = "'base','free','eave','external-corner'";
    private static final String TAPE = "{'id': 'C1', 'material': 'foil-tape-100', 'line': [[0,-40],[0,1640]]}";

    private static String sheet(String id, String rect) {
        return "{'id': '" + id + "', 'material': 'foil-membrane', 'rect': " + rect + "}";
    }

    private static String said(Rule rule, String... pieces) {
        return Written.said(rule, Written.wall(LEFT, "", pieces));
    }

    @Test void aWallWithoutCornersHasNothingToJudge() {
        Elevation e = Written.wall("'free','free','free','free'", "", sheet("M1", "[0,0,1800,1600]"));
        assertEquals("not here: the outline has no building corner", Written.said(new UnwrappedCorner(), e));
        assertEquals("not here: the outline has no building corner", Written.said(new ShortCornerWrap(), e));
        assertEquals("not here: the outline has no building corner", Written.said(new UntapedCorner(), e));
    }

    @Test void toEndAtTheFoldIsNotToGoRound() {
        assertEquals("broken M1 | x 0, ±0 to +1600 | 0 of 300 | defences 0", said(new UnwrappedCorner(), sheet("M1", "[0,-40,1800,1680]")));
        assertEquals("holds M1", said(new UnwrappedCorner(), sheet("M1", "[-0.01,-40,1801,1680]")));
        assertEquals("broken M1 | x 0, ±0 to +1600 | 0.01 of 300 | defences 1", said(new ShortCornerWrap(), sheet("M1", "[-0.01,-40,1801,1680]")));
    }

    @Test void whereNothingGoesRoundTheOtherTwoDoNotSpeak() {
        assertEquals("holds", said(new ShortCornerWrap(), sheet("M1", "[0,-40,1800,1680]")));
        assertEquals("holds", said(new UntapedCorner(), sheet("M1", "[0,-40,1800,1680]")));
    }

    @Test void aCornerWithNothingNearNamesNothing() {
        assertEquals("broken  | x 0, ±0 to +1600 | 0 of 300 | defences 0", said(new UnwrappedCorner(), sheet("M1", "[101,-40,1800,1680]")));
    }

    @Test void oneHundredthLessThanAskedIsShort() {
        assertEquals("broken M1 | x 0, ±0 to +1600 | 299.99 of 300 | defences 1", said(new ShortCornerWrap(), sheet("M1", "[-299.99,-40,2100,1680]")));
        assertEquals("holds M1", said(new ShortCornerWrap(), sheet("M1", "[-300,-40,2100,1680]")));
    }

    @Test void ofSeveralSheetsTheOneThatGoesFurthestCounts() {
        assertEquals("broken M1 | x 0, ±0 to +800 | 200 of 300 | defences 1",
                said(new ShortCornerWrap(), sheet("M1", "[-200,-40,2000,1680]"), sheet("M2", "[-310,800,2110,840]")));
    }

    @Test void aStretchIsFoundWhereItIs() {
        assertEquals("broken  | x 0, +600 to +602 | 0 of 300 | defences 0", said(new UnwrappedCorner(), sheet("M1", "[-300,-40,2100,640]"),
                sheet("M2", "[-300,602,2100,1038]")));
        assertEquals("holds M1 M2", said(new UnwrappedCorner(), sheet("M1", "[-300,-40,2100,640]"), sheet("M2", "[-300,600.99,2100,1040]")));
    }

    @Test void aSlopedEndIsShortWhereItIsShort() {
        String sloped = "{'id': 'M1', 'material': 'foil-membrane', 'ring': [[-400,0],[1800,0],[1800,1600],[-200,1600]]}";
        assertEquals("broken M1 | x 0, +800 to +1600 | 200 of 300 | defences 1", said(new ShortCornerWrap(), sloped));
    }

    @Test void tapeOverAButtIsOneDefenceOnlyWhereItCoversAllOfIt() {
        String sheet = sheet("M1", "[0,-40,1800,1680]");
        assertEquals("broken M1 | x 0, ±0 to +1600 | 0 of 300 | defences 1", said(new UnwrappedCorner(), sheet, TAPE));
        assertEquals("broken M1 | x 0, ±0 to +1600 | 0 of 300 | defences 0", said(new UnwrappedCorner(), sheet, TAPE.replace("1640", "1599")));
    }

    @Test void tapeOnOneSideOfTheFoldIsNoTapeOverIt() {
        String sheet = sheet("M1", "[-320,-40,2120,1680]"), beside = TAPE.replace("[[0,-40],[0,1640]]", "[[50,-40],[50,1640]]");
        assertEquals("broken M1 | x 0, ±0 to +1600 | 0 of 25 | defences 1", said(new UntapedCorner(), sheet, beside));
    }

    @Test void looseTapeIsNoTape() {
        String sheet = sheet("M1", "[-320,-40,2120,1680]"), loose = TAPE.replace("'line'", "'bond': 'loose', 'line'");
        assertEquals("broken M1 | x 0, ±0 to +1600 | 0 of 25 | defences 1", said(new UntapedCorner(), sheet, loose));
        assertEquals("holds M1", said(new UntapedCorner(), sheet, TAPE));
    }

    @Test void whatIsNotTapedAndWhatIsTapedTooLittleAreTwoFindings() {
        String sheet = sheet("M1", "[-320,-40,2120,1680]"), off = TAPE.replace("[[0,-40],[0,1640]]", "[[-30,-40],[-30,900]]");
        assertEquals("broken M1 | x 0, +900 to +1600 | 0 of 25 | defences 1\nbroken C1 M1 | x 0, ±0 to +900 | 20 of 25 | defences 1",
                said(new UntapedCorner(), sheet, off));
    }

    @Test void twoTapesOverOnePlaceHelpEachOtherOnlyAsTheBetterOfThem() {
        String sheet = sheet("M1", "[-320,-40,2120,1680]"), left = TAPE.replace("[[0,-40],[0,1640]]", "[[-30,-40],[-30,1640]]");
        String right = left.replace("C1", "C2").replace("-30", "30");
        assertEquals("broken C1 C2 M1 | x 0, ±0 to +1600 | 20 of 25 | defences 1", said(new UntapedCorner(), sheet, left, right));
    }

    @Test void internalCornersAreJudgedAlike() {
        Elevation e = Written.wall("'base','internal-corner','eave','free'", "", sheet("M1", "[0,0,1800,1600]"));
        assertEquals("broken M1 | x 1800, ±0 to +1600 | 0 of 300 | defences 0", Written.said(new UnwrappedCorner(), e));
    }

    /** Its upper edge would lie open on the sheet above, and its foot on the one beneath. */
    @Test void aStripIsLongEnoughToGoInBehindTheSheetAboveAndPastTheBase() {
        String lower = sheet("M1", "[10,-40,1790,840]"), upper = sheet("M2", "[-300,650,2100,990]");
        assertEquals("Wrap a strip of membrane round it, 840 long, from \u221240 to +800, 300 to each side, over the sheets there, its upper end tucked in by 150 behind M2. "
                + "Tape its edges and the fold. Or lay sheets that run 300 on round the corner.", remedy(new UnwrappedCorner(), lower, upper));
        assertEquals("Take C1 off there and wrap a strip of membrane round it, 176 long, from \u221225 to +151, 300 to each side, over the sheets there, its upper end tucked in by 150 behind M1. "
                + "Tape its edges and the fold anew. Or lay sheets that run 300 on round the corner.", remedy(new UnwrappedCorner(), sheet("M1", "[-300,1,2100,1639]"), TAPE));
    }

    @Test void aStripLapsTheSheetBelowAndGoesThroughASlitWhereOneGoesOnBesideIt() {
        String lower = sheet("M1", "[-300,-40,2100,840]"), upper = sheet("M2", "[0,650,1800,990]");
        assertEquals("Wrap a strip of membrane round it, 990 long, from +650 to +1640, 300 to each side, over the sheets there, lapping M1 below by 150. Tape its edges and the fold. "
                + "Or lay sheets that run 300 on round the corner.", remedy(new UnwrappedCorner(), lower, upper));
        String notched = "{'id': 'M1', 'material': 'foil-membrane', 'ring': [[-300,-40],[1800,-40],[1800,1640],[-300,1640],[-300,900],[10,900],[10,700],[-300,700]]}";
        assertEquals("Wrap a strip of membrane round it, 500 long, from +550 to +1050, 300 to each side, over the sheets there, lapping M1 below by 150, its upper end tucked in by 150"
                + " through a slit in M1 at +900. Tape its edges and the fold. Or lay sheets that run 300 on round the corner.", remedy(new UnwrappedCorner(), notched));
    }

    @Test void aWrapThatIsTooShortIsMendedByTheSameStrip() {
        assertEquals("Wrap a strip of membrane round it, 1680 long, from \u221240 to +1640, 300 to each side, over the sheets there. Tape its edges and the fold.",
                remedy(new ShortCornerWrap(), sheet("M1", "[-200,-40,2000,1680]")));
    }

    private static String remedy(Rule rule, String... pieces) {
        return Written.findings(rule, Written.wall(LEFT, "", pieces)).get(0).remedy();
    }
}
