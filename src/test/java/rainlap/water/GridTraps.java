package rainlap.water;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rainlap.geom.Point;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;

/** Running water that cannot fall for nothing, where it runs along to, and whether it ever gets out. */
final class GridTraps {
    private final GridRaster raster;
    private final Outline outline;
    private final Set<Integer> held = new TreeSet<>();
    private final Set<Integer> out = new TreeSet<>();
    private final Map<Integer, List<Integer>> cameFrom = new HashMap<>();

    GridTraps(GridRaster raster, Outline outline) {
        this.raster = raster;
        this.outline = outline;
    }

    void held(int state) {
        held.add(state);
    }

    void leaves(int state) {
        out.add(state);
    }

    void leads(int from, int to) {
        if (held.contains(from)) {
            cameFrom.computeIfAbsent(to, k -> new ArrayList<>()).add(from);
        }
    }

    /** Whether water that runs out of the wall sideways leaves: at a building corner, and into an opening without a reveal. */
    boolean leavesSideways(int c, int beyond, int dir) {
        if (beyond == GridRaster.PIPE || !raster.block(c).surface().isWall()) {
            return false;
        }
        double y = raster.y(c), x = raster.side(c, dir) + (dir == GridRaster.LEFT ? -0.5 : 0.5);
        if (outline.region().covers(x, y)) {
            return true;
        }
        double nearest = Double.POSITIVE_INFINITY;
        boolean corner = false;
        for (OutlineEdge e : outline.edges()) {
            Point a = e.line().a(), b = e.line().b();
            if (Math.min(a.y(), b.y()) < y && y < Math.max(a.y(), b.y())) {
                double away = Math.abs(a.x() + (y - a.y()) * (b.x() - a.x()) / (b.y() - a.y()) - x);
                if (away < nearest) {
                    nearest = away;
                    corner = e.role().isCorner();
                }
            }
        }
        return corner;
    }

    Set<Integer> trapped() {
        Set<Integer> left = new TreeSet<>(held);
        Deque<Integer> free = new ArrayDeque<>(out);
        cameFrom.keySet().stream().filter(s -> !held.contains(s)).forEach(free::add);
        left.removeAll(out);
        while (!free.isEmpty()) {
            for (int before : cameFrom.getOrDefault(free.remove(), List.of())) {
                if (left.remove(before)) {
                    free.add(before);
                }
            }
        }
        return left;
    }
}
