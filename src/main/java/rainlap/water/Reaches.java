package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;

/** Gathers the wet frame of all cells into polygons. */
final class Reaches {
    private Reaches() {}

    /** For each number of defences and surface, where it is not dry. */
    static List<Reach> of(List<Ground> grounds) {
        List<Reach> out = new ArrayList<>();
        for (int level = 0; level <= Flow.MOST; level++) {
            for (Ground g : grounds) {
                List<Region> where = Overlay.union(wet(g, level));
                if (!where.isEmpty()) {
                    out.add(new Reach(level, g.surface(), where.stream().map(r -> Ground.mapped(r, g::turned)).toList()));
                }
            }
        }
        return List.copyOf(out);
    }

    private static List<Region> wet(Ground g, int level) {
        List<Region> parts = new ArrayList<>();
        for (Cell c : g.cells) {
            if (c.pile.depth() == 0) {
                add(parts, c, c.rain());
            } else if (c.wet[0] != null) {
                c.wet[0].stream().filter(w -> w.cost() <= level).forEach(w -> add(parts, c, w));
            }
        }
        return parts;
    }

    private static void add(List<Region> parts, Cell c, Wet w) {
        long l = Math.round(c.lower.at(w.from())), r = Math.round(c.lower.at(w.to()));
        long lt = Math.max(l, Math.round(w.leftTop())), rt = Math.max(r, Math.round(w.rightTop()));
        if (lt > l || rt > r) {
            parts.add(new Region(Ring.of(List.of(new Point(w.from(), l), new Point(w.to(), r), new Point(w.to(), rt), new Point(w.from(), lt))), List.of()));
        }
    }
}
