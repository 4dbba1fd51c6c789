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
    private static final List<String> LEGEND = List.of(
            "Least allowed, in mm; deg: degrees; x: a factor; mm2/m: open area in each metre.",
            "t: or taped instead.  >: more than.  never: always tape.",
            Limit.DRIVING_SHARE.id() + " is no least: it is the share that the water's drive is reckoned with.",
            "In brackets: this practice is silent and " + Practices.COMMON + " speaks.");

    /** As many as fit side by side. */
    private static final int BESIDE = (COLUMNS - NAME_WIDTH) / (VALUE_WIDTH + 1);

    private final List<Practice> practices;
    private final List<Disagreement> disagreements;

    /**
     * A table of these practices, in this order: one below the other where they are too many to stand side by side, each with the first of them.
     *
     * @throws IllegalArgumentException if there is none
     */
    public PracticeTable(List<Practice> practices, List<Disagreement> disagreements) {
        this.practices = List.copyOf(practices);
        this.disagreements = List.copyOf(disagreements);
        if (practices.isEmpty()) {
            throw new IllegalArgumentException("no practice makes no table");
        }
    }

    /** The lines, without line ends or trailing blanks. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (List<Practice> block : blocks()) {
            lines.addAll(heading(block));
            for (Limit limit : Limit.values()) {
                lines.add(row(limit.id(), block.stream().map(p -> cell(p, limit)).toList()));
            }
            lines.add("");
        }
        lines.addAll(LEGEND);
        practices.forEach(p -> lines.addAll(page(p)));
        if (!disagreements.isEmpty()) {
            lines.addAll(List.of("", "Where documents disagree. Nothing is averaged: each practice keeps its own."));
            disagreements.forEach(d -> lines.addAll(page(d)));
        }
        return List.copyOf(lines);
    }

    private List<List<Practice>> blocks() {
        if (practices.size() <= BESIDE) {
            return List.of(practices);
        }
        List<Practice> rest = practices.subList(1, practices.size());
        int count = (rest.size() + BESIDE - 2) / (BESIDE - 1), size = (rest.size() + count - 1) / count;
        List<List<Practice>> out = new ArrayList<>();
        for (int from = 0; from < rest.size(); from += size) {
            List<Practice> block = new ArrayList<>(List.of(practices.get(0)));
            block.addAll(rest.subList(from, Math.min(rest.size(), from + size)));
            out.add(block);
        }
        return out;
    }

    private static List<String> page(Disagreement d) {
        List<String> lines = new ArrayList<>(List.of("", d.about()));
        d.says().forEach(s -> lines.addAll(hanging("  - ", s.what() + ": " + s.who() + ", " + s.known().text())));
        lines.addAll(wrapped(d.comment(), "  "));
        return lines;
    }

    /** Ids over two lines: the last part, as a rule the year, goes below. */
    private static List<String> heading(List<Practice> practices) {
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
