package rainlap.water;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The wet frame: kept as patches, made into polygons when somebody asks for them. */
final class Reaches {
    private final List<Part> parts = new ArrayList<>();
    private final int most;
    private List<Reach> made;

    private record Part(Ground ground, Patches wet) {}

    /** @param most so many failures at most */
    Reaches(Waters waters, int most) {
        this.most = most;
        Map<Ground, Patches> wet = new IdentityHashMap<>();
        waters.flows().wet().flatMap(f -> f.wetFrame().stream()).forEach(c -> add(c, wet.computeIfAbsent(c.ground, g -> new Patches())));
        waters.grounds().stream().filter(g -> wet.containsKey(g) && !wet.get(g).isEmpty()).forEach(g -> parts.add(new Part(g, wet.get(g))));
        parts.forEach(p -> p.wet.trim());
    }

    /** For each number of defences and surface, where it is not dry. */
    synchronized List<Reach> all() {
        if (made == null) {
            made = IntStream.rangeClosed(0, most).boxed().flatMap(level -> parts.stream().map(p -> reach(level, p)))
                    .filter(r -> !r.where().isEmpty()).toList();
            parts.clear();
        }
        return made;
    }

    private static Reach reach(int defences, Part p) {
        return new Reach(defences, p.ground.surface(),
                Patchwork.regions(p.wet.at(defences)).stream().map(r -> r.mapped(p.ground::turned)).toList());
    }

    /** A patch stays wet until more water comes at a higher level; what is bare is wet as it is. */
    private void add(Cell c, Patches out) {
        List<Patch> wet = c.isOpen() ? List.of(Skyline.all(c)) : List.of();
        int since = 0;
        for (int level = 0; level <= most; level++) {
            if (!c.isOpen() && c.isWetAt(level)) {
                add(wet, since, level - 1, out);
                wet = Skyline.of(c, level);
                since = level;
            }
        }
        add(wet, since, most, out);
    }

    private static void add(List<Patch> wet, int first, int last, Patches out) {
        for (int i = 0; i < wet.size() && first <= last; i++) {
            out.add(wet.get(i), first, last);
        }
    }
}
