package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Region;

/** The wet frame: kept as patches, made into polygons when somebody asks for them. */
final class Reaches {
    private final List<Part> parts = new ArrayList<>();
    private List<Reach> made;

    private record Part(int defences, Ground ground, List<Patch> patches) {}

    Reaches(List<Ground> grounds) {
        for (int level = 0; level <= Flow.MOST; level++) {
            for (Ground g : grounds) {
                List<Patch> wet = wet(g, level);
                if (!wet.isEmpty()) {
                    parts.add(new Part(level, g, wet));
                }
            }
        }
        grounds.forEach(g -> g.cells.clear());
    }

    /** For each number of defences and surface, where it is not dry. */
    synchronized List<Reach> all() {
        if (made == null) {
            made = parts.stream().map(p -> new Reach(p.defences(), p.ground().surface(),
                    Patchwork.regions(p.patches()).stream().map(r -> Ground.mapped(r, p.ground()::turned)).toList()))
                    .filter(r -> !r.where().isEmpty()).toList();
            parts.clear();
        }
        return made;
    }

    private static List<Patch> wet(Ground g, int level) {
        List<Patch> out = new ArrayList<>();
        for (Cell c : g.cells) {
            if (c.pile.depth() == 0) {
                out.add(Skyline.all(c));
            } else if (!c.onFrame().isEmpty()) {
                out.addAll(Skyline.of(c, level));
            }
        }
        return out;
    }
}
