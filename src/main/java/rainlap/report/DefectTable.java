package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rainlap.defect.AsDrawn;
import rainlap.defect.NotPlaced;
import rainlap.defect.Pressure;
import rainlap.defect.Result;
import rainlap.defect.Study;
import rainlap.rule.water.Steps;

/** The holes of a study as plain text for a terminal. */
public final class DefectTable {
    private static final List<Columns.Column> HEADINGS = List.of(new Columns.Column("hole", 4, true), new Columns.Column("at", 13, false),
            new Columns.Column("of", 22, false), new Columns.Column("place", 14, false), new Columns.Column("through", 7, false),
            new Columns.Column("by", 5, false), new Columns.Column("result", 13, false), new Columns.Column("as drawn", 8, false));
    private static final int INDENT = 6;

    private final Study study;
    private final List<String> lines = new ArrayList<>();

    private DefectTable(Study study) {
        this.study = study;
    }

    /** The lines for one wall, without line ends. */
    public static List<String> lines(Study study) {
        DefectTable table = new DefectTable(study);
        table.add("", "Simulated defects: 6 mm holes after " + Pressure.TEST.text());
        table.add("", study.says());
        study.asDrawn().forEach(table::addPressure);
        table.addHoles();
        table.addNotPlaced();
        return List.copyOf(table.lines);
    }

    private void addPressure(AsDrawn a) {
        String frame = a.wetsFrame() ? "the frame is wet as drawn" : "the frame is dry as drawn";
        String battens = a.pools().isEmpty() ? "" : "; water pools as drawn on " + String.join(", ", a.pools());
        add("  " + (a.pressure().name() + "      ").substring(0, 7), a.pressure().inWords() + "; " + a.pressure().says() + "; " + frame + battens);
    }

    private void addHoles() {
        if (study.holes().isEmpty()) {
            add("", "No hole could be placed: nothing was tested.");
            return;
        }
        Columns columns = new Columns(HEADINGS);
        List<List<String>> notes = new ArrayList<>();
        for (Study.Followed f : study.holes()) {
            for (List<Result> same : alike(f.results())) {
                boolean first = same.get(0) == f.results().get(0);
                columns.add(cells(f, same, first));
                notes.add(note(same.get(0)));
            }
        }
        lines.add("");
        lines.addAll(columns.heading());
        for (int i = 0; i < notes.size(); i++) {
            lines.addAll(columns.row(i));
            lines.addAll(notes.get(i));
        }
        lines.add("");
        add("", counts());
        add("", "As drawn: the same place in rain without the hole, at the frame behind it where the result is neither.");
    }

    /** Results that say the same, together. */
    private static List<List<Result>> alike(List<Result> results) {
        List<List<Result>> out = new ArrayList<>();
        for (Result r : results) {
            out.stream().filter(g -> g.get(0).saysTheSame(r)).findFirst().ifPresentOrElse(g -> g.add(r), () -> out.add(new ArrayList<>(List.of(r))));
        }
        return out;
    }

    private static List<String> cells(Study.Followed f, List<Result> same, boolean first) {
        String by = same.size() == f.results().size() ? "both" : same.get(0).pressure().name();
        String result = verdict(same.get(0)), asDrawn = same.get(0).asDrawn() ? "wet" : "dry";
        return !first ? List.of("", "", "", "", "", by, result, asDrawn)
                : List.of(Integer.toString(f.number()), f.hole().kind().word(), PlainText.of(f.hole().of()), f.hole().middleInWords(),
                        PlainText.of(f.hole().piece().id()), by, result, asDrawn);
    }

    private static String verdict(Result r) {
        List<String> parts = new ArrayList<>();
        if (r.frame().isPresent()) {
            parts.add("reaches frame");
        }
        if (!r.pools().isEmpty()) {
            parts.add("pools on " + PlainText.of(String.join(", ", r.pools())));
        }
        return parts.isEmpty() ? "neither" : String.join(", ", parts);
    }

    private static List<String> note(Result r) {
        if (r.frame().isEmpty()) {
            return List.of();
        }
        String way = r.path().isEmpty() ? "nothing lies behind it: rain wets the frame" : Steps.told(r.path());
        return Columns.hanging(" ".repeat(INDENT), PlainText.of(r.frame().get().inWords() + ": " + way), TerminalTable.COLUMNS);
    }

    private String counts() {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < study.asDrawn().size(); i++) {
            int at = i;
            long frame = study.holes().stream().filter(h -> h.results().get(at).frame().isPresent()).count();
            long pools = study.holes().stream().filter(h -> !h.results().get(at).pools().isEmpty()).count();
            List<String> already = study.asDrawn().get(i).pools();
            parts.add(study.asDrawn().get(i).pressure().name() + ": " + frame + " would reach the frame, " + pools + " would pool on a batten"
                    + (already.isEmpty() ? "" : " (without any hole water pools on " + already.size() + ": " + String.join(", ", already) + ")"));
        }
        int n = study.holes().size();
        return n + (n == 1 ? " hole. " : " holes. ") + String.join(". ", parts) + ".";
    }

    /** Reasons that repeat are said once, with what they hold for. */
    private void addNotPlaced() {
        add("", "Not placed, " + study.notPlaced().size() + (study.notPlaced().isEmpty() ? "" : ":"));
        Map<String, List<String>> byReason = new TreeMap<>();
        for (NotPlaced n : study.notPlaced()) {
            List<String> of = byReason.computeIfAbsent(n.kind().word() + ": " + n.why(), k -> new ArrayList<>());
            if (!n.of().isEmpty()) {
                of.add(n.of());
            }
        }
        byReason.forEach((why, of) -> add("  ", why + (of.isEmpty() ? "" : " (" + of.size() + ": " + String.join("; ", of) + ")")));
    }

    private void add(String leadIn, String text) {
        lines.addAll(Columns.hanging(leadIn, PlainText.of(text), TerminalTable.COLUMNS));
    }
}
