package rainlap.source;

import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Who says a number.
 *
 * @param document the document's name; never blank
 * @param edition its year or issue; empty where the text that was read does not print one, or where there is no document
 * @param clause the clause or page; empty only where there is none
 * @param known how well it is known
 */
public record Source(String document, String edition, String clause, Known known) {
    private static final Source COMMON_PRACTICE = new Source("Common practice", "", "", Known.COMMON_PRACTICE);

    /** @throws IllegalArgumentException if the document is blank */
    public Source {
        Objects.requireNonNull(edition, "edition");
        Objects.requireNonNull(clause, "clause");
        if (document.isBlank()) {
            throw new IllegalArgumentException("a source needs the name of its document");
        }
    }

    /** What builders do, with no document behind it. */
    public static Source commonPractice() {
        return COMMON_PRACTICE;
    }

    /** One line for a table: {@code ABCB Housing Provisions 2022, 7.5.2(3)(c), published}. */
    public String text() {
        if (known == Known.COMMON_PRACTICE) {
            return known.text();
        }
        String titled = edition.isBlank() ? document : document + " " + edition;
        return Stream.of(titled, clause, known.text()).filter(s -> !s.isBlank()).collect(Collectors.joining(", "));
    }
}
