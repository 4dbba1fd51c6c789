package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnsTest {
    @Test void aLineOfExactlyTheWidthIsNotBroken() {
        assertEquals(List.of("abc def"), Columns.wrap("abc def", 7));
        assertEquals(List.of("abc", "def"), Columns.wrap("abc def", 6));
        assertEquals(List.of("bare,", "670 × 1.1"), Columns.wrap("bare, 670 × 1.1", 10));
    }

    @Test void aWordThatIsTooLongIsCut() {
        assertEquals(List.of("a", "bcde", "fg h"), Columns.wrap("a bcdefg h", 4));
    }

    @Test void nothingIsOneEmptyLine() {
        assertEquals(List.of(""), Columns.wrap("", 5));
        assertEquals(List.of(""), Columns.wrap("   ", 5));
    }

    @Test void laterLinesHangBelowTheFirst() {
        assertEquals(List.of("to do  lift", "       it"), Columns.hanging("to do  ", "lift it", 11));
    }

    /** Half a figure reads as another. */
    @Test void aFigureIsNeverBroken() {
        Columns columns = new Columns(List.of(new Columns.Column("l/h", 6, true), new Columns.Column("text", 5, false)));
        columns.add(List.of("2100000", "a"));
        assertEquals(List.of("2100000  a"), columns.row(0));
    }

    @Test void cellsWrapInTheirColumn() {
        Columns columns = new Columns(List.of(new Columns.Column("n", 3, true), new Columns.Column("text", 5, false),
                new Columns.Column("end", 9, false)));
        columns.add(List.of("1", "ab cd ef", "x"));
        columns.add(List.of("22", "a", "y"));
        assertEquals(List.of(" n  text   end"), columns.heading());
        assertEquals(List.of(" 1  ab cd  x", "    ef"), columns.row(0));
        assertEquals(List.of("22  a      y"), columns.row(1));
        assertEquals(4, columns.indent(1));
    }
}
