package rainlap.water;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;

/** Cuts one surface into cells, band by band when it is tall and crowded: a slab then never meets more than a band's edges. */
final class Carving {
    private static final long BAND = 150_000;
    private static final int CROWDED = 600;
    private final Ground ground;
    private final Pile.Ordered order;
    private final List<Owned> all = new ArrayList<>();

    /** @param owner as a {@link Border} tells it */
    record Owned(int owner, Region region) {}

    private Carving(Ground ground, Stack stack) {
        this.ground = ground;
        ground.lay(stack);
        this.order = stack.order()::isOutside;
    }

    /** Cuts a reveal. */
    static Rim.Cut carve(Ground ground, Stack stack) {
        Carving c = new Carving(ground, stack);
        c.all.add(new Owned(Border.OUTLINE, Region.of(ground.extent())));
        return c.cut(Crew.ALONE);
    }

    /** Cuts the wall, but for what lies in front of its openings. */
    static Rim.Cut carveWall(Ground ground, Stack stack, Crew crew) {
        Carving c = new Carving(ground, stack);
        c.addWall(stack);
        return c.cut(crew);
    }

    private Rim.Cut cut(Crew crew) {
        ground.laid().forEach(l -> l.regions().forEach(r -> all.add(new Owned(l.number(), r))));
        Rim.Cut made = bands(crew);
        ground.cells.addAll(made.cells());
        return made;
    }

    private void addWall(Stack stack) {
        all.add(new Owned(Border.OUTLINE, stack.elevation().outline().region()));
        List<Opening> openings = stack.elevation().openings();
        for (int i = 0; i < openings.size(); i++) {
            all.add(new Owned(Border.ofOpening(i), Region.of(openings.get(i).rect())));
        }
        List<Penetration> pipes = stack.elevation().penetrations();
        for (int i = 0; i < pipes.size(); i++) {
            all.add(new Owned(Border.ofPipe(i), pipes.get(i).region()));
        }
    }

    private Rim.Cut bands(Crew crew) {
        Box extent = ground.extent();
        int edges = all.stream().mapToInt(o -> o.region().edgeCount()).sum();
        int count = edges < CROWDED ? 1 : (int) Math.max(1, extent.height() / BAND);
        List<List<Owned>> members = membersOf(count, extent);
        List<Rim.Cut> bands = crew.all(IntStream.range(0, count).<Supplier<Rim.Cut>>mapToObj(
                i -> () -> sweep(members.get(i), level(extent, i, count), level(extent, i + 1, count))).toList());
        Rim.Cut[] between = between(bands, crew);
        Rim.Cut whole = bands.get(0);
        ground.bandEnds.add(whole.cells().size());
        for (int i = 1; i < count; i++) {
            whole.add(between[i]);
            whole.add(bands.get(i));
            ground.bandEnds.add(whole.cells().size());
        }
        return whole;
    }

    /** Joins each band to the one below; every other pair at a time, for a cell may reach from the foot of its band to the top. */
    private static Rim.Cut[] between(List<Rim.Cut> bands, Crew crew) {
        Rim.Cut[] between = new Rim.Cut[bands.size()];
        for (int first = 1; first <= 2; first++) {
            crew.all(IntStream.iterate(first, i -> i < bands.size(), i -> i + 2).<Supplier<Rim.Cut>>mapToObj(
                    i -> () -> between[i] = joined(bands.get(i - 1).top(), bands.get(i).bottom())).toList());
        }
        return between;
    }

    private static long level(Box extent, long i, long count) {
        return extent.minY() + extent.height() * i / count;
    }

    private List<List<Owned>> membersOf(long count, Box extent) {
        List<List<Owned>> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(new ArrayList<>());
        }
        for (Owned o : all) {
            Box b = o.region().box();
            for (int i = bandOf(b.minY(), count, extent); i <= bandOf(b.maxY(), count, extent); i++) {
                out.get(i).add(o);
            }
        }
        return out;
    }

    private static int bandOf(long y, long count, Box extent) {
        long i = Math.max(0, Math.min(extent.height() - 1, y - extent.minY())) * count / Math.max(1, extent.height());
        return (int) Math.min(count - 1, i);
    }

    private Rim.Cut sweep(Collection<Owned> members, long bottom, long top) {
        List<Border> borders = new ArrayList<>();
        Breaks breaks = new Breaks(members, ground.extent());
        for (Owned o : members) {
            Region r = o.region();
            for (int k = 0; k < r.edgeCount(); k++) {
                breaks.add(r, k, bottom, top);
                if (r.ax(k) < r.bx(k) && Math.min(r.ay(k), r.by(k)) < top) {
                    borders.add(new Border(new Line(r.ax(k), r.ay(k), r.bx(k), r.by(k)), o.owner(), true));
                } else if (r.ax(k) > r.bx(k) && Math.min(r.ay(k), r.by(k)) < top) {
                    borders.add(new Border(new Line(r.bx(k), r.by(k), r.ax(k), r.ay(k)), o.owner(), false));
                }
            }
        }
        return new Sweep(ground, new Pile.Source(order, members.size()), borders, breaks.once(), bottom, top).run();
    }

    private static Rim.Cut joined(List<Rim> low, List<Rim> high) {
        Rim.Cut made = new Rim.Cut();
        int i = 0, j = 0;
        while (i < low.size() && j < high.size()) {
            Rim l = low.get(i), h = high.get(j);
            long from = Math.round(Math.max(l.from(), h.from())), to = Math.round(Math.min(l.to(), h.to()));
            if (from < to) {
                Sweep.join(l.column(), h.column(), from, to, made);
            }
            if (l.to() < h.to()) {
                i++;
            } else {
                j++;
            }
        }
        return made;
    }
}
