package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.joint.Drawn;
import rainlap.stack.Crew;
import rainlap.wall.EdgeRole;
import rainlap.wall.Surface;

/** The table of the model, row by row: how many things must fail before water reaches the frame. Rise 40, creep 100. */
class TraceTableTest {
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(100), Grid.of(40), OptionalDouble.empty(), List.of());

    static Drawn wall() {
        return Drawn.wall().outline(0, 0, 4000, 2400, EdgeRole.EXTERNAL_CORNER);
    }

    static int at(Drawn wall, double x, double y) {
        return new Waters(wall.stack(), DRIVE, Crew.ALONE).defences(Surface.WALL, new Point(Grid.of(x), Grid.of(y)));
    }

    private static Drawn lap(double lap) {
        return wall().sheet("M1", -300, -40, 4600, 1040).sheet("M2", -300, 1000 - lap, 4600, 2000);
    }

    @Test
    void aSoundCourseLapIsOverrunAtOne() {
        assertEquals(1, at(lap(150), 500, 500));
        assertEquals(3, at(lap(150), 500, 1500), "above the lap nothing gets in");
    }

    @Test
    void tapedItTakesTwo() {
        assertEquals(2, at(lap(150).tape("T", -300, 812.5, 4600, 75), 500, 500));
    }

    @Test
    void aCourseLapShorterThanTheRiseIsDrivenOver() {
        assertEquals(0, at(lap(39.99), 500, 500));
        assertEquals(1, at(lap(40), 500, 500), "at exactly the rise it holds");
    }

    @Test
    void aReverseLapRunsInBehind() {
        Drawn w = wall().sheet("M2", -300, 850, 4600, 2000).sheet("M1", -300, -40, 4600, 1040);
        assertEquals(0, at(w, 500, 500));
    }

    @Test
    void aReverseLapTapedTakesOne() {
        Drawn w = wall().sheet("M2", -300, 850, 4600, 2000).sheet("M1", -300, -40, 4600, 1040).tape("T", -300, 962.5, 4600, 75);
        assertEquals(1, at(w, 500, 500));
    }

    @Test
    void aButtLeaksAndTapedTakesOne() {
        assertEquals(0, at(lap(0), 500, 500));
        assertEquals(0, at(lap(-20), 500, 500), "a gap too");
        assertEquals(1, at(lap(0).tape("T", -300, 962.5, 4600, 75), 500, 500));
    }

    @Test
    void anEndLapHoldsFromTheCreep() {
        Drawn sound = wall().sheet("M1", -300, -40, 2300, 3000).sheet("M2", 1900, -40, 2400, 3000);
        assertEquals(1, at(sound, 2000, 500), "a stream down the end of M1");
        assertEquals(3, at(sound, 2050, 500), "and no further");
        assertEquals(3, at(sound, 1800, 500), "M1 lies whole there");
        Drawn shorter = wall().sheet("M1", -300, -40, 2300, 3000).sheet("M2", 1900.01, -40, 2400, 3000);
        assertEquals(0, at(shorter, 2000, 500));
    }

    @Test
    void aBareFrameIsWetAndAWholeSheetKeepsItDry() {
        assertEquals(0, at(wall().sheet("M1", 0, 0, 4000, 1000), 500, 1500));
        assertEquals(3, at(wall().sheet("M1", -300, -40, 4600, 3000), 500, 1500));
    }
}
