package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Point;
import rainlap.joint.Drawn;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.wall.EdgeRole;
import rainlap.wall.Surface;

/** The table of the design's section 6, row by row, and the moves of the package description, on the grid simulation itself. Rise 40, creep 150 mm. */
class GridSimulationTest {
    private static final long RISE = 4000, CREEP = 15000;

    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE);
    }

    private static GridSimulation grid(Drawn d) {
        return GridSimulation.of(d.stack(), RISE, CREEP, 25);
    }

    private static int at(Drawn d, double x, double y) {
        return grid(d).defences(Surface.WALL, Point.ofMm(x, y));
    }

    /** The least defences anywhere on the wall's frame. */
    private static int least(Drawn d) {
        return grid(d).cells().stream().filter(c -> c.surface().isWall()).mapToInt(GridSimulation.Cell::defences).min().orElseThrow();
    }

    private static Drawn lap(double by) {
        return wall().sheet("L", -100, -100, 1200, 600).sheet("U", -100, 500 - by, 1200, 700);
    }

    @Test void soundLap() {
        assertEquals(1, least(lap(100)));
        assertEquals(2, least(lap(100).tape("T", -100, 360, 1200, 75)));
    }

    @Test void lapOfTheRiseHoldsAndBelowItLeaks() {
        assertEquals(1, least(lap(40)));
        assertEquals(0, least(lap(39.99)));
        assertEquals(1, least(lap(39.99).tape("T", -100, 440, 1200, 75)));
    }

    @Test void whereAnOverrunWetsTheFrame() {
        assertEquals(1, at(lap(100), 500, 20));
        assertEquals(1, at(lap(100), 500, 499));
        assertEquals(3, at(lap(100), 500, 520));
    }

    private static Drawn reverse() {
        return wall().sheet("U", -100, 400, 1200, 700).sheet("L", -100, -100, 1200, 600);
    }

    @Test void reverseLap() {
        assertEquals(0, least(reverse()));
        assertEquals(1, least(reverse().tape("T", -100, 460, 1200, 75)));
        assertEquals(3, at(reverse(), 500, 700));
    }

    @Test void buttAndGap() {
        Drawn butt = wall().sheet("L", -100, -100, 1200, 600).sheet("U", -100, 500, 1200, 700);
        assertEquals(0, least(butt));
        assertEquals(1, least(butt.tape("T", -100, 460, 1200, 75)));
        Drawn gap = wall().sheet("L", -100, -100, 1200, 600).sheet("U", -100, 520, 1200, 700);
        assertEquals(0, least(gap));
        assertEquals(1, least(gap.tape("T", -100, 460, 1200, 100)));
    }

    private static Drawn endLap(double by) {
        return wall().sheet("A", -100, -100, 600, 1200).sheet("B", 500 - by, -100, 700, 1200);
    }

    @Test void endLapOfTheCreepHoldsAndBelowItLeaks() {
        assertEquals(1, least(endLap(150)));
        assertEquals(0, least(endLap(149.99)));
        // a stream one unit wide
        assertEquals(1, at(endLap(200), 500, 500));
        assertEquals(3, at(endLap(200), 501, 500));
    }

    @Test void bareAndWhole() {
        assertEquals(0, least(wall()));
        assertEquals(3, least(wall().sheet("M", -100, -100, 1200, 1200)));
        assertEquals(0, at(wall().sheet("M", 200, 200, 600, 600), 100, 100));
    }

    /** Drives get in all round, and no further; nothing goes through a sheet against the frame. */
    @Test void sheetAgainstTheFrameIsNotOverrun() {
        Drawn patch = wall().sheet("M", 200, 200, 600, 600).bond(Bond.sealedAt(Edge.TOP));
        assertEquals(0, at(patch, 500, 239.9));
        assertEquals(1, at(patch, 500, 240.1));
        assertEquals(0, at(patch, 349.9, 500));
        assertEquals(1, at(patch, 350.1, 500));
    }

    @Test void stripInsideALapClosesNothing() {
        Drawn d = wall().sheet("L", -100, -100, 1200, 600).tape("T", -100, 420, 1200, 60).sheet("U", -100, 400, 1200, 700);
        assertEquals(1, least(d));
    }

    @Test void adheredTopEdgeSendsWaterOver() {
        Drawn strip = wall().tape("T", 200, 400, 600, 75);
        assertEquals(0, at(strip, 500, 600));
        assertEquals(1, at(strip, 500, 440));
        assertEquals(0, at(strip, 500, 300));
        Drawn loose = wall().sheet("M", 200, 400, 600, 75);
        assertEquals(0, at(loose, 500, 440));
    }

    /** Water behind the upper sheet meets a tape that closes the lap below: it runs along it and comes out at both ends. */
    @Test void runsAlongAClosedLineToBothEnds() {
        Drawn d = wall().sheet("L", -100, -100, 1200, 600).sheet("U", 200, 400, 600, 400).tape("T", 200, 380, 600, 60);
        GridSimulation g = grid(d);
        // behind U, on L, just above the tape: from above L's top nothing falls on L, so look at the frame behind U instead
        assertEquals(List.of(), g.trapped());
        Drawn caught = wall().sheet("U", 200, 400, 600, 400).tape("T", 200, 380, 600, 60);
        GridSimulation c = grid(caught);
        assertEquals(0, c.defences(Surface.WALL, Point.ofMm(500, 600)));
        assertEquals(1, c.defences(Surface.WALL, Point.ofMm(500, 390)));
        assertEquals(List.of(), c.trapped());
    }

    @Test void isTrappedWhereTheEndsAreClosedToo() {
        Drawn pocket = wall().sheet("U", 200, 400, 600, 400).tape("T", 200, 380, 600, 60).tape("S1", 180, 380, 60, 500)
                .tape("S2", 760, 380, 60, 500);
        assertTrue(grid(pocket).trapped().stream().allMatch(f -> f.layer().equals("frame")), () -> "" + grid(pocket).trapped());
        assertTrue(!grid(pocket).trapped().isEmpty());
    }
}
