package rainlap.practice;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** One figure as a document prints it, written off by hand: see {@code practices/published-rows.txt}. */
record PublishedRow(
        String row, String quantity, double figure, String unit, String document, String clause, String known) {

    static List<PublishedRow> all() {
        try (InputStream in = PublishedRow.class.getResourceAsStream("/practices/published-rows.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(PublishedRow::parse)
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** All figures under one row number. */
    static List<PublishedRow> of(String row) {
        return all().stream().filter(r -> r.row.equals(row)).toList();
    }

    private static PublishedRow parse(String line) {
        String[] cells = line.split("\\s*\\|\\s*");
        if (cells.length != 7) {
            throw new IllegalStateException("not seven cells: " + line);
        }
        return new PublishedRow(
                cells[0].strip(), cells[1], figure(cells[2]), cells[3], cells[4], cells[5], cells[6].strip());
    }

    private static double figure(String cell) {
        return cell.equals("never") ? Double.POSITIVE_INFINITY : Double.parseDouble(cell);
    }
}
