package rainlap.page;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.check.WorstFirst;
import rainlap.measure.LitresText;
import rainlap.report.TerminalTable;
import rainlap.rule.Finding;

/** The page that leads to the pages of several elevations, and to each of their weak points, worst first. */
public final class IndexPage {
    private IndexPage() {}

    /**
     * One elevation.
     *
     * @param file its name as shown
     * @param link to its page, as {@link #link} gives it
     */
    public record Entry(String file, String link, CheckResult result) {}

    /** A weak point and the elevation it lies on. */
    private record Row(Entry entry, WeakPoint point) {
        Finding finding() {
            return point.finding();
        }
    }

    private static final Comparator<Row> WORST_FIRST = Comparator.comparingInt((Row r) -> r.finding().defences())
            .thenComparing(r -> r.finding().litresPerHour().orElse(0), Comparator.reverseOrder()).thenComparing(r -> r.finding().rule());

    /** The page; its order is that of the elevations where two rank alike, so that a building's numbers run through. */
    public static String of(String title, List<Entry> entries) {
        return Shell.page(title + ": weak points", body(title, entries), List.of(), false);
    }

    /** The same as the body of a page that a server keeps up to date. */
    static String body(String title, List<Entry> entries) {
        Html out = new Html();
        List<Row> rows = entries.stream().flatMap(e -> e.result().weakPoints().stream().map(p -> new Row(e, p))).sorted(WORST_FIRST).toList();
        out.raw("<header>").element("h1", title);
        out.raw("<p class=\"sum\">").text(TerminalTable.counts(rows.stream().map(Row::point).toList())).raw("</p></header>\n<main class=\"index\">\n");
        out.raw("<section>").element("h2", "Elevations, worst first").element("p class=\"s\"", "By the fewest defences, then by how many weak points have as few.").raw("<ul>\n");
        worstFirst(entries).forEach(e -> out.raw("<li><a href=\"" + e.link() + "\">").text(e.result().evidence().elevation().name()).raw("</a> <span class=\"s\">")
                .text(e.file() + ", " + e.result().evidence().stage().word() + " stage, practice " + e.result().evidence().practice().id()).raw("</span><br>")
                .text(TerminalTable.counts(e.result().weakPoints())).raw("</li>\n"));
        out.raw("</ul></section>\n<section>").element("h2", "Weak points, worst first").element("p class=\"s\"", "By defences, then by litres an hour (l/h).");
        table(out, rows);
        out.raw("</section>\n<p>").text(String.join(" ", TerminalTable.caution())).raw("</p></main>\n");
        return out.toString();
    }

    private static List<Entry> worstFirst(List<Entry> entries) {
        List<Entry> out = new ArrayList<>(entries);
        out.sort(Comparator.comparing(Entry::result, WorstFirst.ORDER));
        return out;
    }

    private static void table(Html out, List<Row> rows) {
        if (rows.isEmpty()) {
            out.element("p", "No weak point was found.");
            return;
        }
        out.element("p class=\"s sideways\"", "The table goes on to the right: move it sideways.");
        out.raw("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"Weak points\"><table><tr><th>Defences</th><th>l/h</th><th>Weak point</th>"
                + "<th>Elevation</th><th>Pieces, place</th><th>Drawn</th><th>Asked</th></tr>\n");
        for (Row r : rows) {
            Finding f = r.finding();
            out.raw("<tr>").element("td", f.defences() == Finding.MANY ? f.defences() + " or more" : Integer.toString(f.defences()));
            out.element("td", f.litresPerHour().stream().mapToObj(LitresText::perHour).findFirst().orElse("–"));
            out.raw("<td><a href=\"" + r.entry().link() + "#weak-" + r.point().number() + "\">").text(r.point().number() + " " + f.rule()).raw("</a></td>");
            out.element("td", r.entry().result().evidence().elevation().name());
            String pieces = String.join(", ", f.pieces());
            Stream.of(pieces + (pieces.isEmpty() ? "" : ", ") + f.where().inWords(), f.drawn(), f.asked()).forEach(t -> out.element("td", t));
            out.raw("</tr>\n");
        }
        out.raw("</table></div>\n");
    }

    /** The address of one file as a page beside another has it, ready for an attribute. */
    public static String link(Path from, Path to) {
        Path here = from.toAbsolutePath().normalize().getParent(), there = to.toAbsolutePath().normalize();
        List<String> names = new ArrayList<>();
        here.relativize(there).forEach(p -> names.add(encoded(p.toString())));
        return Html.escaped(String.join("/", names));
    }

    /** One step of a path with everything but plain letters written as an address has it. */
    private static String encoded(String name) {
        StringBuilder out = new StringBuilder();
        for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            boolean plain = c < 128 && (Character.isLetterOrDigit(c) || "-._~".indexOf(c) >= 0);
            out.append(plain ? Character.toString(c) : "%" + Integer.toHexString(0x100 | c).substring(1).toUpperCase(java.util.Locale.ROOT));
        }
        return out.toString();
    }
}
