package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.geom.Point;
import rainlap.joint.Drawn;
import rainlap.joint.RandomWall;
import rainlap.stack.Stack;
import rainlap.wall.EdgeRole;
import rainlap.wall.Surface;

/** The comparison itself: a finer raster agrees with a coarse one, a wrong answer is seen, and the text it prints is the wall. */
class TraceAgainstGridTest {
    private static final long RISE = 2500, CREEP = 15000;

    @Test void uprightWallsDoNotDependOnTheCell() {
        int walls = 0;
        for (long seed = 0; seed < 300; seed++) {
            Stack s = RandomWall.upright(seed).stack();
            if (TraceAgainstGrid.isUpright(s)) {
                walls++;
                GridSimulation fine = GridSimulation.of(s, RISE, CREEP, 50);
                TraceAgainstGrid coarse = new TraceAgainstGrid(s, RISE, CREEP, 1000);
                List<TraceAgainstGrid.Disagreement> all = coarse.with(fine::defences);
                assertEquals(List.of(), all, () -> coarse.report(0, all));
            }
        }
        assertTrue(walls > 10, "only " + walls + " walls were upright");
    }

    @Test void aWrongAnswerIsSeen() {
        Drawn d = Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE).sheet("L", -100, -100, 1200, 600).sheet("U", -100, 400, 1200, 700);
        TraceAgainstGrid against = new TraceAgainstGrid(d.stack(), 4000, CREEP, 50);
        List<TraceAgainstGrid.Disagreement> all = against.with((surface, p) -> p.y() < 50000 ? 1 : p.equals(new Point(52500, 72500)) ? 2 : 3);
        assertEquals("[wall 525 725: grid 3, trace 2]", all.toString());
        assertTrue(against.report(7, all).endsWith("""
                Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE)
                        .sheet("L", -100, -100, 1200, 600)
                        .sheet("U", -100, 400, 1200, 700);"""), () -> against.report(7, all));
    }

    /** With sloped edges it looks again, finer: a right answer passes, and wrong ones, too wet and too dry, still do not. */
    @Test void aWrongAnswerIsSeenOnASlopedWallToo() {
        Drawn d = Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE).ring("L", -100, -100, 1100, -100, 1100, 540, -100, 500).sheet("U", -100, 480, 1200, 700);
        TraceLookup right = new TraceLookup(d.stack(), new Drive(4000, CREEP, 4000, OptionalDouble.empty(), List.of()));
        assertEquals(List.of(), new TraceAgainstGrid(d.stack(), 4000, CREEP, 100).lasting(4000, CREEP, 100, right));
        int leaks = right.applyAsInt(Surface.WALL, Point.ofMm(10, 100)), holds = right.applyAsInt(Surface.WALL, Point.ofMm(900, 100));
        assertEquals("0 1", leaks + " " + holds, "below the rise on the left, and a sound lap on the right");
        for (int wrong : new int[] {0, 1, 3}) {
            TraceAgainstGrid against = new TraceAgainstGrid(d.stack(), 4000, CREEP, 100);
            assertTrue(against.lasting(4000, CREEP, 100, (surface, p) -> p.y() < 40000 ? wrong : right.applyAsInt(surface, p)).size() > 20, "wrong: " + wrong);
        }
    }
}
