package rainlap.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Tables as the sheets of one workbook (Office Open XML): values only, no formula; the headings stay in view and repeat on paper, text is
 * wrapped, and a cell of text is text to the spreadsheet, whatever it looks like.
 *
 * <p>The library writes the time of the run into the archive and into the document's properties, so both are written again without it:
 * entries in a fixed order at a fixed time, and properties that state no date.
 */
final class Xlsx {
    /** The archive's comment, by which it is known again; a spreadsheet that saves the workbook drops it. */
    static final String MARK = "written by Rainlap";

    private static final String CONTENT_TYPES = "[Content_Types].xml", CORE = "docProps/core.xml";
    private static final String CORE_TEXT = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
            + "<cp:coreProperties xmlns:cp=\"http://schemas.openxmlformats.org/package/2006/metadata/core-properties\""
            + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\"><dc:creator>Rainlap</dc:creator></cp:coreProperties>\n";
    /** Near the first that an archive can state; for the very first the JDK adds a time of the machine's own zone. */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 2, 1, 0, 0);
    /** More characters than this no cell holds. */
    private static final int MOST = 32_767;
    private static final String CUT = " … cut here: a cell holds no more, the findings file has all of it";

    private Xlsx() {}

    static void write(List<ListTable> tables, OutputStream out) throws IOException {
        Path raw = Files.createTempFile("rainlap", ".xlsx");
        try {
            try (OutputStream first = Files.newOutputStream(raw); Workbook book = new Workbook(first, "Rainlap", "1.0")) {
                tables.forEach(t -> fill(book.newWorksheet(t.name()), t));
            }
            again(raw, out);
        } finally {
            Files.deleteIfExists(raw);
        }
    }

    private static void fill(Worksheet sheet, ListTable table) {
        int columns = table.headings().size();
        for (int c = 0; c < columns; c++) {
            sheet.width(c, table.headings().get(c).width());
            sheet.value(0, c, table.headings().get(c).text());
            sheet.style(0, c).bold().wrapText(true).verticalAlignment("top").fillColor("E4E7EA").set();
        }
        for (int r = 0; r < table.rows().size(); r++) {
            for (int c = 0; c < columns; c++) {
                fill(sheet, r + 1, c, table.rows().get(r).get(c));
            }
        }
        sheet.freezePane(0, 1);
        sheet.repeatRows(0);
        sheet.setAutoFilter(0, 0, table.rows().size(), columns - 1);
        sheet.pageOrientation("landscape");
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
    }

    private static void fill(Worksheet sheet, int row, int column, Cell cell) {
        if (cell.number().isPresent()) {
            sheet.value(row, column, cell.number().get());
            sheet.style(row, column).verticalAlignment("top").set();
        } else if (!cell.text().isEmpty()) {
            String text = cell.text();
            sheet.value(row, column, text.length() <= MOST ? text : text.substring(0, MOST - CUT.length()) + CUT);
            sheet.style(row, column).format("@").wrapText(true).verticalAlignment("top").set();
        }
    }

    /** The library's archive has no sizes before its entries, which only {@link ZipFile} reads. */
    private static void again(Path raw, OutputStream out) throws IOException {
        try (ZipFile from = new ZipFile(raw.toFile())) {
            ZipOutputStream to = new ZipOutputStream(out, StandardCharsets.UTF_8);
            List<ZipEntry> entries = new ArrayList<>(from.stream().toList());
            entries.sort(Comparator.comparing((ZipEntry e) -> !e.getName().equals(CONTENT_TYPES)).thenComparing(ZipEntry::getName));
            for (ZipEntry e : entries) {
                ZipEntry copy = new ZipEntry(e.getName());
                copy.setTimeLocal(FIXED);
                to.putNextEntry(copy);
                to.write(e.getName().equals(CORE) ? CORE_TEXT.getBytes(StandardCharsets.UTF_8) : content(from, e));
                to.closeEntry();
            }
            to.setComment(MARK);
            to.finish();
        }
    }

    private static byte[] content(ZipFile from, ZipEntry e) throws IOException {
        try (InputStream in = from.getInputStream(e)) {
            return in.readAllBytes();
        }
    }
}
