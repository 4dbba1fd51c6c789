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
 * @param row the row, or rows separated by {@code ", "}, of the project's page of published values that the number was taken
 *     from, or after the word "physics" those of its page on the physics of rain; empty only for common practice and for values from memory
 */
public record Source(String document, String edition, String clause, Known known, String row) {
    private static final Source COMMON_PRACTICE = new Source("Common practice", "", "", Known.COMMON_PRACTICE, "");

    /** @throws IllegalArgumentException if the document is blank, or a number that was read names no row */
    public Source {
        Objects.requireNonNull(edition, "edition");
        Objects.requireNonNull(clause, "clause");
        if (document.isBlank()) {
            throw new IllegalArgumentException("a source needs the name of its document");
        }
        boolean needsRow = known != Known.COMMON_PRACTICE && known != Known.FROM_MEMORY;
        if (needsRow && row.isBlank()) {
            throw new IllegalArgumentException("a " + known.text() + " value needs the row it was taken from: " + document);
        }
        if (known == Known.COMMON_PRACTICE && !row.isBlank()) {
            throw new IllegalArgumentException("common practice has no published row, yet row " + row + " is given");
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
