package rainlap.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rainlap.joint.Drawn.lines;
import static rainlap.joint.Drawn.wall;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Region;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

class JointTest {
    @Test
    void upperSheetOverLowerIsACourseLap() {
        assertEquals("course-lap M2/M1 (0 900, 2000 900) lap 100",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 1000).joints());
    }

    @Test
    void lowerSheetOutsideIsAReverseLap() {
        assertEquals("reverse-lap M1/M2 (2000 1000, 0 1000) lap 100",
                wall().sheet("M2", 0, 900, 2000, 1000).sheet("M1", 0, 0, 2000, 1000).joints());
    }

    @Test
    void tuckedSheetLiesInside() {
        assertEquals("course-lap M2/M1 (0 900, 2000 900) lap 100",
                wall().sheet("M2", 0, 900, 2000, 1000).sheet("M1", 0, 0, 2000, 1000, "M2").joints());
    }

    @Test
    void sheetBesideSheetIsAnEndLap() {
        assertEquals("end-lap M2/M1 (900 1000, 900 0) lap 100",
                wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 900, 0, 1000, 1000).joints());
    }

    @Test
    void lapAndGapOfOneHundredthOfAMillimetre() {
        assertEquals("course-lap M2/M1 (0 999.99, 2000 999.99) lap 0.01",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 999.99, 2000, 1000).joints());
        assertEquals("butt M2/M1 (0 1000.01, 2000 1000.01) wide 0.01",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1000.01, 2000, 1000).joints());
        assertEquals("butt M2/M1 (0 1000, 2000 1000) wide 0",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1000, 2000, 1000).joints());
    }

    @Test
    void buttUpToOneMillimetreGapUpToHundred() {
        assertEquals("butt M2/M1 (0 1001, 2000 1001) wide 1",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1001, 2000, 1000).joints());
        assertEquals("gap M2/M1 (0 1001.01, 2000 1001.01) wide 1.01",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1001.01, 2000, 1000).joints());
        assertEquals("gap M2/M1 (0 1100, 2000 1100) wide 100",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1100, 2000, 1000).joints());
        assertEquals("", wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1100.01, 2000, 1000).joints());
    }

    @Test
    void cornerToCornerIsNoJoint() {
        assertEquals("", wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 1000, 1000, 1000, 1000).joints());
    }

    @Test
    void theSamePolygonTwiceEndsTogether() {
        assertEquals("", wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 0, 0, 1000, 1000).joints());
    }

    @Test
    void edgeExactlyOnAnotherIsNoLapThere() {
        // both sheets end at x = 0 and x = 2000; only the foot of M2 lies on M1
        assertEquals("course-lap M2/M1 (0 900, 2000 900) lap 100",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 500).joints());
    }

    @Test
    void tJointOfThreeSheets() {
        assertEquals(lines("course-lap M3/M1 (0 900, 950 900) lap 100", "course-lap M3/M2 (950 900, 2000 900) lap 100",
                "end-lap M2/M1 (950 1000, 950 0) lap 50"),
                wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 950, 0, 1050, 1000).sheet("M3", 0, 900, 2000, 1000).joints());
    }

    @Test
    void aPatchHasAllThreeKinds() {
        assertEquals(lines("reverse-lap P/M (400 700, 200 700) lap 300", "course-lap P/M (200 400, 400 400) lap 300",
                "end-lap P/M (200 700, 200 400) lap 200", "end-lap P/M (400 400, 400 700) lap 200"),
                sorted(wall().sheet("M", 0, 0, 1000, 1000).sheet("P", 200, 400, 200, 300).joints()));
    }

    private static String sorted(String joints) {
        return joints.lines().sorted(java.util.Comparator.comparing((String l) -> !l.startsWith("reverse"))
                .thenComparing(l -> l)).reduce((a, b) -> a + "\n" + b).orElse("");
    }

    @Test
    void ringOfFourFlaps() {
        // each flap lies over the next, the last is tucked under the first
        String joints = wall().sheet("A", 0, 0, 600, 200).sheet("B", 500, 0, 200, 600).sheet("C", 100, 500, 600, 200)
                .sheet("D", 0, 100, 200, 600, "A").joints();
        assertEquals(lines("reverse-lap A/D (200 200, 0 200) lap 100", "end-lap D/C (200 500, 200 700) lap 100",
                "end-lap B/A (500 200, 500 0) lap 100", "course-lap C/B (500 500, 700 500) lap 100"),
                joints);
    }

    @Test
    void lapThatStartsAtNothing() {
        assertEquals("course-lap M2/M1 (0 1000, 2000 900) lap 0",
                wall().sheet("M1", 0, 0, 2000, 1000).ring("M2", 0, 1000, 2000, 900, 2000, 2000, 0, 2000).joints());
    }

    @Test
    void slopedCoincidentEdgesWithDifferentEndsAreAButt() {
        String joints = wall().ring("M1", 0, 0, 3000, 0, 3000, 1000, 0, 333.33)
                .ring("M2", 300, 400, 2700, 933.33, 2700, 2000, 300, 2000).joints();
        assertEquals("butt M2/M1", joints.substring(0, 10), joints);
        assertEquals(1, joints.lines().count(), joints);
    }

    @Test
    void kinkedFootIsOneJoint() {
        assertEquals("course-lap M2/M1 (0 900, 1000 950, 2000 900) lap 50.06",
                wall().sheet("M1", 0, 0, 2000, 1000).ring("M2", 0, 900, 1000, 950, 2000, 900, 2000, 2000, 0, 2000).joints());
    }

    @Test
    void tapeCoversToBothSides() {
        assertEquals("course-lap M2/M1 (0 900, 2000 900) lap 100 tape 40/35",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 1000).tape("T", 0, 865, 2000, 75).joints());
    }

    @Test
    void tapeWithItsEdgeOnTheJointCoversNothing() {
        assertEquals("course-lap M2/M1 (0 900, 2000 900) lap 100",
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 1000).tape("T", 0, 900, 2000, 75).joints());
    }

    @Test
    void tapeInsideTheLapCoversNothing() {
        assertEquals("course-lap M2/M1 (0 900, 2000 900) lap 100",
                wall().sheet("M1", 0, 0, 2000, 1000).tape("T", 0, 865, 2000, 75).sheet("M2", 0, 900, 2000, 1000).joints());
    }

    @Test
    void looseTapeCoversNothingAndCatchesWater() {
        assertEquals(lines("course-lap M2/M1 (0 900, 2000 900) lap 100", "reverse-lap T/M2 (2000 940, 0 940) lap 40"),
                wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 1000).tape("T", 0, 865, 2000, 75)
                        .bond(Bond.LOOSE).joints());
    }

    @Test
    void sealedUpperEdgeIsNoReverseLap() {
        assertEquals("", wall().sheet("M2", 0, 900, 2000, 1000).sheet("M1", 0, 0, 2000, 1000)
                .bond(Bond.sealedAt(Edge.TOP)).joints());
    }

    @Test
    void twoTapesEndToEndCoverAllButAHundredth() {
        Joint j = Joints.of(wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 1000)
                .tape("T1", 0, 865, 1000, 75).tape("T2", 1000.01, 865, 999.99, 75).stack()).all().get(0);
        assertEquals(1, j.uncovered().size());
        assertEquals(0.01, j.uncovered().get(0).lengthMm(), 1e-9);
        Joint closed = Joints.of(wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 1000)
                .tape("T1", 0, 865, 1000, 75).tape("T2", 1000, 865, 1000, 75).stack()).all().get(0);
        assertEquals(0, closed.uncovered().size());
    }

    @Test
    void aStretchUnderAFurtherSheetNeedsNoTape() {
        Joint j = Joints.of(wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 900, 0, 1000, 1000)
                .tape("T", 860, 0, 80, 900).sheet("M3", 0, 900, 1900, 1000).stack()).ofKind(JointKind.END_LAP).findFirst().get();
        assertEquals(0, j.uncovered().size());
    }

    @Test
    void sheetCutInTwoByAnOpeningKeepsBothParts() {
        String joints = wall().window("W", 500, -100, 500, 2000, 90).sheet("M1", 0, 0, 1500, 1000)
                .sheet("M2", 0, 900, 1500, 1000).joints();
        assertEquals(lines("course-lap M2/M1 (0 900, 500 900) lap 100", "course-lap M2/M1 (1000 900, 1500 900) lap 100",
                "course-lap M2/M1 on W.left (1000 90, 1000 0) lap 100", "course-lap M2/M1 on W.right (1000 90, 1000 0) lap 100"),
                joints);
    }

    @Test
    void lapRunsOnOverTheFold() {
        // a strip of sheet on the wall beside the window, whose edge lies 30 from the jamb; M runs 30 on the wall and 60 round the jamb
        String joints = wall().window("W", 500, 0, 500, 1000, 90)
                .cutSheet("M", 0, -500, 1500, 2000, "W", CutPattern.DIAGONAL, 60)
                .cutSheet("P", 470, 200, 100, 100, "W", CutPattern.DIAGONAL, 90).joints();
        assertEquals("end-lap P/M (470 300, 470 200) lap 90", joints.lines().filter(l -> l.startsWith("end-lap P/M (")).findFirst().get());
    }

    @Test
    void farFromTheOriginTheSame() {
        double far = 9_000_000;
        assertEquals("course-lap M2/M1 (9000000 8999900, 9002000 8999900) lap 100",
                wall().outline(far - 10, far - 2000, 3000, 4000, rainlap.wall.EdgeRole.FREE)
                        .sheet("M1", far, far - 1000, 2000, 1000).sheet("M2", far, far - 100, 2000, 1000).joints());
    }

    @Test
    void buttOverASheetBehindIsTwoLaps() {
        assertEquals(lines("reverse-lap M1/B (2000 1000, 0 1000) lap 100", "course-lap M2/B (0 1000, 2000 1000) lap 100"),
                wall().sheet("B", 0, 900, 2000, 200).sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1000, 2000, 1000)
                        .joints().lines().sorted(java.util.Comparator.reverseOrder()).reduce((a, b) -> a + "\n" + b).get());
    }

    @Test
    void nothingAndOnePiece() {
        assertEquals("", wall().joints());
        assertEquals("", wall().sheet("M1", 0, 0, 2000, 1000).joints());
    }

    @Test
    void sheetsThatMeetAtABuildingCornerAreAButtWhicheverWasLaidFirst() {
        assertEquals("butt M2/M1 (1000 0, 1000 1000) wide 0", wall().outline(0, 0, 1000, 1000, EdgeRole.EXTERNAL_CORNER)
                .sheet("M1", 1000, 0, 300, 1000).sheet("M2", 0, 0, 1000, 1000).joints());
        assertEquals("butt M2/M1 (1000 1000, 1000 0) wide 0", wall().outline(0, 0, 1000, 1000, EdgeRole.EXTERNAL_CORNER)
                .sheet("M1", 0, 0, 1000, 1000).sheet("M2", 1000, 0, 300, 1000).joints());
        assertEquals("", wall().outline(0, 0, 1000, 1000, EdgeRole.FREE)
                .sheet("M1", 1000, 0, 300, 1000).sheet("M2", 0, 0, 1000, 1000).joints());
    }

    @Test
    void ofTwoFacingEdgesInOnePlaceTheOutermostIsThePartner() {
        assertEquals("butt M3/M2 (1000 1000, 1000 0) wide 0",
                wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 0, 0, 1000, 1000).sheet("M3", 1000, 0, 1000, 1000).joints());
    }

    @Test
    void aSlopedTapeThatCrossesTakesNothingFromTheTapeAlongTheJoint() {
        Drawn taped = wall().sheet("M1", 0, 0, 1000, 1000).sheet("M2", 900, 0, 1000, 1000).tape("T1", 870, 0, 60, 1000);
        assertEquals("end-lap M2/M1 (900 1000, 900 0) lap 100 tape 30/30", taped.add("T2", Material.of("tape", MaterialKind.TAPE),
                List.of(new Shape(Surface.WALL, List.of(Drawn.region(400, 200, 1400, 1000, 1400, 1120, 400, 320)))), List.of()).joints());
    }

    @Test
    void holeThatTouchesTheShellParts() {
        // the hole's corner touches M2's foot at x = 1000: the foot is one line, and the hole's own edges lie on M1 behind it
        Region holed = new Region(Drawn.region(0, 800, 2000, 800, 2000, 2000, 0, 2000).shell(),
                List.of(Drawn.region(1000, 800, 1050, 850, 1000, 900, 950, 850).shell()));
        String joints = wall().sheet("M1", 0, 0, 2000, 1000)
                .piece("M2", MaterialKind.MEMBRANE, new Shape(Surface.WALL, List.of(holed))).joints();
        assertEquals(3, joints.lines().count(), joints);
        assertTrue(joints.contains("course-lap M2/M1 (0 800, 2000 800) lap "), joints);
        assertTrue(joints.contains("reverse-lap M2/M1 "), joints);
    }

    @Test
    void tapeThatEndsAtTheJointsEndCoversAllOfIt() {
        Joint j = Joints.of(wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 1000).tape("T", 0, 865, 2000, 75).stack())
                .all().get(0);
        assertEquals(List.of(), j.uncovered());
        Joint shorter = Joints.of(wall().sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 900, 2000, 1000)
                .tape("T", 0, 865, 1999.99, 75).stack()).all().get(0);
        assertEquals(0.01, shorter.uncovered().get(0).lengthMm(), 1e-9);
    }
}
