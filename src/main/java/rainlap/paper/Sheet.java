package rainlap.paper;

import java.util.List;

/**
 * A sheet to write out.
 *
 * @param title plain text, the name of the document
 * @param language tag of the texts' language, such as {@code en}
 * @param marks in painting order
 */
public record Sheet(SheetSize size, String title, String language, List<Mark> marks) {

    public Sheet {
        marks = List.copyOf(marks);
        if (!language.matches("[A-Za-z0-9-]{1,35}")) {
            throw new IllegalArgumentException("not a language tag: " + language);
        }
    }
}
