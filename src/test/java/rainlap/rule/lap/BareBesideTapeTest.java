package rainlap.rule.lap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rainlap.joint.Drawn.wall;
import static rainlap.rule.Judged.found;

import org.junit.jupiter.api.Test;
import rainlap.joint.Drawn;
import rainlap.wall.EdgeRole;

class BareBesideTapeTest {
    /** A tape closes gaps and forms none, so no joint tells of what lies bare between it and a sheet. */
    @Test
    void bareWallIsToldBesideATapeThatDoesNotReachTheSheet() {
        Drawn apart = wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1140, 2000, 860);
        assertEquals("M1 T1 | +1000 to +1080, x 0 to 2000 | bare, 2000 \u00d7 80 / covered", found(new BareWall(), apart.tape("T1", 0, 1080, 2000, 100)));
        Drawn facing = wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1050, 2000, 950);
        assertEquals("", found(new BareWall(), facing.tape("T1", 0, 1020, 2000, 100)), "an open gap, half of it taped");
        Drawn reached = wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1080, 2000, 920);
        assertEquals("", found(new BareWall(), reached.tape("T1", 0, 1000, 2000, 100)));
    }
}
