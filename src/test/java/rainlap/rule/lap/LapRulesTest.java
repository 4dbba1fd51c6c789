package rainlap.rule.lap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
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

/** Edge cases of the rules of laps; what the textbook shows is in the examples beside each rule's page. */
class LapRulesTest {
    private static Drawn courses(double lap) {
        return wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1000 - lap, 2000, 1000);
    }

    @Test
    void exactlyOnTheLimitIsEnoughAHundredthLessIsNot() {
        assertEquals("", found(new ShortCourseLap(), courses(150)));
        assertEquals(1, held(new ShortCourseLap(), courses(150), "common"));
        assertEquals("M2 M1 | +850, x 0 to 2000 | 149.99 / 150", found(new ShortCourseLap(), courses(149.99)));
    }

    @Test
    void eachPracticeAsksForItsOwn() {
        assertEquals("", found(new ShortCourseLap(), courses(51), "us-irc-2015"));
        assertEquals("M2 M1 | +949, x 0 to 2000 | 50.99 / 51", found(new ShortCourseLap(), courses(50.99), "us-irc-2015"));
        assertEquals("", found(new ShortCourseLap(), courses(75), "nz-metal-cop"));
        assertEquals("", found(new ShortCourseLap(), courses(100), "uk-nhbc-2021"));
        assertEquals("M2 M1 | +901, x 0 to 2000 | 99 / 100", found(new ShortCourseLap(), courses(99), "ca-obc"));
    }

    @Test
    void tapeStandsInForTheLapOnlyWhereThePracticeSaysSo() {
        Drawn taped = courses(100).tape("T1", 0, 860, 2000, 80);
        assertEquals("", found(new ShortCourseLap(), taped, "au-abcb-2022"));
        assertEquals("M2 M1 | +900, x 0 to 2000 | 100 / 150", found(new ShortCourseLap(), taped));
        assertEquals("M2 M1 | +900, x 0 to 2000 | 100 / 150, or tape",
                found(new ShortCourseLap(), courses(100), "au-abcb-2022"));
    }

    @Test
    void aStripThatOnlyCrossesTheJointIsNoTapeOnIt() {
        Drawn crossed = courses(100).tape("J1", 500, 0, 75, 2000);
        assertEquals("M2 M1 | +900, x 0 to 500 | 100 / 150, or tape\n"
                + "M2 M1 | +900, x 575 to 2000 | 100 / 150, or tape", found(new ShortCourseLap(), crossed, "au-abcb-2022"));
    }

    @Test
    void eachStretchBelowTheLimitIsItsOwnFinding() {
        Drawn notched = wall().ring("M1", 0, 0, 2000, 0, 2000, 1000, 1500, 1000, 1500, 900, 1000, 900, 1000, 1000, 500, 1000, 500, 920,
                0, 920).sheet("M2", 0, 840, 2000, 1000);
        assertEquals("M2 M1 | +840, x 0 to 500 | 80 / 150\nM2 M1 | +840, x 1000 to 1500 | 60 / 150",
                found(new ShortCourseLap(), notched));
    }

    @Test
    void aLapThatStartsAtNothingIsShortUpToWhereItReachesTheLimit() {
        Drawn wedge = wall().ring("M1", 0, 0, 2000, 0, 2000, 1200, 0, 1000).sheet("M2", 0, 1000, 2000, 1000);
        assertEquals("M2 M1 | +1000, x 0 to 1500 | 0 / 150", found(new ShortCourseLap(), wedge));
    }

    @Test
    void slopedEdgesAreJudgedByBothLimits() {
        // two rectangles turned so that their long sides rise 3 in 4; the lap is 100 square to the edge
        Drawn sloped = wall().ring("M1", 0, 0, 1600, 1200, 1000, 2000, -600, 800).ring("M2", -540, 720, 1060, 1920, 460, 2720, -1140, 1520);
        assertEquals("M2 M1 | +720 to +1920, x \u2212540 to 1060 | 100 / 150", found(new ShortCourseLap(), sloped));
        assertEquals("M2 M1 | +720 to +1920, x \u2212540 to 1060 | 100 / 150", found(new ShortEndLap(), sloped));
        assertEquals("", found(new ShortEndLap(), sloped, "ca-obc"));
    }

    @Test
    void aPlumbEdgeIsAskedForAnEndLapOnly() {
        Drawn beside = wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 900, 0, 1000, 1000);
        assertEquals("M2 M1 | x 900, \u00b10 to +1000 | 100 / 150", found(new ShortEndLap(), beside));
        assertEquals("", found(new ShortCourseLap(), beside));
        assertInstanceOf(Outcome.DoesNotApply.class,
                Judged.outcomes(new ShortCourseLap(), beside.elevation(), Practices.common()).get(0));
    }

    @Test
    void limitsOfMembranesAreNotAskedOfFlashings() {
        Drawn flashing = wall().sheet("M1", 0, 0, 2000, 1000)
                .piece("F1", MaterialKind.FLASHING, new Shape(Surface.WALL, java.util.List.of(Region.of(Box.ofMm(0, 900, 2000, 500)))));
        assertEquals("", found(new ShortCourseLap(), flashing));
    }

    @Test
    void aSealedSheetOverItsNeighbourCountsAsTapedWhereTapeWillDo() {
        Drawn sealed = courses(100).bond(Bond.sealedAt(Edge.BOTTOM));
        assertEquals("", found(new ShortCourseLap(), sealed, "au-abcb-2022"));
        assertEquals("M2 M1 | +900, x 0 to 2000 | 100 / 150", found(new ShortCourseLap(), sealed));
    }

    @Test
    void lapsOnTheSillOfAnOpeningAreJudgedToo() {
        Drawn sill = wall().window("W1", 0, 0, 1200, 1000, 90)
                .piece("S1", MaterialKind.MEMBRANE, Drawn.on("W1", Side.SILL, 0, 0, 700, 0, 700, 90, 0, 90))
                .piece("S2", MaterialKind.MEMBRANE, Drawn.on("W1", Side.SILL, 600, 0, 1200, 0, 1200, 90, 600, 90));
        assertEquals("S2 S1 | W1 sill, x 600, \u00b10 to +90 | 100 / 150", found(new ShortEndLap(), sill));
    }

    @Test
    void reversedHoweverLongTapedOrNot() {
        Drawn reversed = wall().sheet("M2", 0, 700, 2000, 1000).sheet("M1", 0, 0, 2000, 1000);
        assertEquals("M1 M2 | +1000, x 0 to 2000 | 300 reversed / upper over lower", found(new ReverseLap(), reversed));
        assertEquals("M1 M2 | +1000, x 0 to 2000 | 300 reversed, taped / upper over lower",
                found(new ReverseLap(), reversed.tape("T1", 0, 960, 2000, 80)));
    }

    @Test
    void theRemedyOfAReverseLapDrawsTheFootOut() {
        String enough = Judged.findings(new ReverseLap(),
                wall().sheet("M2", 0, 700, 2000, 1000).sheet("M1", 0, 0, 2000, 1000), "common").get(0).remedy();
        assertEquals("Draw the foot of M2 out over M1; it then laps 300, 150 is asked for. Tape the joint.", enough);
        String shorter = Judged.findings(new ReverseLap(),
                wall().sheet("M2", 0, 900, 2000, 1000).sheet("M1", 0, 0, 2000, 1000), "common").get(0).remedy();
        assertEquals("Draw the foot of M2 out over M1. It then laps only 100: slip a strip in behind it and over M1 that laps each by 150."
                + " Tape the joint.",
                shorter);
    }

    @Test
    void anUpperEdgeBeneathTheNextSheetMeetsNoWater() {
        Drawn apron = wall().sheet("M1", 0, 0, 2000, 1000).sheet("A1", 500, 600, 800, 380).sheet("M2", 0, 800, 2000, 1000);
        assertEquals("", found(new ReverseLap(), apron));
        assertEquals("A1 M1 | +700, x 500 to 1300 | 100 reversed / upper over lower",
                found(new ReverseLap(), wall().sheet("M1", 0, 0, 2000, 1000).sheet("A1", 500, 600, 800, 100)));
    }

    @Test
    void aPatchIsTuckedThroughACut() {
        String cut = "Cut M1 level, 150 below the upper edge of A1, and tuck that edge in behind it; tape the cut and its ends.";
        assertEquals(cut, Judged.findings(new ReverseLap(),
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("A1", 500, 600, 800, 300), "common").get(0).remedy());
        assertEquals("Use a patch at least 300 high, from +599 to +899. " + cut, Judged.findings(new ReverseLap(),
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("A1", 500, 600, 800, 299), "common").get(0).remedy());
    }

    @Test
    void openUpperEdgesOfOtherPiecesMayBeTaped() {
        Drawn collar = wall().sheet("M1", 0, 0, 2000, 1000)
                .piece("K1", MaterialKind.COLLAR, new Shape(Surface.WALL, java.util.List.of(Region.of(Box.ofMm(500, 400, 250, 250)))));
        assertEquals("K1 M1 | +650, x 500 to 750 | upper edge open / tucked in or taped", found(new ReverseLap(), collar));
        assertEquals("K1 M1 | +650, x 700 to 750 | upper edge open / tucked in or taped",
                found(new ReverseLap(), collar.tape("T1", 450, 620, 250, 60)));
        assertEquals("", found(new ReverseLap(), collar.tape("T2", 700, 620, 100, 60)));
    }

    @Test
    void aLooseTapeIsOpenAtTheTopAnAdheredOneIsNot() {
        assertEquals("T1 M1 | +540, x 0 to 2000 | upper edge open / tucked in or taped", found(new ReverseLap(),
                wall().sheet("M1", 0, 0, 2000, 1000).tape("T1", 0, 480, 2000, 60).bond(Bond.LOOSE)));
        assertEquals("", found(new ReverseLap(), wall().sheet("M1", 0, 0, 2000, 1000).tape("T1", 0, 480, 2000, 60)));
    }

    @Test
    void aHeadFlashingInFrontIsForTheRulesOfOpenings() {
        Shape at = new Shape(Surface.WALL, java.util.List.of(Region.of(Box.ofMm(350, 1000, 1500, 75))));
        Drawn head = wall().window("W1", 500, 200, 1200, 800, 0).sheet("M1", 0, 0, 2000, 1500).piece("H1", MaterialKind.FLASHING, at);
        assertEquals("", found(new ReverseLap(), head));
        Drawn elsewhere = wall().sheet("M1", 0, 0, 2000, 1500).piece("H1", MaterialKind.FLASHING, at);
        assertEquals("H1 M1 | +1075, x 350 to 1850 | upper edge open / tucked in or taped",
                found(new ReverseLap(), elsewhere));
    }

    @Test
    void buttsAndGapsAreFindingsAlsoUnderTape() {
        Drawn butt = wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1000, 2000, 1000);
        assertEquals("M2 M1 | +1000, x 0 to 2000 | edges meet / lap of 150", found(new ButtJoint(), butt));
        assertEquals("M2 M1 | +1000, x 0 to 2000 | edges meet, taped / lap of 150",
                found(new ButtJoint(), butt.tape("T1", 0, 960, 2000, 80)));
        Drawn gap = wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 1040, 0, 1000, 1000);
        assertEquals("M2 M1 | x 1040, \u00b10 to +1000 | gap of 40 / lap of 150", found(new OpenGap(), gap));
        assertEquals("", found(new ButtJoint(), gap));
    }

    @Test
    void theStripThatMendsAGapLapsBothSides() {
        Drawn gap = wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1040, 2000, 1000);
        assertEquals("Slip a strip 340 high in behind M2 and over M1, so that it laps each by 150, and tape its edges.",
                Judged.findings(new OpenGap(), gap, "common").get(0).remedy());
        Drawn lowerLast = wall().sheet("M2", 0, 1040, 2000, 1000).sheet("M1", 0, 0, 2000, 1000);
        assertEquals("Slip a strip 340 high in behind M2 and over M1, so that it laps each by 150, and tape its edges.",
                Judged.findings(new OpenGap(), lowerLast, "common").get(0).remedy());
    }

    @Test
    void whereAPracticeIsContentWithTapeTheButtIsCommonPractices() {
        Drawn taped = wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1000, 2000, 1000).tape("T1", 0, 960, 2000, 80);
        var f = Judged.findings(new ButtJoint(), taped, "au-abcb-2022").get(0);
        assertEquals("common", f.spokenBy().orElseThrow());
        assertTrue(f.says().endsWith("au-abcb-2022 would be content with the tape."), f.says());
        assertEquals("au-abcb-2022", Judged.findings(new ButtJoint(), wall().sheet("M1", 0, 0, 2000, 1000)
                .sheet("M2", 0, 1000, 2000, 1000), "au-abcb-2022").get(0).spokenBy().orElseThrow());
    }

    @Test
    void bareWallNamesWhatBordersIt() {
        Drawn bare = wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1200, 2000, 800);
        assertEquals("M1 M2 | +1000 to +1200, x 0 to 2000 | bare, 2000 \u00d7 200 / covered", found(new BareWall(), bare));
        assertEquals("", found(new BareWall(), bare.sheet("M3", 0, 900, 2000, 400)));
    }

    @Test
    void endLapsOfSuccessiveCoursesStandApart() {
        assertEquals("M2b M2a M1b M1a | +850, x 850 to 999 | 149 apart / 150", found(new UnstaggeredLaps(), twoCourses(850, 999)));
        assertEquals("", found(new UnstaggeredLaps(), twoCourses(850, 1000)));
        assertEquals("", found(new UnstaggeredLaps(), twoCourses(850, 700)));
        assertEquals("M2b M2a M1b M1a | x 850, +850 to +1000 | 0 apart / 150", found(new UnstaggeredLaps(), twoCourses(850, 850)));
    }

    /** End laps of 100 with their exposed edges at these places. */
    private static Drawn twoCourses(double lower, double upper) {
        return wall().sheet("M1a", 0, 0, lower + 100, 1000).sheet("M1b", lower, 0, 2000 - lower, 1000)
                .sheet("M2a", 0, 850, upper + 100, 1000).sheet("M2b", upper, 850, 2000 - upper, 1000);
    }

    @Test
    void thirdCourseMayStandStraightAboveTheFirst() {
        Drawn three = twoCourses(600, 1200).sheet("M3a", 0, 1700, 700, 1000).sheet("M3b", 600, 1700, 1400, 1000);
        assertEquals("", found(new UnstaggeredLaps(), three));
        assertEquals(2, held(new UnstaggeredLaps(), three, "common"));
    }

    @Test
    void theSideOfAPatchIsNoEndLapOfACourse() {
        Drawn apron = wall().sheet("M1", 0, 0, 2000, 1000).sheet("A1", 500, 600, 400, 390)
                .sheet("M2a", 0, 840, 700, 1000).sheet("M2b", 550, 840, 1450, 1000);
        assertEquals("", found(new UnstaggeredLaps(), apron));
    }

    @Test
    void theSideOfAnUpperSheetOnTheCourseBelowIsNoEndLapOfACourse() {
        Drawn butt = wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 800, 1000).sheet("M3", 800, 850, 1200, 1050);
        assertEquals("", found(new UnstaggeredLaps(), butt));
        Drawn uneven = wall().sheet("M1a", 0, 0, 950, 1000).sheet("M1b", 850, 0, 1150, 1000)
                .sheet("M2a", 0, 900, 950, 1000).sheet("M2b", 850, 850, 1150, 1050);
        assertEquals("M2b M2a M1b M1a | x 850, +900 to +1000 | 0 apart / 150", found(new UnstaggeredLaps(), uneven));
    }

    @Test
    void aButtAtTheFoldOfABuildingCornerIsForTheRulesOfCorners() {
        assertEquals("", found(new ButtJoint(), wall().outline(0, 0, 1000, 1000, EdgeRole.EXTERNAL_CORNER)
                .sheet("M1", 0, 0, 1000, 1000).sheet("M2", 1000, 0, 300, 1000)));
        assertEquals("M2 M1 | x 990, \u00b10 to +1000 | edges meet / lap of 150", found(new ButtJoint(),
                wall().outline(0, 0, 1000, 1000, EdgeRole.EXTERNAL_CORNER).sheet("M1", 0, 0, 990, 1000).sheet("M2", 990, 0, 310, 1000)));
    }

    @Test
    void endLapsKeepOffTheJambsOfAnOpening() {
        assertEquals("", found(new EndLapNearOpening(), endLapAt(350)));
        assertEquals("Mb Ma | x 351, \u00b10 to +2000 | 149 from W1 / 150", found(new EndLapNearOpening(), endLapAt(351)));
    }

    /** A window from x 500 to 1700, y 500 to 1500; an end lap of 150 with its edge at x. */
    private static Drawn endLapAt(double x) {
        return wall().window("W1", 500, 500, 1200, 1000, 0).sheet("Ma", 0, 0, x + 150, 2000).sheet("Mb", x, 0, 3000 - x, 2000);
    }

    @Test
    void anEndLapOverTheMiddleOfTheHeadIsFarFromBothCorners() {
        assertEquals("", found(new EndLapNearOpening(), endLapAt(1100)));
        assertEquals("Mb Ma | x 649, +1500 to +2000 | 149 from W1 / 150\n"
                + "Mb Ma | x 649, \u00b10 to +500 | 149 from W1 / 150", found(new EndLapNearOpening(), endLapAt(649)));
        assertEquals("", found(new EndLapNearOpening(), endLapAt(650)));
    }

    @Test
    void towardsACornerTheDistanceIsStraight() {
        // the end lap begins 90 above and 120 beside the corner: 150 straight
        Drawn at = wall().window("W1", 500, 500, 1200, 1000, 0).sheet("M1", -1000, 0, 4000, 1700)
                .sheet("Ma", -1000, 1590, 1530, 800).sheet("Mb", 380, 1590, 3000, 800);
        assertEquals("", found(new EndLapNearOpening(), at));
        Drawn near = wall().window("W1", 500, 500, 1200, 1000, 0).sheet("M1", -1000, 0, 4000, 1700)
                .sheet("Ma", -1000, 1589, 1530, 800).sheet("Mb", 380, 1589, 3000, 800);
        assertEquals("Mb Ma | x 380, +1589 to +2389 | 149 from W1 / 150", found(new EndLapNearOpening(), near));
    }
}
