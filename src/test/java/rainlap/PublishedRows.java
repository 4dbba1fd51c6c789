package rainlap;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The hand-written lists of published rows, each line cut into its cells; the first cell is the row's number. */
final class PublishedRows {
    /** Rows with a figure that a limit or a material rests on; several lines may have one number. */
    static final List<List<String>> FIGURES = read("published-rows", 7);
    /** Rows that a rule follows without a figure: number, what it says, document, how well known, used by. */
    static final List<List<String>> IN_WORDS = read("rows-in-words", 5);
    /** Rows that no rule uses: number, what it says, document and clause, how well known, why. */
    static final List<List<String>> UNUSED = read("unused-rows", 5);

    private PublishedRows() {}

    private static List<List<String>> read(String name, int cells) {
        try (InputStream in = PublishedRows.class.getResourceAsStream("/practices/" + name + ".txt")) {
            List<List<String>> out = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    List<String> row = List.of(line.strip().split("\\s*\\|\\s*"));
                    if (row.size() != cells) {
                        throw new IllegalStateException(name + ".txt: not " + cells + " cells: " + line);
                    }
                    out.add(row);
                }
            }
            return List.copyOf(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> numbers(List<List<String>> rows) {
        return rows.stream().map(r -> r.get(0)).toList();
    }

    /** The page of the documentation. */
    static String page() {
        StringBuilder page = new StringBuilder("# Published values\n\nWhich values that are published for laps, returns, tapes and flashings a rule judges by, and which none does."
                + " The limits with their sources stand on the page of the [practices](practices.md). The row is a label: section and place in the list the values were taken from.\n");
        table(page, "Published values that no rule uses, and why", "| row | what it says | who says so | how well known | why no rule uses it |", UNUSED);
        table(page, "Published rows that are followed without a figure", "| row | what it says | who says so | how well known | where |", IN_WORDS);
        return page.toString();
    }

    private static void table(StringBuilder page, String title, String head, List<List<String>> rows) {
        page.append("\n## ").append(title).append("\n\n").append(head).append("\n|---|---|---|---|---|\n");
        rows.forEach(r -> page.append("| ").append(String.join(" | ", r)).append(" |\n"));
    }
}
