package rainlap.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.geom.Box;
import rainlap.stack.Crew;
import rainlap.stack.Stack;

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
        List<Arrival> told = Arrivals.of(flow, w -> w.cost() == 0, paths, Crew.ALONE);
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
        Waters waters = Waters.into(stack, drive, Rain.into(c -> {
            boolean in = c.isIn(place);
            bare[0] |= in && c.isOnFrame();
            return in;
        }));
        return new Inflow(waters, bare[0]);
    }

    /** Where a drop comes onto the frame that is no arrival of itself, but runs on. */
    private static Optional<Arrival> firstDrop(Waters waters, Paths paths) {
        Optional<Wet> wet = waters.grounds().stream().flatMap(g -> g.cells.stream()).filter(c -> c.isOnFrame() && !c.isOpen())
                .flatMap(c -> c.settled().stream()).filter(w -> w.cost() == 0 && !Arrivals.isDrop(w)).findFirst();
        return wet.map(Inflow::entry).map(w -> new Arrival(0, true, w.cell().ground.surface(), Paths.top(w), paths.to(w), OptionalDouble.empty()));
    }

    private static Wet entry(Wet last) {
        Wet w = last;
        while (w.source() != null && w.source().isOnFrame()) {
            w = w.source();
        }
        return w;
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
