package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

class PdfWriterTest {
    private static final int DPI = 127;
    private static final double PIXELS_PER_MM = DPI / 25.4;

    @Test void theScaleIsTrue() throws IOException {
        Area block = Area.filled(PaperRegion.of(new PaperBox(100, 50, 280, 80)), Tone.of("#000000"));
        for (SheetSize size : SheetSize.values()) {
            try (PDDocument pdf = read(new Sheet(size, "t", "en", List.of(block)))) {
                assertEquals(size.width(), pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.001);
                assertEquals(size.height(), pdf.getPage(0).getMediaBox().getHeight() / 72 * 25.4, 0.001);
            }
        }
        BufferedImage picture = paint(new Sheet(SheetSize.A3, "t", "en", List.of(block)));
        assertEquals(0xFFFFFF, rgb(picture, 99.7, 60));
        assertEquals(0x000000, rgb(picture, 100.3, 60));
        assertEquals(0x000000, rgb(picture, 279.7, 79.7));
        assertEquals(0xFFFFFF, rgb(picture, 280.3, 80.3));
    }

    /** Painted by two programs that have nothing in common: the PDF by PDFBox, the SVG by Batik. */
    @Test void itShowsWhatTheSvgShows() throws IOException {
        BufferedImage pdf = paint(SampleSheet.of()), svg = svg(SampleSheet.of());
        int differing = 0;
        for (int y = 0; y < svg.getHeight(); y++) {
            for (int x = 0; x < svg.getWidth(); x++) {
                differing += Math.abs(grey(pdf.getRGB(x, y)) - grey(svg.getRGB(x, y))) > 128 ? 1 : 0;
            }
        }
        assertTrue(differing < 3e-4 * svg.getWidth() * svg.getHeight(), differing + " pixels differ");
        Sheet less = new Sheet(SheetSize.A3, "t", "en", SampleSheet.of().marks().subList(0, 2));
        assertTrue(Math.abs(sum(paint(less)) - sum(pdf)) > 1e-3 * svg.getWidth() * svg.getHeight(), "what is left out shows");
    }

    private static int sum(BufferedImage image) {
        int dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark += grey(image.getRGB(x, y)) < 128 ? 1 : 0;
            }
        }
        return dark;
    }

    /** Each glyph of each text begins where it was measured, in the embedded font; letters are not joined. */
    @Test void textsAreTextsWhereTheyWereMeasured() throws IOException {
        for (Weight weight : Weight.values()) {
            for (Anchor anchor : Anchor.values()) {
                Text text = Text.of(150, 100, "flashing \u2212450 fits: AV To 1:20", TextStyle.of(7).with(weight).with(anchor));
                List<TextPosition> glyphs = glyphs(new Sheet(SheetSize.A3, "t", "en", List.of(text)));
                assertEquals(text.text(), String.join("", glyphs.stream().map(TextPosition::getUnicode).toList()));
                double x = text.box().left();
                for (int i = 0; i < glyphs.size(); i++) {
                    double before = TextMetrics.width("|" + text.text().substring(0, i) + "|", text.style()) - 2 * TextMetrics.width("|", text.style());
                    assertEquals(x + before, glyphs.get(i).getXDirAdj() / 72 * 25.4, 0.02, text.text().substring(i));
                    assertEquals(100, glyphs.get(i).getYDirAdj() / 72 * 25.4, 0.02);
                    assertTrue(glyphs.get(i).getFont().isEmbedded() && glyphs.get(i).getFont().getName().contains(Typeface.FAMILY.replace(" ", "")));
                }
            }
        }
    }

    /** All texts of a sheet, each once, though some have a halo; not the letters that the typeface lacks. */
    @Test void everyTextOfASheetCanBeSelected() throws IOException {
        String found = String.join("", glyphs(SampleSheet.of()).stream().map(TextPosition::getUnicode).toList());
        String drawn = Shown.of(String.join("", texts(SampleSheet.of().marks()).map(Text::text).toList()));
        String lacking = TextMetrics.lacks(drawn);
        assertEquals(drawn.codePoints().filter(c -> lacking.indexOf(c) < 0).mapToObj(Character::toString).collect(Collectors.joining()), found);
    }

    private static Stream<Text> texts(List<Mark> marks) {
        return marks.stream().flatMap(m -> m instanceof Text t ? Stream.of(t) : m instanceof Group g ? texts(g.marks())
                : m instanceof Clip c ? texts(c.marks()) : Stream.of());
    }

    @Test void lettersTheTypefaceLacksAreNotLeftOut() throws IOException {
        BufferedImage with = paint(new Sheet(SheetSize.A3, "t", "en", List.of(Text.of(50, 100, "A\u0416B", TextStyle.of(7)))));
        double left = 50 + TextMetrics.width("A", TextStyle.of(7));
        boolean ink = false;
        for (double x = left + 0.3; x < left + 7; x += 0.1) {
            ink |= rgb(with, x, 97) != 0xFFFFFF;
        }
        assertTrue(ink);
    }

    /** U+F8FE is for private use: no font has it. */
    @Test void whatNoFontHasIsAQuestionMarkAndNamed() throws IOException {
        Sheet sheet = new Sheet(SheetSize.A3, "t", "en", List.of(Text.of(50, 100, "A\uF8FEB", TextStyle.of(7))));
        assertEquals("A?B", String.join("", glyphs(sheet).stream().map(TextPosition::getUnicode).toList()));
        assertEquals("\uF8FE", Shown.lacking(List.of(sheet)));
        assertEquals("", Shown.lacking(List.of(new Sheet(SheetSize.A3, "t", "en", List.of(Text.of(50, 100, "A \u00D7 B", TextStyle.of(7)))))));
    }

    @Test void sameSheetsSameBytes() throws IOException {
        List<Sheet> sheets = List.of(SampleSheet.of(), new Sheet(SheetSize.A4, "second", "en", List.of(Text.of(30, 30, "second", TextStyle.of(5)))));
        assertArrayEquals(bytes(sheets), bytes(sheets));
        try (PDDocument pdf = Loader.loadPDF(bytes(sheets))) {
            assertEquals(2, pdf.getNumberOfPages());
            assertEquals("Sample sheet", pdf.getDocumentInformation().getTitle());
        }
    }

    private static byte[] bytes(List<Sheet> sheets) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(sheets, out);
        return out.toByteArray();
    }

    private static PDDocument read(Sheet sheet) throws IOException {
        return Loader.loadPDF(bytes(List.of(sheet)));
    }

    private static BufferedImage paint(Sheet sheet) throws IOException {
        try (PDDocument pdf = read(sheet)) {
            return new PDFRenderer(pdf).renderImageWithDPI(0, DPI);
        }
    }

    private static BufferedImage svg(Sheet sheet) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PngWriter.write(sheet, DPI, out);
        return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
    }

    private static List<TextPosition> glyphs(Sheet sheet) throws IOException {
        List<TextPosition> found = new ArrayList<>();
        try (PDDocument pdf = read(sheet)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition glyph) {
                    found.add(glyph);
                }
            }.getText(pdf);
        }
        return found;
    }

    private static int rgb(BufferedImage picture, double xMm, double yMm) {
        return picture.getRGB((int) (xMm * PIXELS_PER_MM), (int) (yMm * PIXELS_PER_MM)) & 0xFFFFFF;
    }

    private static int grey(int rgb) {
        return ((rgb >> 16 & 0xFF) + (rgb >> 8 & 0xFF) + (rgb & 0xFF)) / 3;
    }
}
