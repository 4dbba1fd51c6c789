package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.joint.RandomWall;
import rainlap.stack.Crew;
import rainlap.wall.Surface;

/** The polygons of the wet frame say at every place what the water in the cells says. */
class ReachesTest {
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(150), Grid.of(40), OptionalDouble.empty(), List.of());
    private static final int PLACES = 60;
    /** Edges of polygons are rounded to the grid: this near to one, either side is right. */
    private static final int NEAR = 2;

    @Test void agreeWithTheCells() {
        int wet = 0, dry = 0;
        for (long seed = 0; seed < 400; seed++) {
            Waters waters = new Waters(RandomWall.of(seed).stack(), DRIVE, Crew.ALONE);
            List<Point> places = places(waters, new Random(seed));
            List<Integer> cells = places.stream().map(p -> settled(waters, p)).toList();
            List<Reach> reach = new Reaches(waters, Flow.MOST).all();
            for (int i = 0; i < places.size(); i++) {
                if (cells.get(i) >= 0) {
                    assertEquals(cells.get(i), defences(reach, places.get(i)), "seed " + seed + " at " + places.get(i));
                    wet += cells.get(i) <= Flow.MOST ? 1 : 0;
                    dry += cells.get(i) > Flow.MOST ? 1 : 0;
                }
            }
        }
        assertTrue(wet > 1_000 && dry > 1_000, wet + " wet, " + dry + " dry");
    }

    private static List<Point> places(Waters waters, Random random) {
        List<Cell> cells = waters.grounds().get(0).cells;
        List<Point> out = new ArrayList<>();
        while (out.size() < PLACES) {
            Cell c = cells.get(random.nextInt(cells.size()));
            long x = c.x0 + (long) (random.nextDouble() * (c.x1 - c.x0));
            out.add(new Point(x, Math.round(c.lower.at(x) + random.nextDouble() * (c.upper.at(x) - c.lower.at(x)))));
        }
        return out;
    }

    /** The defences in the cells all round a place; -1 where they are not all the same. */
    private static int settled(Waters waters, Point p) {
        int here = at(waters, p.x(), p.y());
        for (int dx = -NEAR; dx <= NEAR; dx += NEAR) {
            for (int dy = -NEAR; dy <= NEAR; dy += NEAR) {
                if (at(waters, p.x() + dx, p.y() + dy) != here) {
                    return -1;
                }
            }
        }
        return here;
    }

    private static int at(Waters waters, long x, long y) {
        try {
            return waters.defences(Surface.WALL, new Point(x, y));
        } catch (IllegalArgumentException noFrame) {
            return -1;
        }
    }

    private static int defences(List<Reach> reach, Point p) {
        return reach.stream().filter(r -> r.surface().isWall() && r.where().stream().anyMatch(w -> w.covers(p.x(), p.y())))
                .mapToInt(Reach::defences).min().orElse(Flow.MOST + 1);
    }
}
