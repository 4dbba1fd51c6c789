package rainlap.file;

import java.util.List;
import java.util.Optional;
import rainlap.building.Building;

/**
 * What came of reading a building file and the elevations it names: a building, or problems, never both.
 *
 * @param problems of the building file sorted by place, then those of each elevation
 * @param elevations the elevations' files in order
 */
public record BuildingReading(Optional<Building> building, List<Problem> problems, List<Reading> elevations) {
    public BuildingReading {
        problems = List.copyOf(problems);
        elevations = List.copyOf(elevations);
        if (building.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a reading gives a building or problems");
        }
    }
}
