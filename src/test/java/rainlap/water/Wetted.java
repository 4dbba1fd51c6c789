package rainlap.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Changed;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** What the trace says is wet, so that two walls can be held against each other. */
final class Wetted {
    private final List<Reach> reach;
    private final Set<Landing> landings;

    /** Where and at how many failures water comes onto the frame; which of several equal ways is told of it may depend on the order. */
    record Landing(int defences, boolean first, Surface surface, List<Point> where) {}

    private Wetted(List<Reach> reach, Stream<Landing> landings) {
        this.reach = reach;
        this.landings = landings.collect(Collectors.toCollection(() -> new TreeSet<>(Comparator.comparing(Landing::toString))));
    }

    static Wetted of(Elevation wall, Stage stage, Drive drive) {
        Stack stack = Stack.of(wall, stage);
        Trace t = Trace.of(stack, drive, Optional.empty(), Crew.ALONE);
        Stream<Arrival> all = Stream.concat(t.arrivals().stream(), t.ofTwoFailures(List.of(wall.outline().box()), Crew.ALONE).stream());
        return new Wetted(t.reach(), all.map(a -> new Landing(a.defences(), a.first(), a.surface(), a.where())));
    }


    /** The same with surfaces and places elsewhere. */
    Wetted changed(UnaryOperator<Surface> surface, BiFunction<Point, Surface, Point> to) {
        return new Wetted(reach.stream().map(r -> new Reach(r.defences(), surface.apply(r.surface()),
                r.where().stream().map(w -> Changed.region(w, p -> to.apply(p, r.surface()))).toList())).toList(),
                landings.stream().map(l -> new Landing(l.defences, l.first, surface.apply(l.surface),
                        l.where.stream().map(p -> to.apply(p, l.surface)).sorted().toList())));
    }

    List<Region> at(int defences, Surface surface) {
        return reach.stream().filter(r -> r.defences() == defences && r.surface().equals(surface)).flatMap(r -> r.where().stream()).toList();
    }

    List<Surface> surfaces() {
        return List.copyOf(new TreeSet<>(reach.stream().map(Reach::surface).toList()));
    }

    /**
     * A part of the frame that is wet here and dry there.
     *
     * @param defences at which number of failures
     */
    record Excess(int defences, Surface surface, Region where) {
        @Override
        public String toString() {
            return "wet at " + defences + " on " + surface.name() + ": " + where;
        }
    }

    /**
     * What is wet here and lies further than a tolerance from all that is wet there, at as many failures. So a stream that is a grid unit wide
     * counts, and a border that moved by less than the tolerance does not.
     */
    List<Excess> beyond(Wetted there, long tolerance) {
        List<Excess> out = new ArrayList<>();
        for (Surface s : surfaces()) {
            IntStream.rangeClosed(0, Flow.MOST).forEach(level -> {
                List<Region> wet = at(level, s), known = there.at(level, s);
                List<Region> wide = known.isEmpty() || tolerance == 0 ? known : Overlay.shrink(known, -tolerance);
                Overlay.difference(wet, wide).forEach(r -> out.add(new Excess(level, s, r)));
            });
        }
        return out;
    }

    /** Where the two differ by more than a tolerance in grid units; empty if nowhere. Without tolerance water must leak in at the same places too. */
    static String difference(Wetted a, Wetted b, long tolerance) {
        String leaks = tolerance > 0 ? "" : told("only in the first it leaks in, ", a.leaks().beyond(b.leaks(), 0))
                + told("only in the second it leaks in, ", b.leaks().beyond(a.leaks(), 0));
        return told("only the first is ", a.beyond(b, tolerance)) + told("only the second is ", b.beyond(a, tolerance)) + leaks;
    }

    /** The lines along which water comes onto the frame as drawn, a grid unit to each side; into which stretches ways told differently part them is left open. */
    private Wetted leaks() {
        return new Wetted(landings.stream().filter(l -> l.defences == 0)
                .map(l -> new Reach(0, l.surface, List.of(Region.of(Box.of(l.where).grow(1))))).toList(), Stream.of());
    }

    static String told(String what, List<Excess> all) {
        return all.stream().limit(3).map(e -> what + e + "\n").collect(Collectors.joining());
    }
}
