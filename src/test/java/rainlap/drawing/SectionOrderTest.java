package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Sheet;
import rainlap.wall.Stage;

/** Sections are lettered worst first, and stand on the sheets in the order of their letters: sheet after sheet, row after row, from the left. */
class SectionOrderTest {

    /** One section, as drawn or as it should be where that stands by itself. */
    private record Cell(String letter, int weak, PaperBox box) {}

    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void theyReadInTheOrderOfTheirLetters(Shipped wall) {
        List<String> wrong = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            CheckResult result = wall.at(stage).result();
            for (Sheets.Paper paper : Sheets.Paper.values()) {
                List<Sheet> sheets = Drawn.of(result, paper);
                List<Cell> all = new ArrayList<>();
                sheets.forEach(s -> all.addAll(inRows(cells(s), stage + " " + paper + ", sheet " + (sheets.indexOf(s) + 1), wrong)));
                for (int k = 1; k < all.size(); k++) {
                    if (order(all.get(k - 1).letter()) > order(all.get(k).letter()) || all.get(k - 1).weak() > all.get(k).weak()) {
                        wrong.add(stage + " " + paper + ": " + all.get(k - 1).letter() + " before " + all.get(k).letter());
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static int order(String letter) {
        return letter.chars().reduce(0, (n, c) -> n * 100 + c);
    }

    /** In the order of letters each stands right of the one before, or a row further down. */
    private static List<Cell> inRows(List<Cell> cells, String where, List<String> wrong) {
        double above = Double.NEGATIVE_INFINITY;
        double lowest = above, left = above;
        for (Cell c : cells) {
            if (c.box().left() < left + 1) {
                above = lowest;
            }
            if (c.box().top() <= above) {
                wrong.add(where + ": " + c.letter() + " beside or above sections before it");
            }
            lowest = Math.max(lowest, c.box().top());
            left = c.box().left();
        }
        return cells;
    }

    private static List<Cell> cells(Sheet sheet) {
        List<Cell> out = new ArrayList<>();
        cells(sheet.marks(), out);
        out.sort(Comparator.comparingInt(c -> order(c.letter())));
        return out;
    }

    private static void cells(List<Mark> marks, List<Cell> out) {
        for (Mark m : marks) {
            if (m instanceof Group g && g.id().filter(id -> id.matches("(section|mended)-[A-Z]+")).isPresent()) {
                out.add(new Cell(g.id().get().replaceAll(".*-", ""), Integer.parseInt(g.data().get(0).value()), g.box()));
            } else if (m instanceof Group g) {
                cells(g.marks(), out);
            }
        }
    }

    /** A few lines of the table's notes find room on an earlier sheet. */
    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void noSheetHoldsButTheRestOfTheNotes(Shipped wall) {
        for (Sheets.Paper paper : Sheets.Paper.values()) {
            List<Sheet> sheets = Drawn.of(wall.result(), paper);
            List<String> last = SheetWords.of(List.of(sheets.get(sheets.size() - 1)));
            assertFalse(last.contains("Notes to the table, continued") && !last.contains("Sections, worst first"), paper + ": only notes go on to sheet " + sheets.size());
        }
    }
}
