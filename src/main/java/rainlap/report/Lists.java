package rainlap.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rainlap.check.BuildingResult;
import rainlap.check.CheckResult;
import rainlap.report.ListTable.Column;

/**
 * What a check found as lists for spreadsheets: weak points, worst first, and joints. As CSV each is a file, as XLSX each is a sheet of one
 * workbook, with a third of notes. Same input, same bytes.
 */
public final class Lists {
    /** What a workbook ends with, by which it is known again. */
    public static final String WORKBOOK_END = Xlsx.MARK;

    private final ListTable weakPoints;
    private final ListTable joints;
    private final ListTable notes;

    private Lists(List<WeakPointList.Row> weakPoints, Map<String, CheckResult> walls) {
        this.weakPoints = WeakPointList.of(weakPoints);
        this.joints = JointList.of(walls.entrySet().stream().flatMap(e -> JointList.rows(e.getKey(), e.getValue())).toList());
        this.notes = notes(walls);
    }

    /** Of one elevation. */
    public static Lists of(CheckResult result) {
        String name = result.evidence().elevation().name();
        return new Lists(result.weakPoints().stream().map(p -> new WeakPointList.Row(name, result, p)).toList(), Map.of(name, result));
    }

    /** Of a building: all its walls in one. */
    public static Lists of(BuildingResult result) {
        Map<String, CheckResult> walls = new LinkedHashMap<>();
        result.walls().forEach(w -> walls.put(w.wall().id(), w.result()));
        return new Lists(result.weakPoints().stream().map(r -> new WeakPointList.Row(r.wall(), walls.get(r.wall()), r.point())).toList(), walls);
    }

    /** The first line of each CSV file, by which it is known again. */
    public static List<String> firstLines() {
        return Stream.of(WeakPointList.of(List.of()), JointList.of(List.of())).map(Csv::heading).toList();
    }

    /** Writes the weak points as CSV; the stream stays open. */
    public void writeWeakPoints(OutputStream out) throws IOException {
        Csv.write(weakPoints, out);
    }

    /** Writes the joints as CSV; the stream stays open. */
    public void writeJoints(OutputStream out) throws IOException {
        Csv.write(joints, out);
    }

    /** Writes all as one workbook; the stream stays open. */
    public void writeWorkbook(OutputStream out) throws IOException {
        Xlsx.write(tables(), out);
    }

    /** In the order of the workbook's sheets. */
    List<ListTable> tables() {
        return List.of(weakPoints, joints, notes);
    }

    private static ListTable notes(Map<String, CheckResult> walls) {
        List<String[]> rows = walls.entrySet().stream().map(e -> new String[] {e.getKey(), about(e.getValue())}).toList();
        List<String[]> words = List.of(
                new String[] {"Not checked", "What could not be told is in no list: the table on the terminal and the findings file say why, for each place."},
                new String[] {"Lengths", "In mm; x from the wall's left end, level above its base. What lies in a reveal is laid flat into the opening."},
                new String[] {"Litres", "Litres an hour; empty where they are not reckoned."},
                new String[] {"Texts", "One that a spreadsheet would run as a formula has an apostrophe before it."},
                new String[] {"Caution", String.join(" ", TerminalTable.caution())});
        return ListTable.of("Notes", List.of(new Column<String[]>("of", 24, r -> Cell.of(r[0])), new Column<String[]>("note", 110, r -> Cell.of(r[1]))),
                Stream.concat(rows.stream(), words.stream()).toList());
    }

    private static String about(CheckResult r) {
        String failed = r.crashes().isEmpty() ? "" : "; FAILED: " + TerminalTable.count(r.crashes().size(), "rule") + ", which is our fault";
        return r.evidence().elevation().name() + ": practice " + r.evidence().practice().id() + ", stage " + r.evidence().stage().word() + "; "
                + TerminalTable.counts(r.weakPoints()) + "; " + TerminalTable.count(r.evidence().joints().all().size(), "joint") + "; not checked, "
                + r.unchecked().size() + failed;
    }
}
