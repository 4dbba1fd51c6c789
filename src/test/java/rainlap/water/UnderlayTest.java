package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.joint.Drawn;
import rainlap.stack.Crew;
import rainlap.wall.EdgeRole;
import rainlap.wall.Surface;

/** A lap that is overrun ends where the lower sheet does, also where that end lies hidden under another sheet between the two. Rise 40, creep 100. */
class UnderlayTest {
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(100), Grid.of(40), OptionalDouble.empty(), List.of());

    private static int at(Drawn wall, double x, double y) {
        return new Waters(wall.stack(), DRIVE, Crew.ALONE).defences(Surface.WALL, Point.ofMm(x, y));
    }

    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE);
    }

    /** U laps L by 100; up to x = 500 a sheet between them reaches on from 550 to 800. */
    private static Drawn course() {
        return wall().sheet("L", -100, -100, 1200, 700).sheet("B", -100, 550, 600, 250).sheet("U", -100, 500, 1200, 700);
    }

    @Test void upwardsItRunsAtTheLowerSheetsTop() {
        assertEquals(1, at(course(), 700, 600), "the stream on the frame, just above L");
        assertEquals(1, at(course(), 700, 300), "and behind L");
    }

    /** There it lies on B, and falls back onto L. Had it gone on to the top of B, the frame would be wet there. */
    @Test void upwardsUnderASheetBetweenItGetsNoFurther() {
        assertTrue(at(course(), 200, 800) > 1);
        assertTrue(at(course(), 200, 300) > 1);
    }

    /** Its top slopes from 560 to 640 and so meets B's foot at x = 500: on that side it ends before B. */
    @Test void upwardsItEndsAlongASlopeTheSame() {
        Drawn d = wall().ring("L", -100, -100, 1100, -100, 1100, 640, -100, 560).sheet("B", -100, 590, 600, 250).sheet("U", -100, 500, 1200, 700);
        assertEquals(1, at(d, 100, 300), "behind L, where it ends below B");
        assertEquals(1, at(d, 900, 300));
        assertTrue(at(d, 400, 840) > 1, "B's top");
    }

    /** R laps L by 100; from y = 500 up a sheet between them reaches on from 550 to 800. */
    private static Drawn side() {
        return wall().sheet("L", -100, -100, 700, 1200).sheet("B", 550, 500, 250, 700).sheet("R", 500, -100, 700, 1200);
    }

    @Test void sidewaysItRunsAtTheLowerSheetsEnd() {
        assertEquals(1, at(side(), 600, 300), "the stream on the frame, just beside L");
        assertEquals(1, at(side(), 600, 100));
    }

    @Test void sidewaysUnderASheetBetweenItGetsNoFurther() {
        assertTrue(at(side(), 800, 700) > 1);
        assertTrue(at(side(), 620, 700) > 1);
    }
}
