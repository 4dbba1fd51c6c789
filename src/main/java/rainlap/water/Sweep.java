package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import rainlap.wall.Side;
import rainlap.water.PipeEdge.Where;

/**
 * Cuts a band of a surface into cells, from left to right. In each upright slab between two neighbouring corners or crossings the edges do
 * not cross; between them lie columns, and what of one gap lies over one another in them is a trapezoid. Those that go on unchanged into the next slab are one cell.
 */
final class Sweep {
    private final Ground ground;
    private final Pile.Source piles;
    private final Line bottom;
    private final Line top;
    private final Border[] byStart;
    private final long[] breaks;
    private final Rim.Cut made = new Rim.Cut();

    private Active active = new Active();
    private final Trapezoids trapezoids;
    private List<Column> columns = List.of();

    /**
     * @param borders of everything that reaches into the band or lies under it, in any order
     * @param breaks where slabs begin and end, ascending: every corner inside the band
     * @param bottom of the band
     * @param top of the band
     */
    Sweep(Ground ground, Pile.Source piles, List<Border> borders, long[] breaks, long bottom, long top) {
        this.ground = ground;
        this.piles = piles;
        this.bottom = Line.level(bottom, ground.extent().minX(), ground.extent().maxX());
        this.top = Line.level(top, ground.extent().minX(), ground.extent().maxX());
        this.breaks = breaks;
        trapezoids = new Trapezoids(ground, made.cells());
        byStart = borders.toArray(Border[]::new);
        Arrays.sort(byStart, Comparator.comparingLong(b -> b.line().ax()));
    }

    Rim.Cut run() {
        int next = 0;
        for (int i = 0; i + 1 < breaks.length; i++) {
            long from = breaks[i];
            active.dropEndedAt(from);
            while (next < byStart.length && byStart[next].line().ax() <= from) {
                if (byStart[next].line().bx() > from) {
                    active.add(byStart[next]);
                }
                next++;
            }
            while (from < breaks[i + 1]) {
                long to = active.arrange(from, breaks[i + 1]);
                take(from, to);
                from = to;
            }
        }
        long end = breaks[breaks.length - 1];
        for (Column c : columns) {
            c.next = null;
            part(c, end);
            made.right().add(new Rim(c, null, c.lower.at(end), c.upper.at(end)));
        }
        return made;
    }

    /** The columns of one slab, from the bottom up. */
    private List<Column> slab(long from, long to) {
        List<Column> out = new ArrayList<>(columns.size() + 4);
        Zone zone = new Zone(piles);
        Line below = bottom;
        double mid = (from + to) / 2.0;
        int i = active.skipTo(bottom.ay(), mid, zone), known = 0;
        while (true) {
            boolean done = i >= active.size() || active.height(i) >= top.ay();
            Line line = done ? top : active.line(i);
            if (zone.isInside() && line.at(mid) > below.at(mid)) {
                known = firstFrom(known, below.at(from) - 1, from);
                out.add(column(zone, below, line, known, from));
            }
            if (done) {
                return out;
            }
            int end = active.endOfLine(i);
            for (int k = i; k < end; k++) {
                zone.cross(active.get(k));
            }
            below = line;
            i = end;
        }
    }

    /** The first column of the slab before, from one on, that begins no lower than a height. */
    private int firstFrom(int start, double height, long x) {
        int k = start;
        while (k < columns.size() && columns.get(k).lower.at(x) < height) {
            k++;
        }
        return k;
    }

    /** What lies between two lines: a column of the slab before, if it goes on. */
    private Column column(Zone zone, Line lower, Line upper, int start, long x) {
        double low = lower.at(x);
        for (int k = start; k < columns.size() && columns.get(k).lower.at(x) <= low + 1; k++) {
            if (zone.isStill(columns.get(k), lower, upper)) {
                return columns.get(k);
            }
        }
        return zone.column(lower, upper);
    }

    /** Joins a slab's columns to one another, and to those of the slab before. */
    private void take(long from, long to) {
        List<Column> now = slab(from, to);
        trapezoids.find(now, from, to, Breaks.isCut(ground.extent(), from));
        for (int i = 0; i < now.size(); i++) {
            now.set(i, now.get(i).with(trapezoids, i));
        }
        if (columns.isEmpty()) {
            now.forEach(c -> made.left().add(new Rim(c, null, c.lower.at(from), c.upper.at(from))));
        }
        joinSideways(now, from);
        joinUpwards(now, from, to);
        columns = now;
    }

    private void joinSideways(List<Column> now, long x) {
        int k = 0;
        for (Column right : now) {
            double low = right.lower.at(x), high = right.upper.at(x);
            while (k > 0 && columns.get(k - 1).upper.at(x) > low) {
                k--;
            }
            while (k < columns.size() && columns.get(k).upper.at(x) <= low) {
                k++;
            }
            for (int j = k; j < columns.size() && columns.get(j).lower.at(x) < high; j++) {
                Column left = columns.get(j);
                double from = Math.max(low, left.lower.at(x)), to = Math.min(high, left.upper.at(x));
                if (to - from > 0.5 && left != right) {
                    meet(left, right, x, from, to);
                }
            }
        }
    }

    private void meet(Column left, Column right, long x, double from, double to) {
        if (left.hasCells() && right.hasCells()) {
            flanks(left, right, x, from, to);
        } else if (left.hasCells()) {
            meetsNone(left, right, true, x, from, to);
        } else if (right.hasCells()) {
            meetsNone(right, left, false, x, from, to);
        }
    }

    /** What goes on over the line needs no way across. */
    private static void flanks(Column left, Column right, long x, double from, double to) {
        for (int gap = 0; gap < left.cells().length; gap++) {
            if (left.cells()[gap].x1 == x) {
                Neighbours.flank(left, gap, right, true, from, to);
            }
        }
        for (int gap = 0; gap < right.cells().length; gap++) {
            if (right.cells()[gap].x0 == x) {
                Neighbours.flank(right, gap, left, false, from, to);
            }
        }
    }

    private void meetsNone(Column c, Column none, boolean right, long x, double from, double to) {
        if (none.pipe >= 0) {
            PipeEdge.tell(c, none.pipe, Where.BESIDE, Math.round(from), Math.round(to), x);
        } else {
            made.add(none.opening, right ? Side.LEFT : Side.RIGHT, new Rim(c, inFront(none), from, to));
        }
    }

    private static Pile inFront(Column opening) {
        return opening.pile.depth() > 0 ? opening.pile : null;
    }

    private void joinUpwards(List<Column> now, long from, long to) {
        double mid = (from + to) / 2.0;
        columns.forEach(c -> c.next = null);
        for (int i = 0; i < now.size(); i++) {
            Column high = i + 1 < now.size() ? now.get(i + 1) : null;
            now.get(i).next = high != null && now.get(i).isUnder(high, mid) ? high : null;
        }
        columns.forEach(c -> part(c, from));
        for (Column c : now) {
            if (c.above == null && c.next != null) {
                c.above = c.next;
                c.since = from;
            }
        }
        if (!now.isEmpty() && now.get(0).lower.isSame(bottom)) {
            Rim.append(made.bottom(), new Rim(now.get(0), null, from, to));
        }
        Column last = now.isEmpty() ? null : now.get(now.size() - 1);
        if (last != null && last.upper.isSame(top)) {
            Rim.append(made.top(), new Rim(last, null, from, to));
        }
    }

    /** Joins a column to the one that lay on it as far as x, if that does no more. */
    private void part(Column c, long x) {
        if (c.above != null && c.next != c.above) {
            join(c, c.above, c.since, x, made);
            c.above = null;
        }
    }

    /** Joins what ends at the line between two columns to what begins there. */
    static void join(Column low, Column high, long from, long to, Rim.Cut made) {
        if (low.hasCells() && high.hasCells()) {
            for (int gap = 0; gap < high.cells().length; gap++) {
                if (high.begins(gap)) {
                    Neighbours.seam(high, gap, low, false, from, to);
                }
            }
            for (int gap = 0; gap < low.cells().length; gap++) {
                if (low.ends(gap)) {
                    Neighbours.seam(low, gap, high, true, from, to);
                }
            }
        } else if (low.hasCells() && high.pipe >= 0) {
            PipeEdge.tell(low, high.pipe, Where.UNDER, from, to, 0);
        } else if (high.hasCells() && low.pipe >= 0) {
            PipeEdge.tell(high, low.pipe, Where.OVER, from, to, 0);
        } else if (low.hasCells()) {
            made.add(high.opening, Side.SILL, new Rim(low, null, from, to));
        } else if (high.hasCells()) {
            made.add(low.opening, Side.HEAD, new Rim(high, inFront(low), from, to));
        }
    }
}
