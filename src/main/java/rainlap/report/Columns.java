package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import rainlap.measure.Unbroken;

/**
 * Text in columns. A column is as wide as its widest cell, up to a stated most; what is wider goes on beneath, broken at blanks. Figures, which stand at the right, are
 * never broken.
 */
final class Columns {
    private static final String GAP = "  ";

    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();
    private final int[] widest;

    /** A heading and the most characters its cells take in one line, unless they are figures. */
    record Column(String heading, int most, boolean right) {}

    Columns(List<Column> columns) {
        this.columns = List.copyOf(columns);
        this.widest = columns.stream().mapToInt(c -> c.heading.length()).toArray();
    }

    void add(List<String> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells for " + columns.size() + " columns");
        }
        rows.add(List.copyOf(cells));
        for (int c = 0; c < widest.length; c++) {
            widest[c] = Math.max(widest[c], cells.get(c).length());
        }
    }

    List<String> heading() {
        return lines(columns.stream().map(Column::heading).toList());
    }

    /** The lines of one row. */
    List<String> row(int i) {
        return lines(rows.get(i));
    }

    /** Where the text of a column begins, in characters. */
    int indent(int column) {
        int indent = 0;
        for (int c = 0; c < column; c++) {
            indent += width(c) + GAP.length();
        }
        return indent;
    }

    private int width(int c) {
        return columns.get(c).right ? widest[c] : Math.min(widest[c], columns.get(c).most);
    }

    private List<String> lines(List<String> cells) {
        List<List<String>> wrapped = new ArrayList<>();
        for (int c = 0; c < cells.size(); c++) {
            wrapped.add(wrap(cells.get(c), width(c)));
        }
        int most = wrapped.stream().mapToInt(List::size).max().orElse(0);
        List<String> out = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < cells.size(); c++) {
                String text = i < wrapped.get(c).size() ? wrapped.get(c).get(i) : "";
                line.append(c == 0 ? "" : GAP).append(padded(text, width(c), columns.get(c).right));
            }
            out.add(line.toString().stripTrailing());
        }
        return out;
    }

    private static String padded(String text, int width, boolean right) {
        String blanks = " ".repeat(Math.max(0, width - text.length()));
        return right ? blanks + text : text + blanks;
    }

    /** Breaks at blanks; a word that is longer than a line is cut. Never empty. */
    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Unbroken.parts(text.strip(), t -> t.length() <= width)) {
            String rest = word;
            if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    /** A lead-in and the text after it, broken to a width, later lines beneath the first one's text. */
    static List<String> hanging(String leadIn, String text, int width) {
        List<String> lines = new ArrayList<>();
        for (String part : wrap(text, width - leadIn.length())) {
            lines.add(((lines.isEmpty() ? leadIn : " ".repeat(leadIn.length())) + part).stripTrailing());
        }
        return lines;
    }
}
