package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import rainlap.building.Building.Wall;
import rainlap.check.BuildingResult;

/**
 * What goes round one corner of a building.
 *
 * @param left id of the wall to its left
 * @param right id of the wall to its right
 * @param together pieces that both walls draw, as the left wall and then the right one calls each
 * @param ontoLeft pieces of the right wall that come round onto the left one, each as that wall calls it
 * @param ontoRight pieces of the left wall that come round onto the right one
 */
record RoundCorner(String left, String right, List<List<String>> together, List<String> ontoLeft, List<String> ontoRight) {

    /** From the first wall on. */
    static List<RoundCorner> all(BuildingResult result) {
        List<RoundCorner> out = new ArrayList<>();
        for (int i = 0; i < result.walls().size(); i++) {
            OptionalInt next = result.building().rightOf(i);
            if (next.isPresent()) {
                out.add(of(result.walls().get(i), result.walls().get(next.getAsInt())));
            }
        }
        return out;
    }

    private static RoundCorner of(BuildingResult.OneWall left, BuildingResult.OneWall right) {
        Wall a = left.wall(), b = right.wall();
        List<List<String>> together = new ArrayList<>();
        left.unfolded().together().forEach(all -> all.stream().skip(1).filter(id -> id.startsWith(b.name("")))
                .forEach(id -> together.add(List.of(all.get(0), id.substring(b.name("").length())))));
        return new RoundCorner(a.id(), b.id(), together, from(left, b), from(right, a));
    }

    /** Only what this stage looks at. */
    private static List<String> from(BuildingResult.OneWall onto, Wall wall) {
        Set<String> seen = wall.elevation().pieces().stream().filter(p -> onto.result().evidence().stage().sees(p.material().layer()))
                .map(p -> wall.name(p.id())).collect(Collectors.toSet());
        return onto.unfolded().round().stream().filter(seen::contains).map(id -> id.substring(wall.name("").length())).toList();
    }

    boolean isNothing() {
        return together.isEmpty() && ontoLeft.isEmpty() && ontoRight.isEmpty();
    }
}
