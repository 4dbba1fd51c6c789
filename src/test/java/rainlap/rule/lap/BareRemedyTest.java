package rainlap.rule.lap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rainlap.joint.Drawn.wall;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.joint.Drawn;
import rainlap.material.MaterialKind;
import rainlap.rule.Finding;
import rainlap.rule.Judged;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** What covers a bare place where there is no room for a lap, and where the sheet above goes on beside it. */
class BareRemedyTest {
    private static Drawn besideAWindow() {
        return wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).window("W1", 800, 500, 400, 1000, 90);
    }

    /** Stuck down 60 wide beside the window, and turned in. */
    private static Shape[] jambTape(double from, double to) {
        return new Shape[] {new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(1200, from, 60, to - from)))),
            new Shape(new Surface("W1", Side.RIGHT), List.of(Region.of(Box.ofMm(from - 500, 0, to - from, 90))))};
    }

    @Test
    void besideAWindowItIsTurnedIntoTheReveal() {
        Drawn cut = besideAWindow().ring("M1", 0, 0, 2000, 0, 2000, 2000, 0, 2000, 0, 1500, 1280, 1500, 1280, 500, 0, 500).sheet("M2", 0, 500, 800, 1000).piece("J1", MaterialKind.TAPE, jambTape(500, 1500));
        assertEquals(List.of("Lay membrane over it that laps the sheet below by 150, the one beside it by 150 and turns 90 into W1 beneath J1, with its upper edge tucked in through a slit in M1 by 150."
                + " Tape its edges."), remedies(cut));
    }

    /** A sheet over the lower place alone would end in front of the bare wall above. */
    @Test
    void placesThatOnlyTapePartsAreCoveredAsOne() {
        Drawn apart = wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 2000, 900).ring("M2", 0, 900, 800, 900, 800, 1500, 1200, 1500, 1200, 900, 2000, 900, 2000, 2000, 0, 2000).tape("T1", 0, 1100, 2000, 60);
        String both = "Take T1 off there and lay one membrane over all that is bare from +900 to +1500 that laps the sheet below by 150 and those beside it by 150, with its upper edge tucked in"
                + " through a slit in M2 by 150. Tape its edges.";
        assertEquals(List.of(both, both), remedies(apart));
    }

    /** The patch is wider than the hole: beside it the sheet goes on, and has to be slit. */
    @Test
    void theSheetAboveIsSlitWhereItGoesOnBesideThePlace() {
        Drawn notched = wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 2000, 800).ring("M2", 0, 700, 800, 700, 800, 1500, 1200, 1500, 1200, 700, 2000, 700, 2000, 2000, 0, 2000);
        assertEquals(List.of("Lay membrane over it that laps the sheet below by 150 and those beside it by 150, with its upper edge tucked in through a slit in M2 by 150. Tape its edges."), remedies(notched));
    }

    private static List<String> remedies(Drawn wall) {
        return Judged.findings(new BareWall(), wall, "common").stream().map(Finding::remedy).toList();
    }
}
