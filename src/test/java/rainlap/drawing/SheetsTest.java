package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SvgWriter;
import rainlap.wall.Stage;

class SheetsTest {

    @Test
    void theSampleIsSoundOnPaper() {
        for (Sheet s : Sheets.of(SampleWall.result(), SampleWall.TITLE)) {
            assertEquals(List.of(), SheetCheck.of(s));
        }
    }

    @Test
    void sameInputSameBytes() throws IOException {
        assertEquals(svg(), svg());
        assertTrue(svg().contains("Estuary hut, north side"));
    }

    @Test
    void withoutWeakPointsOneLineSaysWhatWasChecked() throws IOException {
        CheckResult clean = new CheckResult(SampleWall.evidence(Stage.WRAP), List.of(), Map.of("reverse-lap", 3, "butt-joint", 2), Map.of(),
                List.of(), List.of());
        List<Sheet> sheets = Sheets.of(clean, TitleBlock.BLANK);
        assertEquals(1, sheets.size());
        String svg = svg(sheets);
        assertTrue(svg.contains("Looked at and as asked: 5 places, by butt-joint, reverse-lap."));
        assertTrue(svg.contains("Not checked, 0:"));
        assertTrue(svg.contains("1 / 1"));
    }

    @Test
    void aBlankTitleBlockStaysBlank() throws IOException {
        String svg = svg(Sheets.of(SampleWall.result(), TitleBlock.BLANK));
        assertTrue(svg.contains("Date of issue"));
        assertFalse(svg.contains("20" + "25-"), "a date nobody gave");
    }

    @Test
    void labelsNeverRoundAShortLengthUpToWhatIsAsked() {
        assertEquals("149.99", LabelText.number(149.99));
        assertEquals("150", LabelText.number(150));
    }

    private static String svg() throws IOException {
        return svg(Sheets.of(SampleWall.result(), SampleWall.TITLE));
    }

    private static String svg(List<Sheet> sheets) throws IOException {
        StringWriter out = new StringWriter();
        for (Sheet s : sheets) {
            SvgWriter.write(s, out);
        }
        return out.toString();
    }
}
