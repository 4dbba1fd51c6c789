package rainlap.water;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What runs down next to the plumb edges of the wall: within the creep of them, as far as wind can push it sideways. */
final class Sides {
    private final double rain;
    private final long creep;
    private final Map<Cell, List<Stream>> fromAbove = new HashMap<>();

    /** @param rain litres on a square of the grid */
    Sides(double rain, long creep) {
        this.rain = rain;
        this.creep = creep;
    }

    /** Remembers what came to the outermost layer of a cell from above it; its own rain is known. */
    void note(Cell c, List<Stream> streams) {
        if (!streams.isEmpty()) {
            fromAbove.merge(c, List.copyOf(streams), (a, b) -> java.util.stream.Stream.concat(a.stream(), b.stream()).toList());
        }
    }

    void tell(List<Cell> wall, Met met) {
        for (Cell c : wall) {
            for (Flank f : c.flanks) {
                if (c.isOpen() && f.last().ground == c.ground && f.there() != f.here()) {
                    met.addBeside(f, beside(f, f.from, f.from + 0.5), beside(f, f.to, f.to - 0.5));
                }
            }
        }
    }

    /** @param inside a height on the flank's own side of that end of it, where its neighbours are told from those further up or down */
    private double beside(Flank f, double y, double inside) {
        boolean left = f.right;
        long x = f.x(), end = left ? x - creep : x + creep;
        double sum = 0;
        Cell c = f.cell;
        while (c != null && x != end) {
            long stop = left ? Math.max(end, c.x0) : Math.min(end, c.x1);
            sum += in(c, Math.min(x, stop), Math.max(x, stop), y);
            x = stop;
            c = next(c, !left, inside);
        }
        return sum;
    }

    private static Cell next(Cell c, boolean right, double y) {
        for (Flank f : c.flanks) {
            if (f.right == right && f.from <= y && y <= f.to && f.last().ground == c.ground) {
                return f.last();
            }
        }
        return null;
    }

    private double in(Cell c, long from, long to, double y) {
        double sum = rain * (to - from) * Math.max(0, c.upper.at((from + to) / 2.0) - y);
        for (Stream s : fromAbove.getOrDefault(c, List.of())) {
            if (s.from() < to && s.to() > from) {
                sum += s.between(Math.max(from, s.from()), Math.min(to, s.to()));
            }
        }
        return sum;
    }
}
