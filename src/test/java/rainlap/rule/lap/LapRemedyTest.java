package rainlap.rule.lap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rainlap.joint.Drawn.wall;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.joint.Drawn;
import rainlap.material.MaterialKind;
import rainlap.rule.Finding;
import rainlap.rule.Judged;
import rainlap.rule.Rule;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** What is proposed can be done where it is proposed. */
class LapRemedyTest {
    /** A whole course laid in the wrong order is mended alike on the wall and on the jambs it turns into: it is no patch there. */
    @Test
    void aReversedCourseIsMendedAlikeOnWallAndJambs() {
        Drawn reversed = wall().window("W", 800, 500, 400, 1000, 80).sheet("M2", 0, 850, 2000, 1000).sheet("M1", 0, 0, 2000, 1000);
        List<String> remedies = remedies(new ReverseLap(), reversed);
        assertEquals(4, remedies.size());
        remedies.forEach(r -> assertTrue(r.startsWith("Draw the foot of M2 out over M1"), r));
    }

    /** It holds the edge where it is, whether it was laid along it or only crosses it. */
    @Test
    void tapeComesOffBeforeAFootIsDrawnOut() {
        Drawn reversed = wall().sheet("M2", 0, 850, 2000, 1000).sheet("M1", 0, 0, 2000, 1000);
        String draw = "raw the foot of M2 out over M1", laps = "; it then laps 150, 150 is asked for. Tape the joint";
        assertEquals(List.of("D" + draw + laps + "."), remedies(new ReverseLap(), reversed));
        Drawn taped = wall().sheet("M2", 0, 850, 2000, 1000).sheet("M1", 0, 0, 2000, 1000).tape("T1", 0, 970, 700, 60);
        assertEquals(List.of("Take T1 off and d" + draw + laps + " anew."), remedies(new ReverseLap(), taped));
        Drawn crossed = wall().sheet("M2", 0, 850, 2000, 1000).sheet("M1", 0, 0, 2000, 1000).tape("T1", 0, 970, 700, 60).tape("C1", 900, 0, 60, 1850);
        assertEquals(List.of("Take T1 off and d" + draw + ", under C1" + laps + " anew."), remedies(new ReverseLap(), crossed));
    }

    /** Where the sheet beneath has a hole the patch laps it by less than the patch is high. */
    @Test
    void aPatchIsOnlyToldToBeLargerWhereItIsTooSmall() {
        String cut = "Cut M1 level, 150 below the upper edge of A1, and tuck that edge in behind it; tape the cut and its ends.";
        assertEquals(List.of(cut), remedies(new ReverseLap(), holed().sheet("A1", 350, 250, 360, 360)));
        assertEquals(List.of("Use a patch at least 360 high, from +250 to +610. " + cut), remedies(new ReverseLap(), holed().sheet("A1", 350, 251, 360, 359)));
        assertEquals(List.of("Use a patch at least 370 high, from +250 to +620. " + cut), remedies(new ReverseLap(), holed().sheet("A1", 350, 300, 360, 320)));
    }

    /** 60 by 60, from +400 to +460. */
    private static Drawn holed() {
        Region sheet = Overlay.difference(List.of(Region.of(Box.ofMm(0, 0, 2000, 1000))), List.of(Region.of(Box.ofMm(500, 400, 60, 60)))).get(0);
        return wall().piece("M1", MaterialKind.MEMBRANE, new Shape(Surface.WALL, List.of(sheet)));
    }

    @Test
    void bareWallIsMendedAsItsPlaceAllows() {
        assertEquals(List.of("Lay membrane over it that laps the sheet below by 150 and runs on past the side of the wall,"
                + " and carry it on past the upper end of the wall. Tape its edges."), remedies(new BareWall(), covered(0, 1900)));
        assertEquals(List.of("Lay membrane over it that runs on past the base and runs on past the side of the wall,"
                + " with its upper edge tucked in behind the sheet above by 150. Tape its edges."), remedies(new BareWall(), covered(100, 1900)));
        String beside = "Lay membrane over it that laps the sheet below by 150 and runs on past the side of the wall", off = " Take off T1 first and put a new one over the upper edge. Tape the other edges.";
        assertEquals(List.of(beside + ", with its upper edge tucked in behind the sheet above by 150." + off),
                remedies(new BareWall(), covered(0, 900).sheet("M2", 0, 1050, 2000, 950).tape("T1", 0, 980, 2000, 100)));
        assertEquals(List.of("Lay membrane over it that laps the sheet below by 150 and those beside it by 150." + off),
                remedies(new BareWall(), wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).window("W", 800, 500, 400, 1000, 0).sheet("M1", 0, 0, 2000, 420).sheet("M2", 0, 420, 800, 1580).sheet("M3", 1200, 420, 800, 1580).sheet("M4", 800, 1500, 400, 500)
                        .tape("T1", 800, 450, 400, 50)));
        assertTrue(remedies(new BareWall(), wall()).get(0).startsWith("Wrap it in courses from the base up"));
    }

    /** M2 was cut out round a board's place and M1 set into the notch: its foot, its sides and its top each ask for their own mend. */
    @Test
    void aButtThatTurnsIsMendedSideBySide() {
        Drawn notched = wall().ring("M2", 0, 0, 2000, 0, 2000, 1000, 1500, 1000, 1500, 400, 500, 400, 500, 1000, 0, 1000)
                .sheet("M1", 500, 400, 1000, 600);
        assertEquals("M1 M2 | +400, x 500 to 1500 | edges meet / lap of 51\n"
                + "M1 M2 | x 1500, +400 to +1000 | edges meet / lap of 152\n"
                + "M1 M2 | x 500, +400 to +1000 | edges meet / lap of 152", Judged.found(new ButtJoint(), notched, "us-irc-2015"));
        List<String> remedies = Judged.findings(new ButtJoint(), notched, "us-irc-2015").stream().map(Finding::remedy).toList();
        assertTrue(remedies.get(0).startsWith("Slip a strip 102 high in behind M1 and over M2"), remedies.get(0));
        assertTrue(remedies.get(1).startsWith("Slip a strip 304 wide"), remedies.get(1));
    }

    /** 90 beside the corner and 80 above it: moved by the 30 that are short it would be 144 away. */
    @Test
    void anEndLapAboveACornerIsMovedFurtherThanWhatIsShort() {
        String remedy = remedies(new EndLapNearOpening(), aboveACorner(1110)).get(0);
        assertTrue(remedy.startsWith("Move the end lap 37 further to the left"), remedy);
        assertEquals(List.of(), remedies(new EndLapNearOpening(), aboveACorner(1110 - 37)));
        assertEquals(1, remedies(new EndLapNearOpening(), aboveACorner(1110 - 36)).size());
    }

    private static Drawn aboveACorner(double edge) {
        return wall().window("W", 1200, 400, 400, 400, 0).sheet("M1", 0, 0, 2000, 1000).sheet("Ma", 0, 880, edge + 150, 900).sheet("Mb", edge, 880, 2000 - edge, 900);
    }

    private static Drawn covered(double from, double height) {
        return wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).sheet("M1", 0, from, 2000, height);
    }

    private static List<String> remedies(Rule rule, Drawn wall) {
        return Judged.findings(rule, wall, "common").stream().map(Finding::remedy).toList();
    }
}
