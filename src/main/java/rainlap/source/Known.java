package rainlap.source;

import java.util.Arrays;
import java.util.Optional;

/** How well a number is known, from read in the document itself to nobody's in particular. */
public enum Known {
    /** The words were read in the document, or in an official reproduction of it. */
    PUBLISHED("published"),
    /** The value was read in another text that attributes it to the document. */
    PUBLISHED_SECONDARY("published (secondary)"),
    /** Known but not read: an editable default, never a value to test against. */
    FROM_MEMORY("from memory"),
    /** Our own arithmetic or choice from published values; the note gives the way. */
    DERIVED("derived"),
    /** What builders do; no document behind it was read. */
    COMMON_PRACTICE("common practice (no source)");

    private final String text;

    Known(String text) {
        this.text = text;
    }

    /** The words used in data files, tables and on the sheet. */
    public String text() {
        return text;
    }

    /** The value whose {@link #text()} is exactly {@code text}. */
    public static Optional<Known> find(String text) {
        return Arrays.stream(values()).filter(k -> k.text.equals(text)).findFirst();
    }
}
