package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.geom.Grid;
import rainlap.geom.Region;
import rainlap.joint.RandomWall;
import rainlap.stack.Crew;
import rainlap.stack.Stack;

/** Water of one failure is followed only where it may still get to the frame: the frame is as wet, and from the same layers, as if all of it were followed. */
class UpstreamTest {
    private static final Drive FAR = drive(40, 150), NEAR = drive(5, 10), NONE = drive(0, 0);
    private static final int WALLS = 200;
    private static final long NARROW = Grid.of(400);
    private static final double EXACT_MM2 = 0.01, SLOPED_MM2 = 20;

    private static Drive drive(long rise, long creep) {
        return new Drive(Grid.of(rise), Grid.of(creep), Grid.of(rise), OptionalDouble.empty(), List.of());
    }

    @Test void theFrameIsAsWetAsIfAllWereFollowed() {
        for (long seed = 0; seed < WALLS; seed++) {
            for (Drive drive : List.of(FAR, NEAR, NONE)) {
                areSame("upright seed " + seed, EXACT_MM2, RandomWall.upright(seed).stack(), drive);
                areSame("sloped seed " + seed, SLOPED_MM2, RandomWall.of(seed).stack(), drive);
            }
        }
    }

    private static void areSame(String wall, double mm2, Stack stack, Drive drive) {
        List<Reach> some = reach(Waters.toOneFailure(stack, drive, Crew.ALONE, NARROW, false)), all = reach(new Waters(stack, drive, Crew.ALONE, Rain.EVERYWHERE, NARROW, false));
        assertEquals(all.size(), some.size(), wall);
        for (int i = 0; i < all.size(); i++) {
            assertEquals(area(all.get(i)), area(some.get(i)), mm2, wall + ", " + drive.rise() + ", " + all.get(i).surface().name() + ", " + all.get(i).defences());
        }
    }

    private static List<Reach> reach(Waters w) {
        return new Reaches(w, Flow.MOST - 1).all();
    }

    private static double area(Reach r) {
        return r.where().stream().mapToDouble(Region::areaMm2).sum();
    }

    /** Ways onto the frame for one failure, also where it is wet already: none is missing, and none is new. */
    @Test void waysOntoTheFrameAreTheSame() {
        int told = 0;
        for (long seed = 0; seed < WALLS; seed++) {
            Stack stack = RandomWall.upright(seed).stack();
            List<String> all = ways(new Waters(stack, FAR, Crew.ALONE)), some = ways(Waters.toOneFailure(stack, FAR, Crew.ALONE, false));
            assertEquals(all, some, "seed " + seed);
            told += all.size();
        }
        assertTrue(told > WALLS, told + " ways");
    }

    private static List<String> ways(Waters w) {
        return Arrivals.of(w.flows(), x -> x.cost() < Flow.MOST, new Paths(w.coat()), Crew.ALONE).stream()
                .map(a -> a.defences() + " " + a.surface().name() + " " + a.where() + " " + a.path().get(a.path().size() - 1)).sorted().toList();
    }

    @Test void whatLeadsNowhereStaysDry() {
        long led = 0, spared = 0;
        for (long seed = 0; seed < WALLS; seed++) {
            Stack stack = RandomWall.upright(seed).stack();
            List<Cell> cells = cells(Waters.toOneFailure(stack, NEAR, Crew.ALONE, false));
            led += cells.stream().filter(c -> c.leads && c.isWetAt(1)).count();
            spared += cells.stream().filter(c -> !c.leads && !c.isOpen()).count();
            assertTrue(cells.stream().filter(c -> !c.leads).flatMap(c -> c.settled().stream()).allMatch(x -> x.cost() == 0), "seed " + seed);
        }
        assertTrue(led > 0 && spared > 10 * WALLS, led + " cells led on, " + spared + " did not");
    }

    private static List<Cell> cells(Waters w) {
        return w.grounds().stream().flatMap(g -> g.cells.stream()).toList();
    }

    @Test void threadsChangeNothing() {
        for (long seed = 0; seed < 40; seed++) {
            Stack stack = RandomWall.of(seed).stack();
            List<String> both = Stream.of(Crew.ALONE, Crew.of(3, 20_000)).map(crew -> leading(Waters.toOneFailure(stack, FAR, crew, NARROW, false))).toList();
            assertEquals(both.get(0), both.get(1), "seed " + seed);
        }
    }

    private static String leading(Waters w) {
        StringBuilder out = new StringBuilder();
        cells(w).forEach(c -> out.append(c.leads ? '1' : '0'));
        return out.toString();
    }
}
