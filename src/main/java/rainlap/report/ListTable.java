package rainlap.report;

import java.util.List;
import java.util.function.Function;

/**
 * One table of the lists.
 *
 * @param name what its sheet is called
 */
record ListTable(String name, List<Heading> headings, List<List<Cell>> rows) {
    ListTable {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /**
     * The head of a column.
     *
     * @param width in characters, where the list is shown as a sheet
     */
    record Heading(String text, int width) {}

    /** A column: its head, and what it says of a row. */
    record Column<T>(String heading, int width, Function<T, Cell> cell) {}

    static <T> ListTable of(String name, List<Column<T>> columns, List<T> rows) {
        return new ListTable(name, columns.stream().map(c -> new Heading(c.heading(), c.width())).toList(),
                rows.stream().map(r -> columns.stream().map(c -> c.cell().apply(r)).toList()).toList());
    }

}
