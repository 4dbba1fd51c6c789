package rainlap.rule.tape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static rainlap.joint.Drawn.wall;
import static rainlap.rule.Judged.found;
import static rainlap.rule.Judged.held;

import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.joint.Drawn;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.practice.Practices;
import rainlap.rule.Judged;
import rainlap.rule.Outcome;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Edge cases of the rules of tape; what the textbook shows is in the examples beside each rule's page. */
class TapeRulesTest {
    /** Two courses that lap by so much, joint line at y = 850. */
    private static Drawn courses(double lap) {
        return wall().sheet("M1", 0, 0, 2000, 850 + lap).sheet("M2", 0, 850, 2000, 1000);
    }

    @Test
    void commonPracticeTapesEveryJointHoweverLongTheLap() {
        assertEquals("M2 M1 | +850, x 0 to 2000 | no tape / tape", found(new UntapedJoint(), courses(400)));
        assertEquals("", found(new UntapedJoint(), courses(400).tape("T1", 0, 810, 2000, 80)));
    }

    /** Of the side of A over B 26 are seen below M; the rest lies beneath it, and no tape is asked for there. */
    @Test
    void tapeOverAllThatIsSeenOfAJointIsLaidAlongIt() {
        Drawn foot = wall().sheet("B", 0, 0, 1000, 176).sheet("A", 800, 0, 1200, 176).sheet("M", 0, 26, 2000, 1000);
        assertEquals("A B | x 800, \u00b10 to +26 | no tape / tape\nM A | +26, x 800 to 2000 | no tape / tape\nM B | +26, x 0 to 800 | no tape / tape", found(new UntapedJoint(), foot));
        assertEquals("", found(new UntapedJoint(), foot.tape("T1", 770, 0, 60, 60).tape("T2", 0, 0, 2000, 60)));
    }

    @Test
    void whereALongLapNeedsNoTapeExactlyOnTheLimitIsEnough() {
        assertEquals("", found(new UntapedJoint(), courses(150), "au-abcb-2022"));
        assertEquals(1, held(new UntapedJoint(), courses(150), "au-abcb-2022"));
    }

    @Test
    void aShortLapWithoutTapeIsNamedOnceWhereThePracticeAsksForLapOrTape() {
        assertEquals("", found(new UntapedJoint(), courses(149), "au-abcb-2022"));
        assertInstanceOf(Outcome.DoesNotApply.class, Judged.outcomes(new UntapedJoint(), courses(149).elevation(),
                Practices.find("au-abcb-2022").orElseThrow()).get(0));
    }

    @Test
    void aStripThatOnlyCrossesLeavesTheJointUntaped() {
        Drawn crossed = courses(150).tape("J1", 500, 0, 75, 2000);
        assertEquals("M2 M1 | +850, x 0 to 2000 | no tape / tape", found(new UntapedJoint(), crossed));
        assertEquals("", found(new TapeMissed(), crossed));
    }

    @Test
    void aSealedSheetNeedsNoTape() {
        assertEquals("", found(new UntapedJoint(), courses(150).bond(Bond.sealedAt(Edge.BOTTOM))));
    }

    @Test
    void whatAFurtherSheetHidesNeedsNoTape() {
        Drawn tee = wall().sheet("Ma", 0, 0, 1000, 1000).sheet("Mb", 850, 0, 1150, 1000).sheet("M2", 0, 850, 2000, 1000)
                .tape("T1", 810, 0, 80, 850).tape("T2", 0, 810, 2000, 80);
        assertEquals("", found(new TapeMissed(), tee));
        assertEquals("", found(new UntapedJoint(), tee));
    }

    @Test
    void eachStretchMissedIsItsOwnFinding() {
        Drawn two = courses(150).tape("T1", 300, 810, 700, 80).tape("T2", 1200, 810, 800, 80);
        assertEquals("M2 M1 | +850, x 0 to 300 | 300 missed / taped from end to end\n"
                + "M2 M1 | +850, x 1000 to 1200 | 200 missed / taped from end to end", found(new TapeMissed(), two));
        assertEquals("", found(new TapeMissed(), two, "au-abcb-2022"));
        assertEquals("", found(new UntapedJoint(), two));
    }

    @Test
    void twoTapesEndToEndMissNothing() {
        assertEquals("", found(new TapeMissed(), courses(150).tape("T1", 0, 810, 1000, 80).tape("T2", 1000, 810, 1000, 80)));
        assertEquals("M2 M1 | +850, x 1000 to 1001 | 1 missed / taped from end to end",
                found(new TapeMissed(), courses(150).tape("T1", 0, 810, 1000, 80).tape("T2", 1001, 810, 999, 80)));
        assertEquals("", found(new TapeMissed(), courses(150).tape("T1", 0, 810, 1000, 80).tape("T2", 1000.99, 810, 999.01, 80)), "within the drawing's tolerance");
    }

    @Test
    void whatTheTapeMissesBeyondTheOutlineIsTheNextElevations() {
        Drawn wrapped = courses(150).outline(300, 0, 1400, 1800, EdgeRole.EXTERNAL_CORNER);
        assertEquals("", found(new TapeMissed(), wrapped.tape("T1", 300, 810, 1400, 80)));
        assertEquals("M2 M1 | +850, x 0 to 301 | 301 missed / taped from end to end",
                found(new TapeMissed(), courses(150).outline(300, 0, 1400, 1800, EdgeRole.EXTERNAL_CORNER)
                        .tape("T1", 301, 810, 1399, 80)));
    }

    @Test
    void aTapedButtIsFollowedToo() {
        Drawn butt = wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1000, 2000, 1000).tape("T1", 0, 960, 1500, 80);
        assertEquals("M2 M1 | +1000, x 1500 to 2000 | 500 missed / taped from end to end", found(new TapeMissed(), butt));
        assertEquals("", found(new UntapedJoint(), wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1000, 2000, 1000)));
    }

    @Test
    void aReverseLapIsAskedForNoTape() {
        Drawn reversed = wall().sheet("M2", 0, 850, 2000, 1000).sheet("M1", 0, 0, 2000, 1000);
        assertEquals("", found(new UntapedJoint(), reversed));
        assertEquals("", found(new TapeMissed(), reversed.tape("T1", 0, 960, 1500, 80)));
    }

    @Test
    void coverExactlyOnTheLimitIsEnough() {
        assertEquals("", found(new NarrowTapeCover(), courses(150).tape("T1", 0, 825, 2000, 50)));
        assertEquals("T1 M2 M1 | +850, x 0 to 2000 | 24.99 above it, on M2 / 25 each side",
                found(new NarrowTapeCover(), courses(150).tape("T1", 0, 824.99, 2000, 50)));
        assertEquals("T1 M2 M1 | +850, x 0 to 2000 | 24.99 below it, on M1 / 25 each side",
                found(new NarrowTapeCover(), courses(150).tape("T1", 0, 825.01, 2000, 50)));
    }

    @Test
    void tooNarrowToBothSidesIsOneFinding() {
        assertEquals("T1 M2 M1 | +850, x 0 to 2000 | 20 above it, on M2 and 10 below it, on M1 / 25 each side",
                found(new NarrowTapeCover(), courses(150).tape("T1", 0, 840, 2000, 30)));
    }

    @Test
    void aTapeThatRunsOffIsNarrowFromWhereItFallsBelow() {
        Drawn skew = courses(150).piece("T1", MaterialKind.TAPE,
                new Shape(Surface.WALL, java.util.List.of(Drawn.region(0, 810, 2000, 850, 2000, 930, 0, 890))));
        assertEquals("T1 M2 M1 | +850, x 750 to 2000 | 0 below it, on M1 / 25 each side",
                found(new NarrowTapeCover(), skew));
    }

    @Test
    void whereOneTapeGivesWayToANarrowerOneEachStretchHasItsOwnMeasure() {
        Drawn two = courses(150).tape("T1", 0, 820, 1000, 40).tape("T2", 1000, 845, 1000, 10);
        assertEquals("T1 M2 M1 | +850, x 0 to 1000 | 10 above it, on M2 / 25 each side\n"
                + "T2 M2 M1 | +850, x 1000 to 2000 | 5 above it, on M2 and 5 below it, on M1 / 25 each side",
                found(new NarrowTapeCover(), two));
    }

    @Test
    void sidesOfAPlumbJoint() {
        Drawn beside = wall().sheet("Ma", 0, 0, 1000, 1000).sheet("Mb", 850, 0, 1150, 1000).tape("T1", 840, 0, 60, 1000);
        assertEquals("T1 Mb Ma | x 850, \u00b10 to +1000 | 10 to the left of it, on Ma / 25 each side",
                found(new NarrowTapeCover(), beside));
    }

    @Test
    void beyondAGapTheCoverCountsFromItsFarEdge() {
        Drawn gap = wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1040, 2000, 1000);
        assertEquals("T1 M2 M1 | +1040, x 0 to 2000 | 20 below it, on M1 / 25 each side",
                found(new NarrowTapeCover(), gap.tape("T1", 0, 980, 2000, 100)));
    }

    @Test
    void aTapeThatIsNotAskedForIsNotMeasured() {
        Drawn extra = courses(150).tape("T1", 0, 840, 2000, 30);
        assertEquals("", found(new NarrowTapeCover(), extra, "au-abcb-2022"));
        assertEquals(1, held(new NarrowTapeCover(), extra, "au-abcb-2022"));
    }

    @Test
    void theTapeOnTheUpperEdgeOfACollarIsMeasured() {
        Drawn collar = wall().sheet("M1", 0, 0, 2000, 1000)
                .piece("K1", MaterialKind.COLLAR, new Shape(Surface.WALL, java.util.List.of(Region.of(Box.ofMm(500, 400, 250, 250)))))
                .tape("T1", 450, 600, 350, 60);
        assertEquals("T1 K1 M1 | +650, x 500 to 750 | 10 above it, on M1 / 25 each side",
                found(new NarrowTapeCover(), collar));
    }

    /** A window from x 500 to 1700, y 500 to 1500 in one sheet, with strips 100 wide along the edges in a given order. */
    private static Drawn strips(String order) {
        Drawn d = wall().window("W1", 500, 500, 1200, 1000, 90).sheet("M1", 0, 0, 2200, 2000);
        for (char c : order.toCharArray()) {
            switch (c) {
                case 's' -> d.tape("S", 400, 450, 1400, 100);
                case 'l' -> d.tape("L", 450, 400, 100, 1200);
                case 'r' -> d.tape("R", 1650, 400, 100, 1200);
                case 'h' -> d.tape("H", 400, 1450, 1400, 100);
                default -> throw new IllegalArgumentException(order);
            }
        }
        return d;
    }

    @Test
    void sillThenJambsThenHead() {
        assertEquals("", found(new TapeOrder(), strips("slrh")));
        assertEquals("", found(new TapeOrder(), strips("srlh")));
        assertEquals(4, held(new TapeOrder(), strips("slrh"), "common"));
    }

    @Test
    void eachCornerInTheWrongOrderIsAFinding() {
        assertEquals("S L | +450 to +550, x 450 to 550 | sill over jamb / jamb over sill",
                found(new TapeOrder(), strips("lsrh")));
        assertEquals(2, Judged.findings(new TapeOrder(), strips("lrsh"), "common").size());
        assertEquals(2, Judged.findings(new TapeOrder(), strips("shlr"), "common").size());
        assertEquals(4, Judged.findings(new TapeOrder(), strips("hlrs"), "common").size());
    }

    @Test
    void aTuckedStripLiesWhereItIsTucked() {
        Drawn tucked = wall().window("W1", 500, 500, 1200, 1000, 90).sheet("M1", 0, 0, 2200, 2000)
                .tape("L", 450, 400, 100, 1200).tape("S", 400, 450, 1400, 100, "L");
        assertEquals("", found(new TapeOrder(), tucked));
    }

    @Test
    void underOrOverTheFlangeOfTheWindowBothDo() {
        Shape flange = new Shape(Surface.WALL, java.util.List.of(Region.of(Box.ofMm(465, 500, 35, 1000))));
        Drawn over = strips("s").piece("G", MaterialKind.FRAME, flange).tape("L", 450, 400, 100, 1200);
        Drawn under = strips("sl").piece("G", MaterialKind.FRAME, flange);
        assertEquals("", found(new TapeOrder(), over));
        assertEquals("", found(new TapeOrder(), under));
    }

    @Test
    void besideTheFlangeUpTo50MmAStripStillBelongsToTheJamb() {
        assertEquals(1, Judged.findings(new TapeOrder(), beside(50), "common").size());
        assertEquals(0, Judged.findings(new TapeOrder(), beside(50.01), "common").size());
    }

    /** A jamb strip this far from the jamb, with the sill strip over it. */
    private static Drawn beside(double off) {
        return wall().window("W1", 500, 500, 1200, 1000, 90).sheet("M1", 0, 0, 2200, 2000)
                .tape("L", 400 - off, 400, 100, 1200).tape("S", 200, 450, 1600, 100);
    }

    @Test
    void aCornerPatchBelongsToNoSide() {
        Drawn patch = strips("lr").tape("K", 420, 420, 150, 150);
        assertEquals("", found(new TapeOrder(), patch));
    }

    @Test
    void aStripAlongTwoSidesCannotBeJudgedAgainstThem() {
        Drawn ring = strips("l").add("U", rainlap.material.Material.of("tape", MaterialKind.TAPE),
                java.util.List.of(new Shape(Surface.WALL, java.util.List.of(
                        Drawn.region(1650, 1600, 1650, 550, 400, 550, 400, 450, 1750, 450, 1750, 1600)))), java.util.List.of());
        Outcome o = Judged.outcomes(new TapeOrder(), ring.elevation(), Practices.common()).get(0);
        assertEquals(new Outcome.CannotTell(java.util.List.of("L", "U"), "U runs along more than one side of W1"), o);
    }

    @Test
    void stripsThatLieOnTheRevealOnlyAreJudgedThere() {
        Drawn reveal = wall().window("W1", 500, 500, 1200, 1000, 90)
                .piece("J", MaterialKind.TAPE, Drawn.on("W1", Side.LEFT, 0, 0, 1000, 0, 1000, 90, 0, 90))
                .piece("S", MaterialKind.TAPE, Drawn.on("W1", Side.SILL, 0, 0, 1200, 0, 1200, 90, 0, 90),
                        Drawn.on("W1", Side.LEFT, 0, 0, 60, 0, 60, 90, 0, 90));
        assertEquals("S J | W1 left jamb, +500 to +560, x 500 to 590 | sill over jamb / jamb over sill",
                found(new TapeOrder(), reveal));
    }
}
