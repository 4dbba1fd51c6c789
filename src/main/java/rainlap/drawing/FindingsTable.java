package rainlap.drawing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.measure.LitresText;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.rule.Place;
import rainlap.source.Source;
import rainlap.water.Balance;
import rainlap.water.DrivingRain;
import rainlap.water.Trace;

/**
 * The table of weak points, worst first, over as many sheets as it needs; what was not checked closes it. It is asked for one sheet's part
 * after another.
 */
final class FindingsTable {
    private static final double HEAD = 13.4;
    private static final double LINE_ABOVE = 4.4;
    /** Closing notes stand in line with the column of rules. */
    private static final double INDENT = 10;
    /** A sentence of more lines may be torn, so that it ends at all. */
    private static final int LONG = 8;
    /** Between sentences. */
    private static final String SENTENCES = "(?<=[.]) (?=\\p{Lu})";
    private static final String LITRES = "l/h: what runs over or beside the place, or falls on it, on what lies outermost; –: not reckoned (reveals, pipes, corners).";
    /** In short: the table and the findings file say which ways have their share. */
    private static final String SHARES = " Where water parts, each way has an equal share; which way it really goes is not drawn.";
    /** Of frame that is wet but counts as nothing. */
    private static final int MOST_PLACES = 3;
    private final CheckResult result;
    private int next;
    private final Deque<String> closing;
    private boolean begun;
    /** Whether closing notes have begun. */
    private boolean noted;

    /**
     * @param unnamed pieces whose names found no room on the drawing
     * @param unmarked how many of the last weak points stand in the table only
     * @param uncut numbers of those of no or one defence that no section shows
     * @param wet frame that is wet but counts as nothing
     */
    FindingsTable(CheckResult result, List<String> unnamed, int unmarked, List<Integer> uncut, List<Place> wet) {
        this.result = result;
        this.closing = new ArrayDeque<>(closing(unnamed, wet));
        if (!uncut.isEmpty()) {
            closing.add("Without a section, as a sheet shows no more of them or no plane cuts it: " + uncut.stream().map(String::valueOf).collect(Collectors.joining(", ")) + ".");
        }
        if (unmarked > 0) {
            closing.add("Not marked on the drawing for want of room, " + unmarked + ": they stand in this table only.");
        }
    }

    boolean isDone() {
        return next >= result.weakPoints().size() && closing.isEmpty();
    }

    /** The height that all that is still to come would take in a box of this width. */
    double height(PaperBox box) {
        FindingRow rows = new FindingRow(new TableColumns(box), result.evidence());
        double points = result.weakPoints().stream().skip(next).mapToDouble(p -> rows.of(p).height()).sum();
        List<String> lines = closing.stream().flatMap(t -> wrapped(t, box).stream()).toList();
        return HEAD + points + LINE_ABOVE + 0.6 + lines.size() * Words.pitch(lines) + 1;
    }

    /**
     * As many rows as fit a box, beginning where the last part ended.
     *
     * @param slot 0 for the first part on its sheet
     */
    Group part(PaperBox box, int slot) {
        List<Mark> out = new ArrayList<>();
        boolean first = !begun;
        begun = true;
        String id = slot == 0 ? "findings" : "findings-" + (slot + 1);
        if (!first && next >= result.weakPoints().size()) {
            return Group.of(id, notes(box));
        }
        TableColumns columns = new TableColumns(box);
        heading(columns, first, out);
        double y = box.top() + HEAD;
        FindingRow rows = new FindingRow(columns, result.evidence());
        List<WeakPoint> points = result.weakPoints();
        int from = next;
        while (next < points.size()) {
            TableRow row = rows.of(points.get(next));
            if (y + row.height() > box.bottom() && (next > from || !first)) {
                break;
            }
            if (next > from) {
                out.add(Polyline.line(box.left(), y, box.right(), y, Looks.RULE));
            }
            out.addAll(row.drawer().at(y));
            y += row.height();
            next++;
        }
        if (next > from) {
            out.add(Polyline.line(box.left(), y, box.right(), y, Looks.WIDE));
        }
        if (next >= points.size()) {
            closing(box, y, out);
        }
        return Group.of(id, out);
    }

    /** Whether the next row finds room in a box under the heading; of a table without rows all that it says. */
    boolean fits(PaperBox box) {
        return next >= result.weakPoints().size() ? begun || height(box) <= box.height() : HEAD + new FindingRow(new TableColumns(box), result.evidence()).of(result.weakPoints().get(next)).height() <= box.height();
    }

    /** Whether nothing but closing notes is left, and all of them fit a box. */
    boolean endsIn(PaperBox box) {
        List<String> lines = closing.stream().flatMap(t -> wrapped(t, indented(box)).stream()).toList();
        return begun && next >= result.weakPoints().size() && 2 * LINE_ABOVE + 0.6 + (lines.size() - 1) * Words.pitch(lines) + 1 <= box.height();
    }

    /** What is left of the closing notes, in a box that {@link #endsIn} found. */
    Group end(PaperBox box) {
        return Group.of("findings-notes", notes(box));
    }

    private List<Mark> notes(PaperBox box) {
        List<Mark> out = new ArrayList<>(List.of(Text.of(box.left(), box.top() + 5, "Notes to the table" + (noted ? ", continued" : ""), Looks.TITLE)));
        closing(indented(box), box.top() + LINE_ABOVE, out);
        return out;
    }

    /** Notes by themselves stand in line with their title. */
    private static PaperBox indented(PaperBox box) {
        return new PaperBox(box.left() - INDENT, box.top(), box.right(), box.bottom());
    }

    private void heading(TableColumns columns, boolean first, List<Mark> out) {
        PaperBox box = columns.box();
        String title = first ? "Weak points, worst first" : "Weak points, continued";
        out.add(Text.of(box.left(), box.top() + 5, title, Looks.TITLE));
        out.add(Text.of(box.left() + TextMetrics.width(title, Looks.TITLE) + 3, box.top() + 5, summary(), Looks.SECOND));
        out.add(Polyline.line(box.left(), box.top() + 7.6, box.right(), box.top() + 7.6, Looks.WIDE));
        if (!result.weakPoints().isEmpty() && next < result.weakPoints().size()) {
            for (int c = 0; c < TableColumns.HEADINGS.size(); c++) {
                TextStyle style = c == TableColumns.LITRES ? Looks.STRONG.grey().end() : Looks.STRONG.grey();
                out.add(Text.of(columns.at(c), box.top() + 11.5, TableColumns.HEADINGS.get(c), style));
            }
            out.add(Polyline.line(box.left(), box.top() + 13.2, box.right(), box.top() + 13.2, Looks.NARROW));
        }
    }

    private String summary() {
        List<WeakPoint> all = result.weakPoints();
        if (all.isEmpty()) {
            return "none found. Lengths in mm.";
        }
        return Tally.of(all) + ". Lengths in mm.";
    }

    /** Each broken to the box it stands in; the sentences that do not fit go on in the next. */
    private void closing(PaperBox box, double top, List<Mark> out) {
        double y = top + LINE_ABOVE + 0.6, pitch = Words.pitch(List.copyOf(closing));
        while (!closing.isEmpty()) {
            int room = (int) Math.floor((box.bottom() - 1 - y) / pitch + 1.001);
            List<String> sentences = List.of(closing.removeFirst().split(SENTENCES));
            int fit = sentences.size();
            while (fit > 0 && wrapped(String.join(" ", sentences.subList(0, fit)), box).size() > room) {
                fit--;
            }
            List<String> lines = wrapped(String.join(" ", sentences.subList(0, Math.max(1, fit))), box);
            int at = fit > 0 ? lines.size() : lines.size() > LONG ? Math.max(0, Math.min(room, lines.size())) : 0;
            for (String line : lines.subList(0, at)) {
                closingLine(line, box.left() + INDENT, y, out);
                y += pitch;
                noted = true;
            }
            List<String> left = new ArrayList<>(lines.subList(at, lines.size()));
            left.addAll(sentences.subList(Math.max(1, fit), sentences.size()));
            if (!left.isEmpty()) {
                closing.addFirst(String.join(" ", left));
                return;
            }
        }
    }

    private static List<String> wrapped(String text, PaperBox box) {
        return TextMetrics.wrap(text, Math.min(box.width(), Slots.TABLE.width()) - 13, Looks.PLAIN);
    }

    private static void closingLine(String line, double left, double y, List<Mark> out) {
        int colon = line.startsWith("Not ") ? line.indexOf(':') + 1 : 0;
        String head = line.substring(0, colon);
        double x = left;
        if (colon > 0) {
            out.add(Text.of(x, y, head, Looks.STRONG));
            x += TextMetrics.width(head, Looks.STRONG) + 1;
        }
        out.add(Text.of(x, y, line.substring(colon).strip(), Looks.PLAIN));
    }

    /** What was checked where nothing was found, what could not be checked, and what the figures rest on. */
    private List<String> closing(List<String> unnamed, List<Place> wet) {
        List<String> out = new ArrayList<>();
        if (result.weakPoints().isEmpty()) {
            out.add(checked());
        }
        out.add(notChecked());
        if (!wet.isEmpty()) {
            out.add(notDrawn(wet));
        }
        rain(out);
        String practice = result.evidence().practice().id();
        if (result.weakPoints().stream().map(WeakPoint::finding)
                .anyMatch(f -> f.isUnspokenBy(practice) && !f.source().equals(Source.commonPractice()))) {
            out.add("A source after \"common:\" speaks where " + practice + " is silent.");
        }
        if (!unnamed.isEmpty()) {
            out.add("Not named on the drawing for want of room, " + unnamed.size() + ": " + String.join(", ", unnamed) + ".");
        }
        return out;
    }

    /** What rain is reckoned with and where it goes as drawn, then what the figures of the column mean. */
    private void rain(List<String> out) {
        Trace trace = result.evidence().trace();
        out.add(DrivingRain.relation(result.evidence().elevation().exposure())
                .map(r -> "Rain on the wall " + r + "." + trace.balance().filter(b -> b.fallen() > 0).map(this::goes).orElse(""))
                .orElse("No litres an hour (l/h), because no rain is stated."));
        if (trace.rain().isPresent() && !result.weakPoints().isEmpty()) {
            out.add(LITRES);
        }
    }

    private String goes(Balance b) {
        String shares = result.evidence().trace().shares().stream().filter(s -> s.litresPerHour() > 0 || !s.besides().isEmpty())
                .map(s -> s.says() + " " + LitresText.percent(s.litresPerHour(), b.fallen()) + s.inBrackets()).collect(Collectors.joining(", "));
        return " Of " + LitresText.perHour(b.fallen()) + " l/h as drawn: " + shares + "." + SHARES;
    }

    /** Wet frame that no rule counts is not painted, so it is told. */
    private static String notDrawn(List<Place> wet) {
        String more = wet.size() > MOST_PLACES ? " and " + (wet.size() - MOST_PLACES) + " more" : "";
        return "Not drawn as wet, as no rule counts where its water starts (deep in a reveal, within tolerance): "
                + wet.stream().limit(MOST_PLACES).map(Place::inWords).collect(Collectors.joining("; ")) + more + ".";
    }

    private String checked() {
        int places = result.held().values().stream().mapToInt(Integer::intValue).sum();
        String rules = String.join(", ", new TreeSet<>(result.held().keySet()));
        return places == 0 ? "No rule found a place to judge." : "Looked at and as asked: " + places + " places, by " + rules + ".";
    }

    private String notChecked() {
        int n = result.unchecked().size() + result.crashes().size();
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        result.unchecked().forEach(u -> byReason.computeIfAbsent(u.rule() + "\n" + u.why(), k -> new ArrayList<>()).addAll(u.pieces()));
        List<String> parts = new ArrayList<>();
        byReason.forEach((key, pieces) -> {
            String[] ruleAndWhy = key.split("\n", 2);
            String of = pieces.isEmpty() ? "" : " of " + String.join(", ", new java.util.LinkedHashSet<>(pieces));
            parts.add(ruleAndWhy[0] + of + ", because " + ruleAndWhy[1]);
        });
        result.crashes().forEach(c -> parts.add(c.rule() + ", because of a fault of this program: " + c.what()));
        return "Not checked, " + n + ": " + (parts.isEmpty() ? "nothing was left out." : String.join("; ", parts) + ".");
    }
}
