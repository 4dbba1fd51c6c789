package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.joint.RandomWall;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** Other rain over the same cells: the same ways as on a wall on which no other rain has fallen. */
class AgainTest {
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(150), Grid.of(40), OptionalDouble.empty(), List.of());
    private static final int WALLS = 60, PLACES = 4;

    @Test void nothingIsLeftOfTheRainBefore() {
        int told = 0;
        for (int seed = 0; seed < WALLS; seed++) {
            Stack stack = RandomWall.of(seed).stack();
            Box wall = stack.elevation().outline().box(), all = wall.grow(Grid.of(1_000));
            Again again = again(stack);
            Random random = new Random(seed);
            for (int i = 0; i < PLACES; i++) {
                Box place = place(random, wall);
                List<Arrival> ways = ways(again, place, new Bounds(List.of(all, all, all), Flow.MOST));
                assertEquals(fresh(stack, place), ways, "wall " + seed + ", " + place);
                told += ways.isEmpty() ? 0 : 1;
                if (i % 2 == 1) {
                    again.letGo();
                }
            }
        }
        assertTrue(told > WALLS * PLACES / 3, "water came in at " + told);
    }

    @Test void noMoreFailuresThanAreAskedForAreFollowed() {
        int fewer = 0;
        for (int seed = 0; seed < WALLS; seed++) {
            Stack stack = RandomWall.of(seed).stack();
            Box wall = stack.elevation().outline().box();
            Again again = again(stack);
            List<Arrival> ways = ways(again, wall, new Bounds(List.of(wall, wall, wall), Flow.MOST)), less = ways(again, wall, new Bounds(List.of(wall, wall, wall), 1));
            assertEquals(ways.stream().filter(a -> a.defences() <= 1).toList(), less, "wall " + seed);
            fewer += less.size() < ways.size() ? 1 : 0;
        }
        assertTrue(fewer > WALLS / 3, "walls with ways of two failures: " + fewer);
    }

    /** What lies further than asked is not followed; nothing else is found instead. */
    @Test void nearerBoundsTellNothingNew() {
        int fewer = 0;
        for (int seed = 0; seed < WALLS; seed++) {
            Stack stack = RandomWall.of(seed).stack();
            Box wall = stack.elevation().outline().box(), place = place(new Random(seed), wall);
            Again again = again(stack);
            List<Arrival> ways = ways(again, place, new Bounds(List.of(wall, wall, wall), Flow.MOST)), less = ways(again, place, new Bounds(List.of(place, place, place), Flow.MOST));
            assertTrue(less.size() <= ways.size(), "wall " + seed);
            fewer += less.size() < ways.size() ? 1 : 0;
        }
        assertTrue(fewer > WALLS / 10, "walls with ways that lead further: " + fewer);
    }

    /** What needs two failures, followed after all else: the same ways as when all is followed at once. */
    @Test void theSecondFailureIsTheSameLater() {
        int told = 0;
        for (int seed = 0; seed < 4 * WALLS; seed++) {
            Stack stack = RandomWall.of(seed).stack();
            Box all = stack.elevation().outline().box().grow(Grid.of(1_000));
            List<Arrival> later = toOneFailure(stack).further(List.of(all), Crew.ALONE);
            assertTellTheSame(atOnce(stack), later, "wall " + seed);
            told += later.size();
        }
        assertTrue(told > 4 * WALLS, told + " ways of two failures");
    }

    /** Near a place: some of those ways, all of them onto the frame near it; and the cells can be followed on afterwards as if nothing had been. */
    @Test void theSecondFailureNearAPlaceTellsNothingNew() {
        int fewer = 0, told = 0;
        for (int seed = 0; seed < WALLS; seed++) {
            Stack stack = RandomWall.of(seed).stack();
            Box wall = stack.elevation().outline().box(), all = wall.grow(Grid.of(1_000));
            Box place = new Box(wall.minX(), wall.minY(), wall.minX() + wall.width() / 2, wall.maxY());
            Again again = toOneFailure(stack);
            List<Arrival> near = again.further(List.of(place), Crew.ALONE), ways = atOnce(stack);
            assertTrue(near.size() <= ways.size(), "wall " + seed);
            told += near.isEmpty() ? 0 : 1;
            fewer += near.size() < ways.size() ? 1 : 0;
            assertEquals(fresh(stack, place), ways(again, place, new Bounds(List.of(all, all, all), Flow.MOST)), "wall " + seed);
            assertTellTheSame(ways, again.further(List.of(all), Crew.ALONE), "once more, wall " + seed);
        }
        assertTrue(fewer > WALLS / 10 && told > WALLS / 5, fewer + " walls with ways elsewhere, " + told + " with ways there");
    }

    /** Both tell the same places of the frame wet from the same layers, but of what comes to one cell in one way only the highest may be told, if it comes first. */
    private static void assertTellTheSame(List<Arrival> one, List<Arrival> other, String wall) {
        one.forEach(a -> assertTrue(tells(other, a), wall + ": " + a));
        other.forEach(a -> assertTrue(tells(one, a), wall + ", the other way round: " + a));
    }

    private static boolean tells(List<Arrival> ways, Arrival a) {
        return ways.stream().anyMatch(b -> b.surface().equals(a.surface()) && comesFrom(b).equals(comesFrom(a)) && Box.of(b.where()).grow(1).overlaps(Box.of(a.where()).grow(1)));
    }

    private static String comesFrom(Arrival a) {
        Step last = a.path().get(a.path().size() - 1);
        return last.kind() + " " + last.layer() + " " + last.piece();
    }

    private static Again toOneFailure(Stack stack) {
        return new Again(stack, DRIVE, Waters.toOneFailure(stack, DRIVE, Crew.ALONE, false));
    }

    private static List<Arrival> atOnce(Stack stack) {
        Waters waters = new Waters(stack, DRIVE, Crew.ALONE);
        return Arrivals.of(waters.flows(), w -> w.cost() == Flow.MOST, new Paths(waters.coat()), Crew.ALONE);
    }

    /** What is told of a wall knows its surfaces: they must not hold the cells as well. */
    @Test void nothingOfTheCellsIsLeftWhenTheyAreLetGo() {
        Stack stack = RandomWall.of(1).stack();
        Waters followed = new Waters(stack, DRIVE, Crew.ALONE);
        assertTrue(followed.grounds().stream().anyMatch(g -> !g.cells.isEmpty()));
        new Again(stack, DRIVE, followed).letGo();
        assertTrue(followed.grounds().stream().allMatch(g -> g.cells.isEmpty() && g.laid().isEmpty()));
    }

    private static Again again(Stack stack) {
        Waters followed = new Waters(stack, DRIVE, Crew.ALONE);
        followed.driedUp();
        return new Again(stack, DRIVE, followed);
    }

    private static List<Arrival> ways(Again again, Box place, Bounds bounds) {
        List<Arrival> out = new ArrayList<>();
        again.worstFrom(Surface.WALL, place, bounds, ways -> {
            out.addAll(ways);
            return Optional.empty();
        });
        return out;
    }

    private static List<Arrival> fresh(Stack stack, Box place) {
        Waters waters = new Waters(stack, DRIVE, Crew.ALONE,
                c -> c.isOpen() && c.isIn(place) ? Optional.of(c.rain().in(place)) : Optional.empty(), Strips.WIDE, false);
        return Arrivals.of(waters.flows(), w -> true, new Paths(waters.coat()), Crew.ALONE);
    }

    private static Box place(Random random, Box wall) {
        long x = wall.minX() + (long) (random.nextDouble() * wall.width() * 0.8), y = wall.minY() + (long) (random.nextDouble() * wall.height() * 0.8);
        return new Box(x, y, x + wall.width() / 5, y + wall.height() / 5);
    }
}
