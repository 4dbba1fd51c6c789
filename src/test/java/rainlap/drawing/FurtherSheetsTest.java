package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Sheet;

/** Sheets behind the elevation: their title blocks tell their own scales, and what is drawn on them stands in the legend before them. */
class FurtherSheetsTest {
    private static final Pattern SCALE = Pattern.compile("^1:([0-9]+),.*");

    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void tellTheirOwnScalesOnly(Shipped wall) {
        List<String> wrong = new ArrayList<>();
        for (Sheets.Paper paper : Sheets.Paper.values()) {
            for (Sheet sheet : Drawn.of(wall.result(), paper)) {
                List<String> sections = SheetWords.in(sheet, "further-sections"), block = SheetWords.in(sheet, "title-block");
                String scales = sections.stream().map(SCALE::matcher).filter(Matcher::matches).map(m -> Integer.parseInt(m.group(1)))
                        .collect(Collectors.toCollection(TreeSet::new)).stream().map(s -> "1:" + s).collect(Collectors.joining(", "));
                if (!sections.isEmpty() && !block.contains(scales)) {
                    wrong.add(paper + ": " + scales + " / " + block);
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void showNoWayThatTheLegendLacks(Shipped wall) {
        for (Sheets.Paper paper : Sheets.Paper.values()) {
            List<Sheet> sheets = Drawn.of(wall.result(), paper);
            List<String> legend = sheets.stream().flatMap(s -> SheetWords.in(s, "legend").stream()).toList();
            List<Mark> all = sheets.stream().flatMap(s -> s.marks().stream()).filter(m -> !(m instanceof Group g && g.id().filter("legend"::equals).isPresent())).toList();
            assertEquals(WaterSigns.areIn(all, WaterSigns.FREE), legend.contains("water's way"), paper + " water's way");
            assertEquals(WaterSigns.areIn(all, WaterSigns.FAILED), legend.contains("water's way after a failure"), paper + " after a failure");
        }
    }

    /** Where no row is left the table's heading would stand over nothing; and what goes on elsewhere begins with a sentence. */
    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void noHeadingStandsOverNoRowsAndNoNoteIsTorn(Shipped wall) {
        for (Sheets.Paper paper : Sheets.Paper.values()) {
            for (Sheet sheet : Drawn.of(wall.result(), paper)) {
                for (String part : List.of("findings", "findings-2", "findings-notes")) {
                    List<String> words = SheetWords.in(sheet, part);
                    if (words.contains("Weak points, continued")) {
                        assertTrue(words.contains("Rule, pieces, place"), paper + " " + words);
                    }
                    if (!words.isEmpty() && words.get(0).startsWith("Notes to the table")) {
                        assertTrue(words.get(1).matches("(\\p{Lu}|l/h:).*"), paper + " " + words);
                    }
                }
            }
        }
    }
}
