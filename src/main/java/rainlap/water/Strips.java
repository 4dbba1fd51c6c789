package rainlap.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import rainlap.geom.Box;
import rainlap.stack.Crew;

/** A wide wall's cells in upright strips, always the same ones, in each numbered from the top down. */
final class Strips {
    /** How wide strips are: some bays, grid units. */
    static final long WIDE = 600_000;

    private final List<List<Cell>> cells = new ArrayList<>();
    private final Box wall;
    private final long width;

    /**
     * @param grounds the first is the wall, the others the reveals
     * @param width of a strip
     */
    Strips(List<Ground> grounds, long width, Crew crew) {
        this.width = width;
        wall = grounds.get(0).extent();
        for (int i = 0; i <= stripAt(wall.maxX() - 1); i++) {
            cells.add(new ArrayList<>());
        }
        for (Ground g : grounds) {
            for (Cell c : g.cells) {
                c.strip = stripAt(g.isWall() ? c.x0 : g.left());
                cells.get(c.strip).add(c);
            }
        }
        crew.all(cells.stream().<Supplier<List<Cell>>>map(s -> () -> numbered(s)).toList());
    }

    private int stripAt(long x) {
        return (int) (Math.max(0, Math.min(x, wall.maxX() - 1) - wall.minX()) / width);
    }

    private static List<Cell> numbered(List<Cell> strip) {
        strip.forEach(Cell::settle);
        strip.sort(Comparator.comparingDouble((Cell c) -> c.height).reversed());
        for (int i = 0; i < strip.size(); i++) {
            strip.get(i).number = i;
        }
        return strip;
    }

    int count() {
        return cells.size();
    }

    List<Cell> cells(int strip) {
        return cells.get(strip);
    }
}
