package rainlap.file;

import java.util.List;
import java.util.Optional;
import rainlap.wall.Elevation;

/**
 * What came of reading one file: an elevation, or problems, never both.
 *
 * @param file the name to show
 * @param problems sorted by place
 * @param sha256 of the file's bytes, in lower-case hexadecimal; empty where they could not be read
 * @param places where things stand in the file
 */
public record Reading(String file, Optional<Elevation> elevation, List<Problem> problems, String sha256, Places places) {
    public Reading {
        problems = List.copyOf(problems);
        if (elevation.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a reading gives an elevation or problems");
        }
    }
}
