package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rainlap.defect.AsDrawn;
import rainlap.defect.Pressure;
import rainlap.defect.Result;
import rainlap.defect.Study;
import rainlap.rule.water.Steps;

/** The holes of one study, or of one for each wall of a building, as plain text for a terminal. */
public final class DefectTable {
    private static final List<Columns.Column> HEADINGS = List.of(new Columns.Column("hole", 4, true), new Columns.Column("at", 13, false),
            new Columns.Column("of", 22, false), new Columns.Column("place", 14, false), new Columns.Column("through", 7, false),
            new Columns.Column("by", 5, false), new Columns.Column("result", 13, false), new Columns.Column("as drawn", 8, false));
    private static final int INDENT = 6;

    private final Map<String, Study> walls;
    private final List<String> lines = new ArrayList<>();

    private DefectTable(Map<String, Study> walls) {
        this.walls = walls;
    }

    /** The lines for one wall, without line ends. */
    public static List<String> lines(Study study) {
        return lines(Map.of("", study));
    }

    /**
     * The lines for a building: all holes in one list.
     *
     * @param walls the study of each wall by its id, in the order of the list; what is on a wall has its id before it
     */
    public static List<String> lines(Map<String, Study> walls) {
        DefectTable table = new DefectTable(walls);
        table.add("", "Simulated defects: 6 mm holes after " + Pressure.TEST.text());
        walls.values().stream().map(Study::says).distinct().forEach(says -> table.add("", says));
        walls.forEach((wall, study) -> study.asDrawn().forEach(a -> table.addPressure(wall, study, a)));
        table.addHoles();
        table.addNotPlaced();
        return List.copyOf(table.lines);
    }

    private static String named(String wall, String thing) {
        return wall.isEmpty() || thing.isEmpty() ? thing : wall + " " + thing;
    }

    private void addPressure(String wall, Study study, AsDrawn a) {
        String frame = "the frame " + (study.isJoined() ? "here or on a wall beside it " : "") + (a.wetsFrame() ? "is wet as drawn" : "is dry as drawn");
        String battens = a.pools().isEmpty() ? "" : "; water pools as drawn on " + String.join(", ", a.pools());
        add("  " + named(wall, (a.pressure().name() + "      ").substring(0, 7)), a.pressure().inWords() + "; " + a.pressure().says() + "; " + frame + battens);
    }

    private void addHoles() {
        if (walls.values().stream().allMatch(s -> s.holes().isEmpty())) {
            add("", "No hole could be placed: nothing was tested.");
            return;
        }
        Columns columns = new Columns(HEADINGS);
        List<List<String>> notes = new ArrayList<>();
        walls.forEach((wall, study) -> study.holes().forEach(f -> {
            for (List<Result> same : alike(f.results())) {
                boolean first = same.get(0) == f.results().get(0);
                columns.add(cells(wall, f, same, first));
                notes.add(note(study, same.get(0)));
            }
        }));
        lines.add("");
        lines.addAll(columns.heading());
        for (int i = 0; i < notes.size(); i++) {
            lines.addAll(columns.row(i));
            lines.addAll(notes.get(i));
        }
        lines.add("");
        walls.forEach((wall, study) -> add("", (wall.isEmpty() ? "" : wall + ", ") + counts(study)));
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

    private static List<String> cells(String wall, Study.Followed f, List<Result> same, boolean first) {
        String by = same.size() == f.results().size() ? "both" : same.get(0).pressure().name();
        String result = verdict(same.get(0)), asDrawn = same.get(0).asDrawn() ? "wet" : "dry";
        return !first ? List.of("", "", "", "", "", by, result, asDrawn)
                : List.of(Integer.toString(f.number()), f.hole().kind().word(), PlainText.of(named(wall, f.hole().of())), f.hole().middleInWords(),
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

    private static List<String> note(Study study, Result r) {
        if (r.frame().isEmpty()) {
            return List.of();
        }
        String way = r.path().isEmpty() ? "nothing lies behind it: rain wets the frame" : Steps.told(r.path());
        return Columns.hanging(" ".repeat(INDENT), PlainText.of((study.isRound(r.frame().get()) ? "round the corner, " : "") + r.frame().get().inWords() + ": " + way), TerminalTable.COLUMNS);
    }

    private static String counts(Study study) {
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
        long all = walls.values().stream().mapToLong(s -> s.notPlaced().size()).sum();
        add("", "Not placed, " + all + (all == 0 ? "" : ":"));
        Map<String, List<String>> byReason = new TreeMap<>();
        walls.forEach((wall, study) -> study.notPlaced().forEach(n -> {
            List<String> of = byReason.computeIfAbsent(n.kind().word() + ": " + n.why(), k -> new ArrayList<>());
            if (!n.of().isEmpty() || !wall.isEmpty()) {
                of.add(n.of().isEmpty() ? wall : named(wall, n.of()));
            }
        }));
        byReason.forEach((why, of) -> add("  ", why + (of.isEmpty() ? "" : " (" + of.size() + ": " + String.join("; ", of) + ")")));
    }

    private void add(String leadIn, String text) {
        lines.addAll(Columns.hanging(leadIn, PlainText.of(text), TerminalTable.COLUMNS));
    }
}
