package rainlap.practice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Practices side by side as plain text, then who says each value. At most {@link #COLUMNS} characters a line. */
public final class PracticeTable {
    /** The longest line. */
    public static final int COLUMNS = 100;

    private static final int NAME_WIDTH = 22;
    private static final int VALUE_WIDTH = 10;

    private final List<Practice> practices;

    /**
     * A table of these practices, in this order.
     *
     * @throws IllegalArgumentException if there is none, or more than fit side by side
     */
    public PracticeTable(List<Practice> practices) {
        this.practices = List.copyOf(practices);
        if (practices.isEmpty() || NAME_WIDTH + practices.size() * (VALUE_WIDTH + 1) > COLUMNS) {
            throw new IllegalArgumentException(practices.size() + " practices do not make a table of " + COLUMNS + " columns");
        }
    }

    /** The lines, without line ends or trailing blanks. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(heading());
        for (Limit limit : Limit.values()) {
            lines.add(row(limit.id(), practices.stream().map(p -> cell(p, limit)).toList()));
        }
        lines.addAll(legend());
        practices.forEach(p -> lines.addAll(page(p)));
        return List.copyOf(lines);
    }

    /** Ids over two lines: the last part, as a rule the year, goes below. */
    private List<String> heading() {
        List<String> upper = new ArrayList<>();
        List<String> lower = new ArrayList<>();
        for (Practice practice : practices) {
            int dash = practice.id().lastIndexOf('-');
            upper.add(practice.id().substring(0, dash + 1));
            lower.add(practice.id().substring(dash + 1));
        }
        String rule = row("-".repeat(NAME_WIDTH - 1), Collections.nCopies(practices.size(), "-".repeat(VALUE_WIDTH)));
        List<String> lines = List.of(row("", upper), row("limit", lower), rule);
        return lines.get(0).isEmpty() ? lines.subList(1, lines.size()) : lines;
    }

    private static String row(String name, List<String> cells) {
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-" + NAME_WIDTH + "s", name));
        cells.forEach(cell -> line.append(String.format(Locale.ROOT, " %" + VALUE_WIDTH + "s", cell)));
        return line.toString().stripTrailing();
    }

    private static String cell(Practice practice, Limit limit) {
        LimitValue value = practice.get(limit);
        String number = (value.strict() ? ">" : "") + value.number() + (limit.isLength() ? "" : " " + limit.unit());
        String marked = value.orTaped() ? number + " t" : number;
        return practice.isSilentOn(limit) ? "(" + marked + ")" : marked;
    }

    private static List<String> legend() {
        return List.of(
                "",
                "Least allowed, in mm; deg: degrees; x: a factor; mm2/m: open area in each metre.",
                "t: or taped instead.  >: more than.  never: always tape.",
                Limit.DRIVING_SHARE.id() + " is no least: it is the share that the water's drive is reckoned with.",
                "In brackets: this practice is silent and " + Practices.COMMON + " speaks.");
    }

    private static List<String> page(Practice practice) {
        List<String> lines = new ArrayList<>(List.of("", practice.id() + ": " + practice.title()));
        lines.addAll(wrapped(practice.about(), "  "));
        practice.facts().forEach(fact -> lines.addAll(hanging("  - ", fact)));
        for (LimitValue value : practice.ownValues()) {
            String name = String.format(Locale.ROOT, "  %-" + NAME_WIDTH + "s", value.limit().id());
            lines.addAll(hanging(name, value.text() + ": " + value.source().text()));
            lines.addAll(wrapped(value.note(), " ".repeat(name.length())));
        }
        return lines;
    }

    private static List<String> hanging(String name, String text) {
        List<String> lines = new ArrayList<>(wrapped(text, " ".repeat(name.length())));
        lines.set(0, name + lines.get(0).strip());
        return lines;
    }

    /** Breaks at blanks; a word longer than a line stays whole. */
    private static List<String> wrapped(String text, String indent) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(indent);
        for (String word : Arrays.asList(text.split(" "))) {
            if (line.length() > indent.length() && line.length() + 1 + word.length() > COLUMNS) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
            }
            line.append(line.length() > indent.length() ? " " : "").append(word);
        }
        if (!line.toString().isBlank()) {
            lines.add(line.toString());
        }
        return lines;
    }
}
