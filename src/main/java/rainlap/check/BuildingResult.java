package rainlap.check;

import java.util.List;
import rainlap.building.Building;
import rainlap.building.Unfolded;

/**
 * What the check of a building found.
 *
 * @param walls in the building's order
 */
public record BuildingResult(Building building, List<OneWall> walls) {
    public BuildingResult {
        walls = List.copyOf(walls);
    }

    /**
     * One wall.
     *
     * @param result its weak points, numbered by their rank in the whole building
     */
    public record OneWall(Building.Wall wall, Unfolded unfolded, CheckResult result) {}

    /** A weak point and the id of the wall it lies on. */
    public record Ranking(String wall, WeakPoint point) {}

    /** Those of all walls in order of rank. */
    public List<Ranking> weakPoints() {
        return walls.stream().flatMap(w -> w.result().weakPoints().stream().map(p -> new Ranking(w.wall().id(), p)))
                .sorted(java.util.Comparator.comparingInt(r -> r.point().number())).toList();
    }
}
