package rainlap.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes sheets as the pages of one PDF, from the same marks as {@link SvgWriter}: one unit is one printed millimetre, texts stay texts and
 * their font is embedded. Same sheets, same bytes: no date, and an identification that is always the same.
 */
public final class PdfWriter {
    static final float POINTS_PER_MM = 72 / 25.4f;
    /** Whom a file says it was made by, by which we know it again. */
    private static final String PRODUCER = "Rainlap";
    /** Warns that our subsets hold no glyph names, which nobody asks for. Held here, else its level would be forgotten. */
    private static final Logger FONT_READER = Logger.getLogger("org.apache.fontbox");

    static {
        FONT_READER.setLevel(Level.SEVERE);
    }

    private PdfWriter() {}

    /** Writes all sheets, one page each; the stream stays open. */
    public static void write(List<Sheet> sheets, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(0L);
            document.getDocumentInformation().setTitle(PrintableText.of(sheets.get(0).title()));
            document.getDocumentInformation().setProducer(PRODUCER);
            document.getDocumentCatalog().setLanguage(sheets.get(0).language());
            Map<Weight, PDType0Font> fonts = new EnumMap<>(Weight.class);
            List<Mark> all = sheets.stream().flatMap(s -> s.marks().stream()).toList();
            for (Map.Entry<Weight, byte[]> font : EmbeddedFonts.files(all).entrySet()) {
                fonts.put(font.getKey(), PDType0Font.load(document, new ByteArrayInputStream(font.getValue()), true));
            }
            for (Sheet sheet : sheets) {
                page(document, sheet, fonts);
            }
            document.save(out);
        }
    }

    /** Whether a PDF says that it was made here; one that cannot be read was not. */
    public static boolean isOurs(Path file) {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return PRODUCER.equals(document.getDocumentInformation().getProducer());
        } catch (IOException e) {
            return false;
        }
    }

    private static void page(PDDocument document, Sheet sheet, Map<Weight, PDType0Font> fonts) throws IOException {
        float width = (float) sheet.size().width() * POINTS_PER_MM, height = (float) sheet.size().height() * POINTS_PER_MM;
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.transform(new Matrix(POINTS_PER_MM, 0, 0, -POINTS_PER_MM, 0, height));
            new PdfMarks(content, fonts).writeAll(sheet.marks());
        }
    }
}
