package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rainlap.geom.Box;
import rainlap.stack.Crew;

/** A wide wall's cells in upright strips, always the same ones, in each numbered from the top down. */
final class Strips {
    /** How wide strips are: some bays, grid units. */
    static final long WIDE = 600_000;

    static final Comparator<Cell> FROM_ABOVE = Comparator.comparingInt(c -> c.number);

    private final List<Strip> strips;
    private final List<List<Cell>> asked = new ArrayList<>();
    private final Box wall;
    private final long width;
    /** Of each strip, how far right its cells reach, and how high the highest of them is from its foot to its top. */
    private final long[] reach;
    private final double[] tallest;

    /**
     * One of them. What is looked for in all of its cells is found once: a wall has more of them than are at hand.
     *
     * @param cells from the top down
     * @param open those in the open by which rain gets in or under anything, from the top down
     * @param atFrame those on the frame and others from which water may come onto it whatever they border on, from the top down; see {@link Upstream}
     */
    record Strip(List<Cell> cells, List<Cell> open, List<Cell> atFrame) {}

    /**
     * @param grounds the first is the wall, the others the reveals
     * @param width of a strip
     */
    Strips(List<Ground> grounds, long width, Crew crew) {
        this.width = width;
        wall = grounds.get(0).extent();
        List<List<Cell>> given = given(grounds, stripAt(wall.maxX() - 1) + 1);
        reach = new long[given.size()];
        tallest = new double[given.size()];
        strips = crew.all(IntStream.range(0, given.size()).<Supplier<Strip>>mapToObj(i -> () -> numbered(i, given.get(i))).toList());
    }

    private List<List<Cell>> given(List<Ground> grounds, int count) {
        int all = grounds.stream().mapToInt(g -> g.cells.size()).sum();
        List<List<Cell>> strips = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            strips.add(new ArrayList<>(all / count + all / count / 4));
            asked.add(new ArrayList<>());
        }
        giveWall(grounds.get(0), strips);
        grounds.subList(1, grounds.size()).forEach(g -> strips.get(stripAt(g.left())).addAll(g.cells));
        return strips;
    }

    /** A band's cells come from the left, so that few of them need be looked at. */
    private void giveWall(Ground g, List<List<Cell>> strips) {
        int i = 0;
        for (int end : g.bandEnds) {
            while (i < end) {
                int strip = stripAt(g.cells.get(i).x0);
                long right = wall.minX() + (strip + 1) * width;
                int next = strip + 1 == strips.size() ? end : first(g.cells, i, end, c -> c.x0 >= right);
                strips.get(strip).addAll(g.cells.subList(i, next));
                i = next;
            }
        }
    }

    /** The first of those from start to end, of which all after one that is so are so too; end if none is. */
    private static int first(List<Cell> cells, int start, int end, Predicate<Cell> isSo) {
        int low = start, high = end;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (isSo.test(cells.get(mid))) {
                high = mid;
            } else {
                low = mid + 1;
            }
        }
        return low;
    }

    private int stripAt(long x) {
        return (int) (Math.max(0, Math.min(x, wall.maxX() - 1) - wall.minX()) / width);
    }

    private Strip numbered(int number, List<Cell> cells) {
        reach[number] = wall.minX();
        for (Cell c : cells) {
            c.freeze();
            c.strip = number;
            if (c.ground.isWall()) {
                reach[number] = Math.max(reach[number], c.x1);
                tallest[number] = Math.max(tallest[number], c.height - Math.min(c.lower.at(c.x0), c.lower.at(c.x1)));
            }
        }
        Cell[] sorted = fromTheTop(cells);
        List<Cell> atFrame = new ArrayList<>(sorted.length / 2), open = new ArrayList<>(sorted.length / 2);
        for (int i = 0; i < sorted.length; i++) {
            Cell c = sorted[i];
            c.number = i;
            if (c.isOpen() && !c.isPassedBy()) {
                open.add(c);
            }
            if (Upstream.isAtFrame(c)) {
                atFrame.add(c);
            }
        }
        return new Strip(Arrays.asList(sorted), open, atFrame);
    }

    /** Of one height in the order in which they were cut. */
    private static Cell[] fromTheTop(List<Cell> strip) {
        long[] keys = new long[strip.size()];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = -((long) strip.get(i).height) << Integer.SIZE | i;
        }
        Arrays.sort(keys);
        Cell[] sorted = new Cell[keys.length];
        for (int i = 0; i < keys.length; i++) {
            sorted[i] = strip.get((int) keys[i]);
        }
        return sorted;
    }

    /** The wall's cells that share an area with a box of it, by strips and from the top down. */
    List<Cell> in(Box place) {
        List<Cell> out = new ArrayList<>();
        eachNear(place, c -> {
            if (c.isIn(place)) {
                out.add(c);
            }
        });
        return out;
    }

    /** Asks for ways of most failures in all of them. */
    void ask(Box place) {
        eachNear(place, c -> {
            if (c.isIn(place)) {
                ask(c);
            }
        });
    }

    /** Asks for ways of most failures in a cell. */
    void ask(Cell c) {
        if (!c.isAsked) {
            c.isAsked = true;
            asked.get(c.strip).add(c);
        }
    }

    /** Where somebody asks for ways of most failures, from the top down. */
    List<Cell> asked(int strip) {
        List<Cell> all = asked.get(strip);
        all.sort(FROM_ABOVE);
        return all;
    }

    private void eachNear(Box place, Consumer<Cell> each) {
        for (int i = 0; i <= stripAt(place.maxX()); i++) {
            if (reach[i] > place.minX()) {
                List<Cell> strip = strips.get(i).cells;
                double highest = place.maxY() + tallest[i];
                int k = first(strip, 0, strip.size(), c -> c.height <= highest);
                for (; k < strip.size() && strip.get(k).height > place.minY(); k++) {
                    each.accept(strip.get(k));
                }
            }
        }
    }

    int count() {
        return strips.size();
    }

    Strip strip(int i) {
        return strips.get(i);
    }
}
