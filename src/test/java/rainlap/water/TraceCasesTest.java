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

/** Places where a trace is easily wrong, each as a small drawing. Rise 40, creep 100. */
class TraceCasesTest {
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(100), Grid.of(40), OptionalDouble.empty(), List.of());

    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE);
    }

    private static int at(Drawn wall, double x, double y) {
        return new Waters(wall.stack(), DRIVE, Crew.ALONE).defences(Surface.WALL, Point.ofMm(x, y));
    }

    /**
     * Rain gets in behind U through the slit between V1 and V2 at x = 200, meets the tape at U's foot and runs along it. At x = 500 it comes past
     * the slit between A and B, and is pushed in behind both by the creep, against its way too.
     */
    @Test void whatRunsAlongALineIsPushedUnderWhatItPasses() {
        Drawn d = wall().sheet("A", -100, -100, 600, 700).sheet("B", 502, -100, 600, 700).sheet("U", -100, 500, 1200, 300)
                .sheet("V1", -100, 700, 300, 400).sheet("V2", 202, 700, 900, 400).tape("T", -100, 460, 1200, 80);
        assertEquals(0, at(d, 401, 450));
        assertTrue(at(d, 399, 450) > 0, "no further than the creep");
        assertEquals(0, at(d, 601, 450));
        assertTrue(at(d, 603, 450) > 0, "no further than the creep");
    }
}
