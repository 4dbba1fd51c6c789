package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.paper.SheetSize;
import rainlap.rule.Place;

/**
 * A part of the wall that one elevation shows: as a rule the whole. A wall that would need a smaller scale than 1:50 is cut into bays that
 * overlap; sheets laid side by side meet at the match line in the middle of what they both show.
 *
 * @param suffix what the view's title adds: ", bay 1 of 3", or nothing
 */
record Bay(Extents extents, Placing placing, String suffix, List<Match> matches) {
    private static final int SMALLEST_WHOLE = 50;
    /** Into how many bays at most a wall is cut so that it can be drawn larger. */
    private static final int MOST_LARGER = 6;
    private static final int LARGER = 20;
    private static final long OVERLAP = 300 * Grid.MM;

    /**
     * A line at which the elevation goes on in another bay.
     *
     * @param x along the wall, grid units
     * @param bay the number of that bay, from 1
     */
    record Match(long x, int bay) {}

    /** All of a wall, as it has been placed. */
    static Bay whole(Extents whole, Placing placing) {
        return new Bay(whole, placing, "", List.of());
    }

    /**
     * The bays from left to right, as a rule one; empty when the wall is too high for any scale.
     *
     * @param beside whether sections are to stand beside the elevation where that does not cost scale
     * @param size of the sheets
     */
    static List<Bay> of(Extents whole, boolean beside, SheetSize size) {
        Optional<Placing> best = beside && new Slots(size).isWide() ? Placing.of(whole, Slots.Layout.BESIDE) : Optional.empty();
        for (Slots.Layout layout : Slots.Layout.of(size)) {
            best = larger(best, Placing.of(whole, layout));
        }
        if (best.isPresent() && best.get().view().scale() <= SMALLEST_WHOLE) {
            return List.of(whole(whole, best.get()));
        }
        for (Slots.Layout layout : Slots.Layout.of(size)) {
            List<Bay> large = cut(whole, LARGER, layout);
            if (!large.isEmpty() && large.size() <= MOST_LARGER) {
                return large;
            }
        }
        Slots.Layout layout = Slots.Layout.of(size).get(0);
        List<Bay> bays = cut(whole, SMALLEST_WHOLE, layout);
        if (!bays.isEmpty()) {
            return bays;
        }
        return best.isPresent() ? List.of(whole(whole, best.get())) : cut(whole, 100, layout);
    }

    /** The one that draws larger; the first where both draw alike. */
    private static Optional<Placing> larger(Optional<Placing> first, Optional<Placing> second) {
        return second.filter(s -> first.isEmpty() || s.view().scale() < first.get().view().scale()).or(() -> first);
    }

    private static List<Bay> cut(Extents whole, int scale, Slots.Layout layout) {
        long most = Math.round(layout.wall().width() * scale * Grid.MM) - 1;
        long from = whole.sheets().minX(), total = whole.sheets().width();
        int count = (int) Math.max(1, Math.ceil((total - OVERLAP) / (double) (most - OVERLAP)));
        long width = Math.min(most, (total - OVERLAP) / count + OVERLAP + 1);
        List<Bay> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            long left = from + i * (width - OVERLAP);
            Extents part = whole.between(left, left + width);
            Optional<Placing> placing = Placing.of(part, layout, scale);
            if (placing.isEmpty()) {
                return List.of();
            }
            List<Match> matches = new ArrayList<>();
            if (i > 0) {
                matches.add(new Match(left + OVERLAP / 2, i));
            }
            if (i < count - 1) {
                matches.add(new Match(left + width - OVERLAP / 2, i + 2));
            }
            out.add(new Bay(part, placing.get(), count == 1 ? "" : ", bay " + (i + 1) + " of " + count, matches));
        }
        return out;
    }

    boolean isWhole() {
        return suffix.isEmpty();
    }

    /** The bays that mark a weak point: the first that shows all of it, else each whose own part, from match line to match line, it runs through. */
    static List<Bay> marking(List<Bay> bays, WeakPoint p) {
        List<Box> parts = parts(p.finding().where());
        return bays.stream().filter(b -> b.showsAll(p)).findFirst().map(List::of)
                .orElseGet(() -> bays.stream().filter(b -> parts.stream().anyMatch(b::owns)).toList());
    }

    /** Whether no more of it lies in other bays. */
    boolean showsAll(WeakPoint p) {
        return parts(p.finding().where()).stream().allMatch(this::shows);
    }

    private static List<Box> parts(Place where) {
        List<Point> line = where.line();
        return where.isLine() ? IntStream.range(0, Math.max(1, line.size() - 1)).mapToObj(i -> Box.of(line.subList(i, Math.min(line.size(), i + 2)))).toList()
                : where.area().stream().map(Region::box).toList();
    }

    private boolean shows(Box b) {
        return isWhole() || b.minX() >= extents.sheets().minX() && b.maxX() <= extents.sheets().maxX();
    }

    /** Whether some of it lies between the match lines; what is plumb on one belongs to the bay on its left. */
    private boolean owns(Box b) {
        long middle = extents.sheets().minX() / 2 + extents.sheets().maxX() / 2;
        long from = matches.stream().mapToLong(Match::x).filter(x -> x < middle).findFirst().orElse(Long.MIN_VALUE);
        long to = matches.stream().mapToLong(Match::x).filter(x -> x > middle).findFirst().orElse(Long.MAX_VALUE);
        return Math.max(b.minX(), from) < Math.min(b.maxX(), to) || b.minX() == b.maxX() && from < b.minX() && b.minX() <= to;
    }
}
