package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class SvgWriterTest {

    @Test
    void oneUnitIsOnePrintedMillimetre() throws Exception {
        String svg = write(List.of());
        assertTrue(svg.contains("width=\"420mm\" height=\"297mm\" viewBox=\"0 0 420 297\""), svg);
    }

    @Test
    void marksBecomeShortElementsInTheirOrder() throws Exception {
        String svg = write(List.of(Polyline.line(0, 1.5, 10.0004, -2, Edge.of(Pen.NARROW_DASHED)),
                Area.filled(PaperRegion.of(new PaperBox(0, 0, 2, 1)), Tone.of("#eaf2f7"))));
        assertTrue(svg.contains("<path d=\"M0 1.5L10 -2\" fill=\"none\" stroke=\"#111\" stroke-width=\"0.25\""
                + " stroke-dasharray=\"1.6 0.8\"/>\n<path d=\"M0 0L2 0L2 1L0 1Z\" fill=\"#eaf2f7\"/>"), svg);
    }

    @Test
    void textFromAFileCannotBreakTheDrawing() throws Exception {
        String svg = write(List.of(Text.of(1, 2, "</text><script>\"&'\u0000\u0008\uD800 \t\n x", TextStyle.of(2.5)),
                Group.of("g\"<>", List.of()).withTitle("]]><x/>").withData("way", "\"><script>")));
        assertTrue(svg.contains("&lt;/text&gt;&lt;script&gt;\"&amp;'\uFFFD\uFFFD\uFFFD x</text>"), svg);
        assertEquals(-1, svg.indexOf("<script"), svg);
        javax.xml.parsers.DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder()
                .parse(new org.xml.sax.InputSource(new java.io.StringReader(svg)));
    }

    private static String write(List<Mark> marks) throws Exception {
        StringWriter out = new StringWriter();
        SvgWriter.write(new Sheet(SheetSize.A3, "a sheet", "en", marks), out);
        return out.toString();
    }
}
