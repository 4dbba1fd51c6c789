package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts a band of a surface into cells, from left to right. In each upright slab between two neighbouring corners or crossings the edges do
 * not cross; between them lie trapezoids, and those that go on unchanged into the next slab are one cell.
 */
final class Sweep {
    private final Ground ground;
    private final Pile.Source piles;
    private final long bottom;
    private final long top;
    private final Border[] byStart;
    private final long[] breaks;
    private final List<Cell> made = new ArrayList<>();

    private Active active = new Active();
    private List<Cell> open = new ArrayList<>();

    /**
     * @param borders of everything that reaches into the band or lies under it, in any order
     * @param breaks where slabs begin and end, ascending: every corner inside the band
     * @param bottom of the band
     * @param top of the band
     */
    Sweep(Ground ground, Pile.Source piles, List<Border> borders, long[] breaks, long bottom, long top) {
        this.ground = ground;
        this.piles = piles;
        this.bottom = bottom;
        this.top = top;
        this.breaks = breaks;
        byStart = borders.toArray(Border[]::new);
        Arrays.sort(byStart, java.util.Comparator.comparingLong(b -> b.line().ax()));
    }

    /** The cells, in no order that means anything but always the same. */
    List<Cell> run() {
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
                take(slab(from, to), from, to);
                from = to;
            }
        }
        return made;
    }

    /** The trapezoids of one slab, from the bottom up. */
    private List<Cell> slab(long from, long to) {
        List<Cell> out = new ArrayList<>();
        Zone zone = new Zone(piles);
        Line below = Line.level(bottom, from, to);
        double mid = (from + to) / 2.0;
        int pipeBelow = -1;
        int i = active.skipTo(bottom, mid, zone);
        while (true) {
            boolean done = i >= active.size() || active.height(i) >= top;
            Line line = done ? Line.level(top, from, to) : active.line(i);
            int end = done ? i : active.endOfLine(i);
            int pipeAbove = -1;
            for (int k = i; k < end; k++) {
                pipeAbove = Math.max(pipeAbove, active.get(k).pipe());
            }
            if (zone.hasCell() && line.at(mid) > below.at(mid)) {
                Cell c = new Cell(ground, from, to, below, line, zone.pile(), zone.opening());
                c.overPipe = pipeBelow >= 0;
                c.underPipe = pipeAbove >= 0;
                c.pipe = Math.max(pipeAbove, pipeBelow);
                out.add(c);
            }
            if (done) {
                return out;
            }
            for (int k = i; k < end; k++) {
                zone.cross(active.get(k));
            }
            below = line;
            pipeBelow = pipeAbove;
            i = end;
        }
    }

    /** Joins a slab's trapezoids to those of the slab before. */
    private void take(List<Cell> slab, long from, long to) {
        List<Cell> now = new ArrayList<>(slab.size());
        int k = 0;
        for (Cell c : slab) {
            while (k < open.size() && open.get(k).lower.at(from) < c.lower.at(from) - 1) {
                k++;
            }
            Cell same = goesOn(c, from, k);
            if (same != null) {
                same.x1 = to;
                now.add(same);
            } else {
                made.add(c);
                now.add(c);
            }
        }
        joinSideways(now, from);
        joinUpwards(now, from, to);
        open = now;
    }

    private Cell goesOn(Cell c, long from, int start) {
        for (int k = start; k < open.size(); k++) {
            Cell o = open.get(k);
            if (o.lower.at(from) > c.lower.at(from) + 1) {
                return null;
            }
            if (o.x1 == from && o.pile == c.pile && o.opening == c.opening && o.pipe == c.pipe && o.overPipe == c.overPipe && o.underPipe == c.underPipe
                    && o.lower.isSame(c.lower) && o.upper.isSame(c.upper)) {
                return o;
            }
        }
        return null;
    }

    private void joinSideways(List<Cell> now, long x) {
        int k = 0;
        for (Cell right : now) {
            if (right.x0 != x) {
                continue;
            }
            double low = right.lower.at(x), high = right.upper.at(x);
            while (k > 0 && open.get(k - 1).upper.at(x) > low) {
                k--;
            }
            while (k < open.size() && open.get(k).upper.at(x) <= low) {
                k++;
            }
            for (int j = k; j < open.size() && open.get(j).lower.at(x) < high; j++) {
                Cell left = open.get(j);
                double from = Math.max(low, left.lower.at(x)), to = Math.min(high, left.upper.at(x));
                if (left.x1 == x && to - from > 0.5) {
                    Flank f = new Flank(left, right, true, false, from, to, 0, null);
                    left.beside().flanks.add(f);
                    right.beside().flanks.add(f.turned());
                }
            }
        }
    }

    private static void joinUpwards(List<Cell> now, long from, long to) {
        for (int i = 0; i + 1 < now.size(); i++) {
            Cell lower = now.get(i), upper = now.get(i + 1);
            if (lower.upper.isSame(upper.lower) || Math.abs(lower.upper.at((from + to) / 2.0) - upper.lower.at((from + to) / 2.0)) < 0.5) {
                join(upper, lower, from, to);
            }
        }
    }

    /** Adds a seam, or lengthens the last one of the same two cells. */
    static void join(Cell upper, Cell lower, long from, long to) {
        List<Seam> down = upper.beside().down, up = lower.beside().up;
        int last = down.size() - 1, lastUp = up.size() - 1;
        if (last >= 0 && down.get(last).lower() == lower && down.get(last).to() == from && lastUp >= 0 && up.get(lastUp).upper() == upper) {
            Seam longer = down.get(last).to(to);
            down.set(last, longer);
            up.set(lastUp, longer);
        } else {
            Seam s = Seam.plain(upper, lower, from, to);
            down.add(s);
            up.add(s);
        }
    }
}
