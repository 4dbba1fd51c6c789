package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.geom.Grid;
import rainlap.geom.Region;
import rainlap.joint.RandomWall;
import rainlap.stack.Crew;
import rainlap.stack.Stack;

/** A wall followed in narrow strips, on one thread and on several, tells the same as one followed whole. */
class FlowsTest {
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(150), Grid.of(40), OptionalDouble.empty(), List.of());
    private static final long NARROW = Grid.of(400);
    private static final int ENOUGH = 20_000;
    private static final double EXACT_MM2 = 0.01;
    /** At slopes, heights that differ by half a grid unit count as equal, and what comes first stays: 0.005 mm along some metres. */
    private static final double SLOPED_MM2 = 20;

    private static List<Reach> reach(Stack stack, Crew crew, long strip) {
        return new Reaches(new Waters(stack, DRIVE, crew, Rain.EVERYWHERE, strip, false), Flow.MOST).all();
    }

    private static void areSame(String wall, double mm2, List<Reach> whole, List<Reach> parts) {
        assertEquals(whole.size(), parts.size(), wall);
        for (int i = 0; i < whole.size(); i++) {
            assertEquals(whole.get(i).surface(), parts.get(i).surface(), wall);
            assertEquals(area(whole.get(i)), area(parts.get(i)), mm2, wall + ", " + whole.get(i).surface().name() + ", " + whole.get(i).defences());
        }
    }

    private static double area(Reach r) {
        return r.where().stream().mapToDouble(Region::areaMm2).sum();
    }

    @Test void stripsTellTheSameAsTheWholeWall() {
        for (long seed = 0; seed < 300; seed++) {
            Stack upright = RandomWall.upright(seed).stack(), sloped = RandomWall.of(seed).stack();
            areSame("upright seed " + seed, EXACT_MM2, reach(upright, Crew.ALONE, Strips.WIDE), reach(upright, Crew.ALONE, NARROW));
            areSame("sloped seed " + seed, SLOPED_MM2, reach(sloped, Crew.ALONE, Strips.WIDE), reach(sloped, Crew.ALONE, NARROW));
        }
    }

    /** What is told is the same whether cells in the open end at each edge beneath or only where their own layer does. */
    @Test void finerCellsInTheOpenTellTheSame() {
        for (long seed = 0; seed < 300; seed++) {
            Stack upright = RandomWall.upright(seed).stack(), sloped = RandomWall.of(seed).stack();
            areSame("upright seed " + seed, EXACT_MM2, reach(upright, Crew.ALONE, Strips.WIDE), fine(upright));
            areSame("sloped seed " + seed, 2 * SLOPED_MM2, reach(sloped, Crew.ALONE, Strips.WIDE), fine(sloped));
        }
    }

    private static List<Reach> fine(Stack stack) {
        return new Reaches(new Waters(stack, DRIVE, Crew.ALONE, Rain.EVERYWHERE, Strips.WIDE, true), Flow.MOST).all();
    }

    @Test void threadsChangeNothing() {
        for (long seed = 0; seed < 40; seed++) {
            Stack stack = RandomWall.of(seed).stack();
            assertEquals(told(stack, Crew.ALONE), told(stack, Crew.of(3, ENOUGH)), "seed " + seed);
        }
    }

    private static String told(Stack stack, Crew crew) {
        Waters w = new Waters(stack, DRIVE, crew, Rain.EVERYWHERE, NARROW, false);
        List<Arrival> arrivals = Arrivals.of(w.flows(), any -> true, new Paths(w.coat()), crew);
        assertTrue(w.grounds().get(0).cells.stream().mapToInt(c -> c.strip).distinct().count() > 3, "cut into strips");
        return arrivals + "\n" + new Reaches(w, Flow.MOST).all();
    }
}
