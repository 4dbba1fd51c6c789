package rainlap.building;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.building.Sheet.Part;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Region;
import rainlap.material.MaterialKind;

/** The pieces of two walls at the corner between them: which are drawn from both sides, and in which order they went on; see the package description. */
final class TwoWalls {
    /** Two drawings of one end may differ by this much: 1 mm. */
    private static final double SAME = 100;
    private static final long HIGH = Long.MAX_VALUE;

    private final List<List<Sheet>> drawn;
    private final List<List<Rank>> ranks;
    private final int[] next = new int[2];
    private final int first;

    /**
     * @param fold where the corner stands
     * @param leftFirst whether the left wall goes first where nothing else tells
     */
    TwoWalls(List<Part> left, List<Part> right, long fold, boolean leftFirst) {
        this.drawn = Stream.of(left, right).map(parts -> (List<Sheet>) new ArrayList<>(parts.stream().map(Sheet::new).toList())).toList();
        this.ranks = Stream.of(left, right).map(TwoWalls::ranks).toList();
        this.first = leftFirst ? 0 : 1;
        joinAt(fold);
    }

    /** Joins what is drawn from both sides; each piece with at most one. */
    private void joinAt(long fold) {
        List<Sheet> right = drawn.get(1);
        for (int i = 0; i < right.size(); i++) {
            Part there = right.get(i).parts().get(0);
            Optional<Sheet> same = drawn.get(0).stream().filter(a -> a.parts().size() == 1 && isSame(a.parts().get(0), there, fold)).findFirst();
            if (same.isPresent()) {
                same.get().add(there);
                right.set(i, same.get());
            }
        }
    }

    private static boolean isSame(Part a, Part b, long fold) {
        if (!a.piece().material().equals(b.piece().material()) || !a.piece().bond().equals(b.piece().bond())) {
            return false;
        }
        Intervals here = across(a, fold), there = across(b, fold);
        return !here.isEmpty() && here.count() == there.count() && IntStream.range(0, here.count()).allMatch(i ->
                Math.abs(here.from(i) - there.from(i)) <= SAME && Math.abs(here.to(i) - there.to(i)) <= SAME);
    }

    /** Where it lies on both sides of the fold; y. */
    private static Intervals across(Part p, long fold) {
        Intervals out = Intervals.NONE;
        for (Region r : p.onWall()) {
            Box b = r.box();
            if (b.minX() < fold && b.maxX() > fold) {
                EdgeFrame e = EdgeFrame.of(Corner.line(fold, b.minY(), b.maxY(), true));
                out = out.union(e.inside(r, e.side()).intersect(e.inside(r, -e.side())).shifted(b.minY()));
            }
        }
        return out;
    }

    /** How late a piece goes on: its layer, and for membranes the levels of foot and head. */
    private record Rank(int layer, long foot, long head) {
        static final Comparator<Rank> ORDER = Comparator.comparingInt(Rank::layer).thenComparingLong(Rank::foot).thenComparingLong(Rank::head);

        static Rank of(Part p) {
            Optional<Box> sheet = p.piece().wallBox().filter(b -> p.piece().material().kind() == MaterialKind.MEMBRANE);
            return new Rank(p.piece().material().layer().ordinal(), sheet.map(Box::minY).orElse(HIGH), sheet.map(Box::maxY).orElse(HIGH));
        }
    }

    /** For each piece of a wall, the least rank of it and of all that this wall lays later. */
    private static List<Rank> ranks(List<Part> parts) {
        List<Rank> out = new ArrayList<>(parts.stream().map(Rank::of).toList());
        for (int i = out.size() - 2; i >= 0; i--) {
            out.set(i, Rank.ORDER.compare(out.get(i), out.get(i + 1)) < 0 ? out.get(i) : out.get(i + 1));
        }
        return out;
    }

    /** Each wall's own order is kept; of the two pieces that are next, the one of lesser rank goes on. */
    List<Sheet> order() {
        List<Sheet> out = new ArrayList<>();
        while (has(0) || has(1)) {
            Sheet chosen = chosen();
            out.add(chosen);
            for (int wall = 0; wall < 2; wall++) {
                next[wall] += has(wall) && head(wall) == chosen ? 1 : 0;
            }
        }
        return out;
    }

    private boolean has(int wall) {
        return next[wall] < drawn.get(wall).size();
    }

    private Sheet head(int wall) {
        return drawn.get(wall).get(next[wall]);
    }

    private boolean isReady(int wall) {
        return has(wall) && (head(wall).parts().size() == 1 || has(0) && has(1) && head(0) == head(1));
    }

    private Sheet chosen() {
        boolean left = isReady(0), right = isReady(1);
        if (!left && !right) {
            return parted(has(first) ? first : 1 - first);
        }
        if (left && right) {
            int c = Rank.ORDER.compare(ranks.get(0).get(next[0]), ranks.get(1).get(next[1]));
            return head(c < 0 ? 0 : c > 0 ? 1 : first);
        }
        return head(left ? 0 : 1);
    }

    /** Where two walls draw two pieces in opposite orders they cannot both be the same: one of them is taken apart. */
    private Sheet parted(int wall) {
        Sheet own = head(wall).without(head(wall).parts().get(wall));
        drawn.get(wall).set(next[wall], own);
        return own;
    }
}
