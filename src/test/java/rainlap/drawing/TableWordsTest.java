package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.TreeSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rainlap.paper.PaperBox;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;

/** The narrow columns of the table are wide enough for every word of every rule, on the narrowest table there is: a part of an A3 sheet. */
class TableWordsTest {
    private static final TableColumns NARROWEST = new TableColumns(PaperBox.ofSize(0, 0, 171, 100));

    @Test void noWordIsBroken() {
        Set<String> broken = new TreeSet<>();
        EveryWeakPointHasItsSectionTest.everything((name, result) -> result.weakPoints().forEach(p -> {
            check(p.finding().rule() + " drawn: ", p.finding().drawn(), Looks.STRONG, 1, broken);
            check(p.finding().rule() + " asked: ", p.finding().asked(), Looks.PLAIN, 2, broken);
        }));
        assertEquals(Set.of(), broken);
    }

    private static void check(String where, String text, TextStyle style, int column, Set<String> broken) {
        for (String word : text.split(" ")) {
            if (TextMetrics.width(word, style) > NARROWEST.width(column)) {
                broken.add(where + word + " " + TextMetrics.width(word, style) + " > " + NARROWEST.width(column));
            }
        }
    }
}
