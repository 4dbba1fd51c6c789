package rainlap.practice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rainlap.source.Known;

/**
 * Something on which documents differ. The differences are kept, not averaged: each practice has its own value.
 *
 * @param about what it is on, in a few words
 * @param limit the limit it is about, where the practices themselves say it all; then {@code says} is theirs
 * @param says who says what
 * @param comment what it means for a check
 */
public record Disagreement(String about, Optional<Limit> limit, List<Says> says, String comment) {
    /**
     * One side of it.
     *
     * @param who document and clause, or practice
     * @param what it says, in a few words; lengths in mm
     * @param known how well that is known
     */
    public record Says(String who, String what, Known known) {
        public Says {
            if (who.isBlank() || what.isBlank()) {
                throw new IllegalArgumentException("somebody must say something");
            }
        }
    }

    /** @throws IllegalArgumentException if fewer than two say something, or nothing is said about it */
    public Disagreement {
        says = List.copyOf(says);
        if (about.isBlank() || comment.isBlank() || says.size() < 2) {
            throw new IllegalArgumentException("it takes two to disagree: " + about);
        }
    }

    /** The practices that speak on a limit, the least value first. */
    static Disagreement of(String about, Limit limit, String comment, List<Practice> practices) {
        List<Says> says = practices.stream().filter(p -> !p.id().equals(Practices.COMMON) && !p.isSilentOn(limit))
                .sorted(Comparator.comparingDouble(p -> p.get(limit).value()))
                .map(p -> new Says(p.id(), p.get(limit).text(), p.get(limit).source().known())).toList();
        return new Disagreement(about, Optional.of(limit), says, comment);
    }
}
