package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rainlap.check.Cautions;
import rainlap.check.CheckResult;
import rainlap.check.Crash;
import rainlap.check.Unchecked;
import rainlap.check.WeakPoint;
import rainlap.measure.LitresText;
import rainlap.practice.Practice;
import rainlap.rule.Finding;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** What one check found as plain text for a terminal, worst first; no line is longer than {@link #COLUMNS}. */
public final class TerminalTable {
    /** The longest line. */
    public static final int COLUMNS = 100;
    private static final String CAUTION = "Rainlap advises, it does not certify: local code and licensed people decide."
            + " Defences are what must fail on the water's whole way to the frame; 3 stands for three or more.";

    private static final List<Columns.Column> HEADINGS = List.of(
            new Columns.Column("defences", 8, true), new Columns.Column("l/h", 6, true), new Columns.Column("rule", 24, false),
            new Columns.Column("pieces", 16, false), new Columns.Column("drawn", 14, false), new Columns.Column("asked", 14, false));
    private static final int RULE = 3;

    private final String file;
    private final CheckResult result;
    private final List<String> lines = new ArrayList<>();

    private TerminalTable(String file, CheckResult result) {
        this.file = file;
        this.result = result;
    }

    /** The lines for one file, without line ends. */
    public static List<String> lines(String file, CheckResult result) {
        TerminalTable table = new TerminalTable(file, result);
        table.addHeading();
        table.addWeakPoints();
        table.lines.addAll(TakenForGranted.lines(result));
        table.addJoints();
        LeftRound.lines(result.evidence()).forEach(l -> table.add("", l));
        table.addUnchecked();
        table.addNotApplicable();
        table.addCrashes();
        table.addCautions();
        return List.copyOf(table.lines);
    }

    /** The same without the list of weak points, which stands in the one list of a building. */
    static List<String> besides(String file, CheckResult result) {
        TerminalTable table = new TerminalTable(file, result);
        table.addHeading();
        table.add("", capital(counts(result.weakPoints())));
        table.lines.addAll(TakenForGranted.lines(result));
        table.addJoints();
        table.addUnchecked();
        table.addNotApplicable();
        table.addCrashes();
        table.addCautions();
        return List.copyOf(table.lines);
    }

    /** All files of a run together, then one line or more for each. */
    public static List<String> total(List<String> files, List<CheckResult> results) {
        List<WeakPoint> all = results.stream().flatMap(r -> r.weakPoints().stream()).toList();
        int unchecked = results.stream().mapToInt(r -> r.unchecked().size()).sum();
        List<String> out = new ArrayList<>(Columns.hanging("",
                "Together, " + count(results.size(), "elevation") + ": " + counts(all) + "; not checked, " + unchecked, COLUMNS));
        Columns columns = new Columns(List.of(new Columns.Column("", 38, false), new Columns.Column("", 60, false)));
        for (int i = 0; i < results.size(); i++) {
            columns.add(List.of(PlainText.of(files.get(i)), counts(results.get(i).weakPoints())));
        }
        for (int i = 0; i < results.size(); i++) {
            out.addAll(columns.row(i));
        }
        return List.copyOf(out);
    }

    /** What every output says of itself. */
    public static List<String> caution() {
        return Columns.wrap(CAUTION, COLUMNS);
    }

    private void addHeading() {
        Elevation e = result.evidence().elevation();
        Practice practice = result.evidence().practice();
        Stage stage = result.evidence().stage();
        add("", e.name() + " (" + file + ")");
        add("", "practice " + practice.id() + " (" + practice.title() + "), stage " + stage.word() + ", "
                + count(e.pieces().size(), "piece"));
        long ignored = e.pieces().stream().filter(p -> !stage.sees(p.material().layer())).count();
        if (ignored > 0) {
            add("", count(ignored, "piece") + " of the cavity and the face " + (ignored == 1 ? "is" : "are")
                    + " not looked at in this stage");
        }
        lines.add("");
    }

    private void addWeakPoints() {
        if (!result.weakPoints().isEmpty()) {
            List<Columns.Column> headings = new ArrayList<>(HEADINGS);
            headings.add(0, new Columns.Column("no.", Math.max(4, Integer.toString(result.weakPoints().size()).length()), true));
            Columns columns = new Columns(headings);
            result.weakPoints().forEach(w -> columns.add(cells(w)));
            lines.addAll(columns.heading());
            for (int i = 0; i < result.weakPoints().size(); i++) {
                lines.addAll(columns.row(i));
                addBelow(result.weakPoints().get(i).finding(), " ".repeat(columns.indent(RULE)));
            }
            lines.add("");
        }
        add("", capital(counts(result.weakPoints())));
    }

    static List<String> cells(WeakPoint w) {
        Finding f = w.finding();
        return List.of(Integer.toString(w.number()), Integer.toString(f.defences()),
                f.litresPerHour().stream().mapToObj(LitresText::perHour).findFirst().orElse("-"), f.rule(),
                PlainText.of(String.join(", ", f.pieces())), dash(f.drawn()), dash(f.asked()));
    }

    private static String dash(String text) {
        return text.isBlank() ? "-" : PlainText.of(text);
    }

    private void addBelow(Finding f, String indent) {
        lines.addAll(below(f, result.evidence().practice().id(), indent));
    }

    /** Place, remedy and who asks for it, beneath a row. */
    static List<String> below(Finding f, String practice, String indent) {
        List<String> out = new ArrayList<>(hanging(indent + "place     ", f.where().inWords()));
        out.addAll(hanging(indent + "remedy    ", f.remedy()));
        out.addAll(hanging(indent + "asked by  ", f.source().text() + (f.isUnspokenBy(practice) ? "; " + practice + " is silent" : "")));
        return out;
    }

    /** How many there are, by what stands between them and the frame. */
    public static String counts(List<WeakPoint> all) {
        if (all.isEmpty()) {
            return "no weak point";
        }
        long none = all.stream().filter(w -> w.finding().defences() == 0).count();
        long one = all.stream().filter(w -> w.finding().defences() == 1).count();
        long safe = all.size() - none - one;
        List<String> parts = new ArrayList<>();
        addPart(parts, none, "with no defence");
        addPart(parts, one, "one failure away");
        addPart(parts, safe, "safe but below what is asked");
        return count(all.size(), "weak point") + ": " + String.join(", ", parts);
    }

    private static void addPart(List<String> parts, long count, String words) {
        if (count > 0) {
            parts.add(count + " " + words);
        }
    }

    private void addJoints() {
        add("", "Joints, " + result.evidence().joints().all().size() + ": " + JointCounts.inWords(result));
        int held = result.held().values().stream().mapToInt(Integer::intValue).sum();
        add("", "As asked: " + count(held, "place") + " by " + count(result.held().size(), "rule"));
    }

    /** Reasons that repeat are said once, with the pieces of each. */
    private void addUnchecked() {
        add("", "Not checked, " + result.unchecked().size() + (result.unchecked().isEmpty() ? "" : ":"));
        Map<String, List<Unchecked>> byReason = result.unchecked().stream()
                .collect(Collectors.groupingBy(u -> u.rule() + ": " + u.why(), TreeMap::new, Collectors.toList()));
        byReason.forEach((reason, list) -> {
            String pieces = list.stream().map(u -> String.join(" and ", u.pieces())).filter(s -> !s.isBlank())
                    .collect(Collectors.joining("; "));
            add("  ", reason + (pieces.isEmpty() ? "" : " (" + pieces + ")"));
        });
    }

    /** Names only; the reasons stand in the findings file. */
    private void addNotApplicable() {
        if (!result.notApplicable().isEmpty()) {
            add("", "Nothing to judge for " + count(result.notApplicable().size(), "rule") + ": "
                    + String.join(", ", result.notApplicable().keySet()) + " (the findings file says why)");
        }
    }

    private void addCautions() {
        add("", "Mind:");
        Cautions.of(result.evidence()).forEach(c -> add("  ", c.full()));
    }

    private void addCrashes() {
        for (Crash crash : result.crashes()) {
            add("", "FAILED: rule " + crash.rule() + " broke down, which is our fault (" + crash.what()
                    + "); the other rules went on. Please report it.");
        }
    }

    private void add(String leadIn, String text) {
        lines.addAll(hanging(leadIn, text));
    }

    private static List<String> hanging(String leadIn, String text) {
        return Columns.hanging(leadIn, PlainText.of(text), COLUMNS);
    }

    static String count(long n, String word) {
        return n + " " + word + (n == 1 ? "" : "s");
    }

    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
