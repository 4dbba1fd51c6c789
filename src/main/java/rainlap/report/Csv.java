package rainlap.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A table as comma-separated values after RFC 4180: UTF-8 without a byte-order mark, a line of headings, each line ended by CR and LF. */
final class Csv {
    private static final String END = "\r\n";
    /** With these a cell is quoted; the semicolon and the tab only because some readers split at them. */
    private static final Pattern TO_QUOTE = Pattern.compile("[\",;\\t\\r\\n]|^\\s|\\s$");

    private Csv() {}

    static void write(ListTable table, OutputStream out) throws IOException {
        out.write(heading(table).getBytes(StandardCharsets.UTF_8));
        for (List<Cell> row : table.rows()) {
            out.write((row.stream().map(Csv::written).collect(Collectors.joining(",")) + END).getBytes(StandardCharsets.UTF_8));
        }
    }

    static String heading(ListTable table) {
        return table.headings().stream().map(h -> quoted(h.text())).collect(Collectors.joining(",")) + END;
    }

    private static String written(Cell cell) {
        return cell.number().map(n -> n.toPlainString()).orElseGet(() -> quoted(cell.text()));
    }

    private static String quoted(String text) {
        return TO_QUOTE.matcher(text).find() ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }
}
