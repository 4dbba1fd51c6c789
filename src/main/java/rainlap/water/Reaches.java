package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rainlap.stack.Crew;

/** The wet frame: kept as patches, made into polygons when somebody asks for them. */
final class Reaches {
    private final List<Part> parts = new ArrayList<>();
    private final int most;
    private List<Reach> made;

    /** Of one surface, as several threads found them. */
    private record Part(Ground ground, List<Patches> wet) {
        List<Patch> at(int defences) {
            return wet.stream().flatMap(p -> p.at(defences).stream()).toList();
        }
    }

    /** @param most so many failures at most */
    Reaches(List<Ground> grounds, int most, Crew crew) {
        this.most = most;
        Ground wall = grounds.get(0);
        parts.add(new Part(wall, crew.inRuns(wall.cells, this::patches)));
        parts.addAll(crew.inRuns(grounds.subList(1, grounds.size()), run -> run.stream().map(g -> new Part(g, List.of(patches(g.cells)))).toList())
                .stream().flatMap(List::stream).toList());
        parts.removeIf(p -> p.wet.stream().allMatch(Patches::isEmpty));
    }

    private Patches patches(List<Cell> cells) {
        Patches wet = new Patches();
        cells.stream().filter(Cell::isOnFrame).forEach(c -> add(c, wet));
        wet.trim();
        return wet;
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
                Patchwork.regions(p.at(defences)).stream().map(r -> Ground.mapped(r, p.ground::turned)).toList());
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
