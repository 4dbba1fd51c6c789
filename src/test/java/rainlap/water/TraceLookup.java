package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntBiFunction;
import rainlap.geom.Point;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** The trace's answer at any place, found column by column: a comparison asks for thousands of places that share few x. */
final class TraceLookup implements ToIntBiFunction<Surface, Point> {
    private final Map<Surface, Ground> grounds = new HashMap<>();
    private final Map<Surface, Map<Long, List<Cell>>> columns = new HashMap<>();

    TraceLookup(Stack stack, Drive drive) {
        new Waters(stack, drive, Crew.ALONE).grounds().forEach(g -> grounds.put(g.surface(), g));
    }

    @Override
    public int applyAsInt(Surface surface, Point own) {
        Ground g = grounds.get(surface);
        Point p = inside(g, g.turned(own));
        for (Cell c : columns.computeIfAbsent(surface, s -> new HashMap<>()).computeIfAbsent(p.x(), x -> column(g, x))) {
            if (c.lower.at(p.x()) <= p.y() && p.y() < c.upper.at(p.x())) {
                return defences(c, p);
            }
        }
        throw new IllegalArgumentException("the trace has no frame at " + own + " on " + surface.name());
    }

    /** A place on the far border, where cells end and none begins, belongs to the last cell. */
    private static Point inside(Ground g, Point p) {
        return new Point(Math.min(p.x(), g.extent().maxX() - 1), Math.min(p.y(), g.extent().maxY() - 1));
    }

    private static List<Cell> column(Ground g, long x) {
        List<Cell> out = new ArrayList<>();
        for (Cell c : g.cells) {
            if (c.isOnFrame() && c.x0 <= x && x < c.x1) {
                out.add(c);
            }
        }
        return out;
    }

    private static int defences(Cell c, Point p) {
        int least = c.isOpen() ? 0 : GridSimulation.NOT_REACHED;
        for (Wet w : c.settled()) {
            if (w.from() <= p.x() && p.x() < w.to() && p.y() <= w.top(p.x())) {
                least = Math.min(least, w.cost());
            }
        }
        return least;
    }
}
