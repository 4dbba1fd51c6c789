package rainlap.rule.water;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Point;
import rainlap.rule.Evidence;
import rainlap.wall.Surface;
import rainlap.water.Arrival;

/** Gathers the lines along which water comes onto the frame into ways: one for each cause. */
final class Ways {
    /** Lines nearer than this belong together: 10 mm. */
    private static final long NEAR = 1_000;
    /** And those of one cause that lie in one line less than 300 mm apart: what parts them is wet from elsewhere. Our own choice. */
    private static final long IN_LINE = 30_000;

    private Ways() {}

    private record Cause(Surface surface, String told) {}

    /** What rules share. */
    private record Of(int defences) {}

    /** All ways of so many failures by which water comes onto the frame for the first time; of several at one place only the one told in the fewest steps. */
    static List<Way> of(Evidence e, int defences) {
        return e.shared().of(new Of(defences), () -> all(e, defences));
    }

    private static List<Way> all(Evidence e, int defences) {
        Map<Cause, List<Way>> byCause = new LinkedHashMap<>();
        for (Arrival a : e.trace().arrivals()) {
            if (a.defences() == defences && a.first() && !a.comesFromTheFrame()) {
                Way w = Way.of(a);
                byCause.computeIfAbsent(new Cause(a.surface(), w.told()), k -> new ArrayList<>()).add(w);
            }
        }
        List<Way> all = new ArrayList<>();
        byCause.values().forEach(ways -> gathered(ways).forEach(together -> all.add(joined(together))));
        all.sort(Comparator.comparingInt((Way w) -> w.path().size()).thenComparing(Way::lengthMm, Comparator.reverseOrder()));
        return atOnePlace(all);
    }

    /** Those of one cause that touch, or are joined by others that do. */
    private static List<List<Way>> gathered(List<Way> ways) {
        BoxTree near = new BoxTree(ways.stream().map(w -> drawnOut(box(w))).toList());
        boolean[] taken = new boolean[ways.size()];
        List<List<Way>> out = new ArrayList<>();
        for (int i = 0; i < taken.length; i++) {
            if (!taken[i]) {
                out.add(together(i, ways, near, taken).stream().sorted().map(ways::get).toList());
            }
        }
        return out;
    }

    private static List<Integer> together(int first, List<Way> ways, BoxTree near, boolean[] taken) {
        List<Integer> found = new ArrayList<>(List.of(first));
        taken[first] = true;
        for (int k = 0; k < found.size(); k++) {
            for (int i : near.meeting(box(ways.get(found.get(k))))) {
                if (!taken[i]) {
                    taken[i] = true;
                    found.add(i);
                }
            }
        }
        return found;
    }

    /** What meets all of them. */
    private static OptionalDouble together(List<Way> ways) {
        return ways.stream().flatMapToDouble(w -> w.litresPerHour().stream()).boxed()
                .reduce(Double::sum).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** The longest, drawn out over all that lie in one line with it. */
    private static Way joined(List<Way> ways) {
        Way longest = ways.stream().max(Comparator.comparingDouble(Way::lengthMm)).orElseThrow();
        Box line = box(longest);
        if (line.width() > 0 && line.height() > 0 || longest.where().size() != 2) {
            return longest;
        }
        Box all = ways.stream().map(Ways::box).filter(b -> line.width() > 0 ? b.minY() == line.minY() && b.maxY() == line.minY()
                : b.minX() == line.minX() && b.maxX() == line.minX()).reduce(line, Box::join);
        return new Way(longest.defences(), longest.surface(), List.of(new Point(all.minX(), all.minY()), new Point(all.maxX(), all.maxY())),
                longest.path(), together(ways));
    }

    private static List<Way> atOnePlace(List<Way> all) {
        Map<Surface, List<Way>> bySurface = new LinkedHashMap<>();
        all.forEach(w -> bySurface.computeIfAbsent(w.surface(), s -> new ArrayList<>()).add(w));
        Set<Way> kept = Collections.newSetFromMap(new IdentityHashMap<>());
        bySurface.values().forEach(ways -> keep(ways, kept));
        return all.stream().filter(kept::contains).toList();
    }

    /** Of ways on one surface: each reveal has places of its own, which are like those of every other. */
    private static void keep(List<Way> ways, Set<Way> kept) {
        BoxTree near = new BoxTree(ways.stream().map(w -> box(w).grow(NEAR)).toList());
        for (Way w : ways) {
            boolean[] told = {false};
            near.query(box(w), j -> told[0] |= kept.contains(ways.get(j)) && box(ways.get(j)).grow(NEAR).contains(box(w)));
            if (!told[0]) {
                kept.add(w);
            }
        }
    }

    private static Box drawnOut(Box line) {
        long x = line.height() == 0 ? IN_LINE : NEAR, y = line.width() == 0 ? IN_LINE : NEAR;
        return new Box(line.minX() - x, line.minY() - y, line.maxX() + x, line.maxY() + y);
    }

    private static Box box(Way w) {
        return Box.of(w.where());
    }
}
