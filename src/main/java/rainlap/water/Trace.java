package rainlap.water;

import java.util.List;
import rainlap.geom.Point;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** Where the water goes on one elevation; the package description says what that means. Nothing of the cells it was found by is kept. */
public final class Trace {
    private final Drive drive;
    private final List<Reach> reach;
    private final List<Arrival> arrivals;
    private final List<Standing> trapped;

    private Trace(Drive drive, Waters waters) {
        Paths paths = new Paths(waters.coat());
        this.drive = drive;
        this.reach = Reaches.of(waters.grounds());
        this.arrivals = new Arrivals(paths).of(waters.flow().onFrame());
        this.trapped = waters.flow().trapped().stream().filter(t -> t.water().cost() == 0).map(t -> standing(t, paths)).toList();
    }

    public static Trace of(Stack stack, Drive drive) {
        return new Trace(drive, new Waters(stack, drive));
    }

    private static Standing standing(Trapped t, Paths paths) {
        Wet w = t.water();
        Cell c = w.cell();
        List<Point> where = List.of(c.ground.turned(new Point(t.from(), Math.round(c.lower.at(t.from())))),
                c.ground.turned(new Point(t.to(), Math.round(c.lower.at(t.to())))));
        String over = w.gap() < c.openGap() ? paths.name(c.pile.at(w.gap())) : "";
        String layer = w.gap() == 0 ? Step.FRAME : paths.name(c.pile.at(w.gap() - 1));
        return new Standing(over, layer, c.ground.surface(), where, paths.to(w));
    }

    /** How hard the water is driven, and what is assumed. */
    public Drive drive() {
        return drive;
    }

    /** By defences, then surface; what is in none of them has three defences or more. */
    public List<Reach> reach() {
        return reach;
    }

    /** Where water first comes onto the frame from elsewhere, fewest defences first; rain on a bare frame is in {@link #reach} alone. */
    public List<Arrival> arrivals() {
        return arrivals;
    }

    /** Water that, as drawn, stands and cannot get out. */
    public List<Standing> trapped() {
        return trapped;
    }

    /** The least number of things that must fail for the frame to get wet at a place of a surface's own frame; 3 stands for three or more. */
    public int defences(Surface surface, Point place) {
        for (Reach r : reach) {
            if (r.surface().equals(surface) && r.where().stream().anyMatch(w -> w.covers(place.x(), place.y()))) {
                return r.defences();
            }
        }
        return Flow.MOST + 1;
    }
}
