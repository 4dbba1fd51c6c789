package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

class BidiLineTest {
    /** "Hut" in Arabic letters. */
    private static final String HUT = "\u0643\u0648\u062e";

    @Test
    void readsFromRightToLeftWhereAllLettersDo() {
        assertEquals(List.of(new BidiLine.Part(" \u2026", true), new BidiLine.Part("7", false), new BidiLine.Part(HUT + " ", true)), BidiLine.visual(HUT + " 7 \u2026"));
    }

    @Test
    void aSentenceOfOursStaysFromLeftToRight() {
        String says = "M2 over " + HUT + " by 100";
        assertEquals(List.of(new BidiLine.Part("M2 over ", false), new BidiLine.Part(HUT, true), new BidiLine.Part(" by 100", false)), BidiLine.visual(says));
        assertEquals(says, BidiLine.marked(says));
    }

    @Test
    void anSvgIsToldTheDirection() throws IOException {
        StringWriter out = new StringWriter();
        SvgWriter.write(sheet(HUT + " \u2026"), out);
        assertTrue(out.toString().contains(">\u200f" + HUT + " \u2026\u200f</text>"));
        assertFalse(BidiLine.isIn("Estuary hut, \u00d850 \u2026"));
    }

    /** Lam and alef are joined to one narrow letter: so letters are shaped. */
    @Test
    void aPdfJoinsLetters() throws IOException {
        List<Integer> joined = inked("\u0644\u0627"), apart = inked("\u0644 \u0627");
        assertTrue(joined.get(joined.size() - 1) - joined.get(0) < 0.8 * (apart.get(apart.size() - 1) - apart.get(0)), joined + " " + apart);
    }

    /** Alef, a mere stroke, before a word: it stands on the right. */
    @Test
    void aPdfBeginsOnTheRight() throws IOException {
        List<Integer> columns = inked("\u0627 " + HUT);
        int widest = 1;
        for (int i = 2; i < columns.size(); i++) {
            widest = columns.get(i) - columns.get(i - 1) > columns.get(widest) - columns.get(widest - 1) ? i : widest;
        }
        assertTrue(columns.get(columns.size() - 1) - columns.get(widest) < columns.get(widest - 1) - columns.get(0), columns.toString());
    }

    private static Sheet sheet(String text) {
        return new Sheet(SheetSize.A4, "", "en", List.of(Text.of(50, 100, text, TextStyle.of(20))));
    }

    /** Columns of the page with ink in them. */
    private static List<Integer> inked(String text) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(List.of(sheet(text)), out);
        try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, 50);
            return IntStream.range(0, image.getWidth()).filter(x -> IntStream.range(0, image.getHeight()).anyMatch(y -> (image.getRGB(x, y) & 0xFF) < 128)).boxed().toList();
        }
    }
}
