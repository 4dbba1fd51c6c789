package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import rainlap.check.CheckResult;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.source.Source;
import rainlap.water.Assumption;
import rainlap.water.Drive;
import rainlap.water.DrivingRain;

/** What goes into the figures on water: how far it is driven, and what rain falls on the wall where some is stated. */
final class TakenForGranted {
    private static final List<Columns.Column> COLUMNS = List.of(new Columns.Column("", 2, false), new Columns.Column("", 26, false),
            new Columns.Column("", 14, false), new Columns.Column("", 52, false));

    private TakenForGranted() {}

    static List<Assumption> all(Evidence e) {
        List<Assumption> out = new ArrayList<>(e.trace().drive().assumptions());
        DrivingRain.of(e.elevation().exposure()).ifPresent(rain -> out.addAll(rain.assumptions()));
        return out;
    }

    /** For a terminal: how far water is driven, then a line or two for each figure. Those on rain only where litres are given. */
    static List<String> lines(CheckResult result) {
        Drive drive = result.evidence().trace().drive();
        boolean litres = result.weakPoints().stream().anyMatch(w -> w.finding().litresPerHour().isPresent());
        List<String> out = new ArrayList<>(Columns.hanging("", "Water was followed over the whole wall: lifted "
                + LengthText.mm(drive.rise()) + " mm under lower edges, pushed " + LengthText.mm(drive.creep())
                + " mm under side edges. Taken for granted:", TerminalTable.COLUMNS));
        Columns columns = new Columns(COLUMNS);
        List<Assumption> shown = litres ? all(result.evidence()) : drive.assumptions();
        shown.forEach(a -> columns.add(List.of("", PlainText.of(a.what()), PlainText.of(a.figure()), PlainText.of(why(a)))));
        for (int i = 0; i < shown.size(); i++) {
            out.addAll(columns.row(i));
        }
        return out;
    }

    private static String why(Assumption a) {
        return a.source().map(Source::text).orElse("as the elevation states") + (a.note().isBlank() ? "" : ". " + a.note());
    }
}
