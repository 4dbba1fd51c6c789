package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Overlay;
import rainlap.geom.Region;

/**
 * Patches side by side made into regions. Each edge gets a corner wherever a neighbour has one, so that neighbours share whole edges; then all edges that
 * two of them share cancel out.
 */
final class Patchwork {
    private final List<Patch> patches;
    private final Map<Long, long[]> onPlumb;
    private final Map<Long, long[]> onLevel;
    private final Map<Line, long[]> onSlope;

    private Patchwork(List<Patch> patches) {
        this.patches = patches;
        Map<Long, List<Long>> plumb = new HashMap<>(), level = new HashMap<>();
        Map<Line, List<Long>> slope = new HashMap<>();
        for (Patch p : patches) {
            corner(p.from(), p.leftFoot(), p.lower(), plumb, level, slope);
            corner(p.to(), p.rightFoot(), p.lower(), plumb, level, slope);
            corner(p.from(), p.leftTop(), p.upper(), plumb, level, slope);
            corner(p.to(), p.rightTop(), p.upper(), plumb, level, slope);
        }
        onPlumb = sorted(plumb);
        onLevel = sorted(level);
        onSlope = sorted(slope);
    }

    static List<Region> regions(List<Patch> patches) {
        if (patches.isEmpty()) {
            return List.of();
        }
        Patchwork work = new Patchwork(patches);
        return Overlay.coverage(patches.stream().map(work::ring).toList());
    }

    private static void corner(long x, long y, Line on, Map<Long, List<Long>> plumb, Map<Long, List<Long>> level, Map<Line, List<Long>> slope) {
        plumb.computeIfAbsent(x, k -> new ArrayList<>()).add(y);
        level.computeIfAbsent(y, k -> new ArrayList<>()).add(x);
        if (on != null && !on.isLevel()) {
            slope.computeIfAbsent(on, k -> new ArrayList<>()).add(x);
        }
    }

    private static <K> Map<K, long[]> sorted(Map<K, List<Long>> in) {
        Map<K, long[]> out = new HashMap<>();
        in.forEach((k, v) -> out.put(k, v.stream().mapToLong(l -> l).sorted().distinct().toArray()));
        return out;
    }

    /** x, y, x, y … counter-clockwise from the lower left, without a repeated point. */
    private long[] ring(Patch p) {
        Ring r = new Ring();
        edge(r, p.lower(), p.from(), p.leftFoot(), p.to(), p.rightFoot());
        edge(r, null, p.to(), p.rightFoot(), p.to(), p.rightTop());
        edge(r, p.upper(), p.to(), p.rightTop(), p.from(), p.leftTop());
        edge(r, null, p.from(), p.leftTop(), p.from(), p.leftFoot());
        return Arrays.copyOf(r.at, r.size);
    }

    /** Adds an edge's first point and the corners along it, not its last. */
    private void edge(Ring r, Line on, long ax, long ay, long bx, long by) {
        r.add(ax, ay);
        if (ax == bx) {
            between(onPlumb.get(ax), ay, by).forEach(y -> r.add(ax, y));
        } else if (ay == by) {
            between(onLevel.get(ay), ax, bx).forEach(x -> r.add(x, ay));
        } else if (on != null && !on.isLevel()) {
            between(onSlope.get(on), ax, bx).forEach(x -> r.add(x, Math.round(on.at(x))));
        }
    }

    private static List<Long> between(long[] sorted, long a, long b) {
        List<Long> out = new ArrayList<>(0);
        int i = Arrays.binarySearch(sorted, Math.min(a, b));
        for (i = i < 0 ? -i - 1 : i + 1; i < sorted.length && sorted[i] < Math.max(a, b); i++) {
            out.add(sorted[i]);
        }
        if (a > b) {
            java.util.Collections.reverse(out);
        }
        return out;
    }

    private static final class Ring {
        private long[] at = new long[16];
        private int size;

        void add(long x, long y) {
            if (size > 0 && at[size - 2] == x && at[size - 1] == y) {
                return;
            }
            if (size == at.length) {
                at = Arrays.copyOf(at, 2 * size);
            }
            at[size++] = x;
            at[size++] = y;
        }
    }
}
