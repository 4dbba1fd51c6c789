package rainlap.file;

import java.util.List;
import java.util.Optional;
import rainlap.practice.Practice;

/**
 * What came of reading a practice of the user's own: a practice, or problems, never both.
 *
 * @param problems sorted by place
 */
public record PracticeReading(Optional<Practice> practice, List<Problem> problems) {
    public PracticeReading {
        problems = List.copyOf(problems);
        if (practice.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a reading gives a practice or problems");
        }
    }
}
