package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.joint.RandomWall;
import rainlap.stack.Crew;
import rainlap.stack.Stack;

/** Which cells lie at a place, found by their strips and heights, against looking at every one. */
class StripsTest {
    private static final long NARROW = 30_000;

    @Test void cellsAtAPlaceAreThoseThatShareAnAreaWithIt() {
        int found = 0, fromFurtherLeft = 0;
        for (long seed = 0; seed < 60; seed++) {
            Stack stack = RandomWall.of(seed).stack();
            Ground wall = Ground.ofWall(stack.elevation().outline().box(), new Coat(stack), true);
            Carving.carveWall(wall, stack, Crew.ALONE);
            Strips strips = new Strips(List.of(wall), NARROW, Crew.ALONE);
            Random random = new Random(seed);
            for (int i = 0; i < 20; i++) {
                Box place = place(wall.extent(), random);
                List<Cell> there = strips.in(place);
                Set<Cell> each = new HashSet<>(wall.cells.stream().filter(c -> c.isIn(place)).toList());
                assertEquals(each, new HashSet<>(there), "seed " + seed + " at " + place);
                assertEquals(each.size(), there.size(), "none twice");
                found += there.size();
                fromFurtherLeft += (int) there.stream().filter(c -> c.x0 + NARROW < place.minX()).count();
            }
        }
        assertTrue(found > 1_000 && fromFurtherLeft > 100, found + ", " + fromFurtherLeft);
    }

    /** Some of it may lie beyond the wall. */
    private static Box place(Box wall, Random random) {
        long x = wall.minX() - 5_000 + random.nextLong(wall.width() + 5_000), y = wall.minY() - 5_000 + random.nextLong(wall.height() + 5_000);
        return new Box(x, y, x + 1 + random.nextLong(40_000), y + 1 + random.nextLong(40_000));
    }
}
