package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How high the water of one cell's frame stands, all of its water together: patches side by side. */
final class Skyline {
    private final Cell cell;
    private final List<Wet> wet;
    private final List<Patch> out = new ArrayList<>();

    private Skyline(Cell cell, List<Wet> wet) {
        this.cell = cell;
        this.wet = wet;
    }

    /** Of the water that needed no more failures than this. */
    static List<Patch> of(Cell cell, int defences) {
        List<Wet> wet = new ArrayList<>(cell.settled().size());
        for (Wet w : cell.settled()) {
            if (w.cost() <= defences) {
                if (w.from() == cell.x0 && w.to() == cell.x1 && w.isFull(cell.x0, cell.x1)) {
                    return List.of(all(cell));
                }
                wet.add(w);
            }
        }
        Skyline s = new Skyline(cell, wet);
        long[] at = new long[2 * wet.size()];
        for (int i = 0; i < wet.size(); i++) {
            at[2 * i] = wet.get(i).from();
            at[2 * i + 1] = wet.get(i).to();
        }
        Arrays.sort(at);
        for (int i = 0; i + 1 < at.length; i++) {
            if (at[i] < at[i + 1]) {
                s.between(at[i], at[i + 1]);
            }
        }
        return s.out;
    }

    /** Nothing begins or ends between; the highest may change where two tops cross. */
    private void between(long a, long b) {
        Wet left = null, right = null, both = null;
        double leftTop = 0, rightTop = 0, bothTops = 0;
        for (Wet w : wet) {
            if (w.from() <= a && w.to() >= b) {
                double l = w.top(a), r = w.top(b);
                if (left == null || l > leftTop) {
                    left = w;
                    leftTop = l;
                }
                if (right == null || r > rightTop) {
                    right = w;
                    rightTop = r;
                }
                if (both == null || l + r > bothTops) {
                    both = w;
                    bothTops = l + r;
                }
            }
        }
        if (left == null) {
            return;
        }
        double d0 = leftTop - right.top(a), d1 = rightTop - left.top(b);
        long cross = d0 > 0 && d1 > 0 ? Math.round(a + (b - a) * d0 / (d0 + d1)) : a;
        if (cross > a && cross < b) {
            between(a, cross);
            between(cross, b);
        } else {
            add(both, a, b);
        }
    }

    private void add(Wet w, long a, long b) {
        boolean full = w.isFull(a, b);
        long left = Math.round(full ? cell.upper.at(a) : w.top(a)), right = Math.round(full ? cell.upper.at(b) : w.top(b));
        Patch last = out.isEmpty() ? null : out.get(out.size() - 1);
        if (full && last != null && last.to() == a && last.upper() != null) {
            out.set(out.size() - 1, new Patch(cell.lower, cell.upper, last.from(), b, last.leftTop(), right));
        } else {
            Patch p = new Patch(cell.lower, full ? cell.upper : null, a, b, left, right);
            if (p.hasArea()) {
                out.add(p);
            }
        }
    }

    /** A cell that is wet all over. */
    static Patch all(Cell c) {
        return new Patch(c.lower, c.upper, c.x0, c.x1, Math.round(c.upper.at(c.x0)), Math.round(c.upper.at(c.x1)));
    }
}
