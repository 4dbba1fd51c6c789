package rainlap.water;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.source.Source;

/**
 * Something taken for granted in a figure of ours, to be printed beside it.
 *
 * @param what what it is: "air density"
 * @param figure its value with unit, as text: "1.25 kg/m3"
 * @param source who says so; empty for what the elevation itself states
 * @param note what to know about it; may be empty
 */
public record Assumption(String what, String figure, Optional<Source> source, String note) {
    /** @throws IllegalArgumentException if it has no name or no figure */
    public Assumption {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(note, "note");
        if (what.isBlank() || figure.isBlank()) {
            throw new IllegalArgumentException("an assumption needs a name and a figure: " + what + ", " + figure);
        }
    }

    static Assumption of(String what, String figure, Source source, String note) {
        return new Assumption(what, figure, Optional.of(source), note);
    }

    /** What the elevation states. */
    static Assumption stated(String what, String figure, String note) {
        return new Assumption(what, figure, Optional.empty(), note);
    }

    /** One line: {@code air density 1.25 kg/m3 (EN 1991-1-4, recommended value, published (secondary)). Note.} */
    public String text() {
        String who = source.map(Source::text).orElse("as the elevation states");
        return Stream.of(what + " " + figure + " (" + who + ").", note).filter(s -> !s.isBlank()).collect(Collectors.joining(" "));
    }
}
