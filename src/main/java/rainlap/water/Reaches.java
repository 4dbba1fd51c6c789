package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Region;

/** The wet frame: kept as patches, made into polygons when somebody asks for them. */
final class Reaches {
    private final List<Part> parts = new ArrayList<>();
    private List<Reach> made;

    private record Part(int defences, Ground ground, List<Patch> patches) {}

    Reaches(List<Ground> grounds) {
        List<List<Part>> byLevel = Stream.generate(() -> (List<Part>) new ArrayList<Part>()).limit(Flow.MOST + 1).toList();
        for (Ground g : grounds) {
            List<List<Patch>> wet = wet(g);
            for (int level = 0; level <= Flow.MOST; level++) {
                if (!wet.get(level).isEmpty()) {
                    byLevel.get(level).add(new Part(level, g, wet.get(level)));
                }
            }
        }
        byLevel.forEach(parts::addAll);
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

    /** By level. */
    private static List<List<Patch>> wet(Ground g) {
        List<List<Patch>> out = Stream.generate(() -> (List<Patch>) new ArrayList<Patch>()).limit(Flow.MOST + 1).toList();
        for (Cell c : g.cells) {
            List<Patch> wet = c.pile.depth() == 0 ? List.of(Skyline.all(c)) : List.of();
            for (int level = 0; level <= Flow.MOST; level++) {
                wet = isWetter(c, level) ? Skyline.of(c, level) : wet;
                out.get(level).addAll(wet);
            }
        }
        return out;
    }

    /** Whether more water has come at this level than at those before; what is bare is wet as it is. */
    private static boolean isWetter(Cell c, int level) {
        for (Wet w : c.pile.depth() > 0 ? c.onFrame() : List.<Wet>of()) {
            if (w.cost() == level) {
                return true;
            }
        }
        return false;
    }
}
