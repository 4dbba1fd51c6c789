package rainlap.report;

import java.util.ArrayList;
import java.util.List;

/** RFC 4180 read character by character, strictly: a file that is not of that form is refused. */
final class ReadCsv {
    private final String text;
    private int at;

    private ReadCsv(String text) {
        this.text = text;
    }

    static List<List<String>> of(String text) {
        ReadCsv csv = new ReadCsv(text);
        List<List<String>> rows = new ArrayList<>();
        while (csv.at < text.length()) {
            rows.add(csv.row());
        }
        return rows;
    }

    private List<String> row() {
        List<String> row = new ArrayList<>(List.of(field()));
        while (text.charAt(at) == ',') {
            at++;
            row.add(field());
        }
        if (!text.startsWith("\r\n", at)) {
            throw new AssertionError("a line ends in CR and LF, not in " + (int) text.charAt(at) + " at " + at);
        }
        at += 2;
        return row;
    }

    private String field() {
        return text.charAt(at) == '"' ? quoted() : plain();
    }

    private String plain() {
        int from = at;
        while (",\r\n\"".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return text.substring(from, at);
    }

    private String quoted() {
        StringBuilder out = new StringBuilder();
        for (at++; text.charAt(at) != '"' || text.charAt(at + 1) == '"'; at++) {
            if (text.charAt(at) == '"') {
                at++;
            }
            out.append(text.charAt(at));
        }
        at++;
        return out.toString();
    }
}
