package rainlap.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.geom.Box;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/**
 * What water does, nothing failing, that comes in at one place of the wall and nowhere else. It is followed until it is in the open again: what then
 * runs down the outside is rain like any other.
 */
public final class Inflow {
    private final boolean ontoBareFrame;
    private final List<Arrival> arrivals;
    private final List<Standing> trapped;
    private final List<OnBatten> onBattens;

    private Inflow(Waters waters, boolean ontoBareFrame) {
        this.ontoBareFrame = ontoBareFrame;
        Paths paths = new Paths(waters.coat());
        Flows flow = waters.flows();
        List<Arrival> told = new Arrivals(paths).of(flow.entries(), flow.firsts()).stream().filter(a -> a.defences() == 0).toList();
        arrivals = told.isEmpty() ? firstDrop(waters, paths).stream().toList() : told;
        trapped = flow.trapped().stream().filter(t -> t.water().cost() == 0).map(t -> Trace.standing(t, paths)).toList();
        onBattens = flow.onBattens();
    }

    /**
     * Rain on what lies bare within a box of the wall, and water at the pipe if one borders it there. What runs in the open beside the box comes in too, where a piece
     * ends at its border.
     */
    public static Inflow at(Stack stack, Drive drive, Box place) {
        boolean[] bare = {false};
        Waters waters = new Waters(stack, drive, Crew.ALONE, Rain.into(c -> {
            boolean in = isIn(c, place);
            bare[0] |= in && c.isFramed() && c.pile.depth() == 0;
            return in;
        }));
        return new Inflow(waters, bare[0]);
    }

    /**
     * Where water comes onto the frame that comes in at one place alone, with as many failures as are followed, fewest first: as if it rained there and nowhere else. So
     * no other leak hides what the place itself lets in.
     *
     * @param surface on which the place lies
     * @param place on the wall: it rains on what lies beside it, and what falls past it runs on; for a place in a reveal it rains on all of that opening's reveals
     */
    public static List<Arrival> waysFrom(Stack stack, Drive drive, Surface surface, Box place) {
        Waters waters = new Waters(stack, drive, Crew.ALONE, c -> surface.isWall() ? part(c, place)
                : c.ground.surface().opening().equals(surface.opening()) ? Optional.of(c.rain()) : Optional.empty());
        return new Arrivals(new Paths(waters.coat())).of(waters.flows().entries(), waters.flows().firsts());
    }

    /** What of a cell's rain lies above, on or below a place. */
    private static Optional<Wet> part(Cell c, Box place) {
        return isIn(c, place) ? Optional.of(c.rain().between(Math.max(c.x0, place.minX()), Math.min(c.x1, place.maxX()))) : Optional.empty();
    }

    /** Where a drop comes onto the frame that is no arrival of itself, but runs on. */
    private static Optional<Arrival> firstDrop(Waters waters, Paths paths) {
        Optional<Wet> wet = waters.grounds().stream().flatMap(g -> g.cells.stream()).filter(c -> c.pile.depth() > 0)
                .flatMap(c -> c.onFrame().stream()).filter(w -> w.cost() == 0 && !Arrivals.isDrop(w)).findFirst();
        return wet.map(Inflow::entry).map(w -> new Arrival(0, true, w.cell().ground.surface(), Paths.top(w), paths.to(w), OptionalDouble.empty()));
    }

    private static Wet entry(Wet last) {
        Wet w = last;
        while (w.source() != null && w.source().isOnFrame()) {
            w = w.source();
        }
        return w;
    }

    private static boolean isIn(Cell c, Box place) {
        long a = Math.max(c.x0, place.minX()), b = Math.min(c.x1, place.maxX());
        return c.ground.surface().isWall() && a < b && Math.min(c.lower.at(a), c.lower.at(b)) < place.maxY()
                && place.minY() < Math.max(c.upper.at(a), c.upper.at(b));
    }

    /** Whether it comes in onto the bare frame. */
    public boolean ontoBareFrame() {
        return ontoBareFrame;
    }

    /** Where it comes onto the frame from another layer. */
    public List<Arrival> arrivals() {
        return arrivals;
    }

    /** Where it stands and cannot get out. */
    public List<Standing> trapped() {
        return trapped;
    }

    /** Where it comes to lie on a batten. */
    public List<OnBatten> onBattens() {
        return onBattens;
    }
}
