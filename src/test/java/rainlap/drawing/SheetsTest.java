package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SvgWriter;

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

    private static String svg() throws IOException {
        StringWriter out = new StringWriter();
        for (Sheet s : Sheets.of(SampleWall.result(), SampleWall.TITLE)) {
            SvgWriter.write(s, out);
        }
        return out.toString();
    }
}
