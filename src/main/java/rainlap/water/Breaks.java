package rainlap.water;

import java.util.Arrays;
import java.util.Collection;
import java.util.stream.LongStream;
import rainlap.geom.Box;
import rainlap.geom.Region;

/** Where the slabs of a band begin and end: at each corner in it, and where an edge comes into it or leaves it. There is room for all of them from the start. */
final class Breaks {
    /** Two ends of an edge, and where it crosses the bottom and the top. */
    private static final int MOST_AN_EDGE = 4;

    /** On a very wide wall no cell reaches over a multiple of this, so that what is kept in one stays little: some bays, grid units. */
    private static final long WIDEST = 600_000, VERY_WIDE = 3_000_000;

    private final Box extent;
    private final long[] at;
    private int count;

    Breaks(Collection<Carving.Owned> members, Box extent) {
        this.extent = extent;
        long[] cuts = cuts(extent).toArray();
        at = new long[cuts.length + MOST_AN_EDGE * members.stream().mapToInt(o -> o.region().edgeCount()).sum()];
        for (long x : cuts) {
            add(x);
        }
    }

    /** Adds those of one edge of a region. */
    void add(Region r, int edge, long bottom, long top) {
        long low = Math.min(r.ay(edge), r.by(edge)), high = Math.max(r.ay(edge), r.by(edge));
        if (high >= bottom && low <= top) {
            add(r.ax(edge));
            add(r.bx(edge));
            addCrossing(r, edge, bottom);
            addCrossing(r, edge, top);
        }
    }

    private void addCrossing(Region r, int k, long y) {
        if (r.ay(k) != r.by(k) && (r.ay(k) - y) * (double) (r.by(k) - y) < 0) {
            add(Math.round(r.ax(k) + (double) (y - r.ay(k)) * (r.bx(k) - r.ax(k)) / (r.by(k) - r.ay(k))));
        }
    }

    private void add(long x) {
        if (x >= extent.minX() && x <= extent.maxX()) {
            at[count++] = x;
        }
    }

    /** Where the cells of a surface are cut though nothing ends there. */
    private static LongStream cuts(Box extent) {
        return extent.width() <= VERY_WIDE ? LongStream.empty() : LongStream.iterate(extent.minX(), x -> x < extent.maxX(), x -> x + WIDEST);
    }

    static boolean isCut(Box extent, long x) {
        return extent.width() > VERY_WIDE && Math.floorMod(x - extent.minX(), WIDEST) == 0;
    }

    /** All of them once, ascending. */
    long[] once() {
        Arrays.sort(at, 0, count);
        int n = 0;
        for (int i = 0; i < count; i++) {
            if (n == 0 || at[n - 1] != at[i]) {
                at[n++] = at[i];
            }
        }
        return Arrays.copyOf(at, n);
    }
}
