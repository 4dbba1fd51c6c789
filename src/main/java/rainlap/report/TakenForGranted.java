package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import rainlap.check.CheckResult;
import rainlap.measure.LengthText;
import rainlap.measure.LitresText;
import rainlap.rule.Evidence;
import rainlap.source.Source;
import rainlap.water.Assumption;
import rainlap.water.Balance;
import rainlap.water.Drive;
import rainlap.water.DrivingRain;

/** What goes into the figures on water: how far it is driven, and what rain falls on the wall where some is stated. */
public final class TakenForGranted {
    private static final List<Columns.Column> COLUMNS = List.of(new Columns.Column("", 2, false), new Columns.Column("", 26, false),
            new Columns.Column("", 14, false), new Columns.Column("", 52, false));

    private static final List<Columns.Column> SHARES = List.of(new Columns.Column("", 2, false), new Columns.Column("", 40, false),
            new Columns.Column("", 8, true), new Columns.Column("", 6, true));
    private static final String NO_RAIN = "No litres an hour (l/h): the elevation states no rain. Give rain_mm_h in its exposure.";
    private static final String RAIN = "Litres an hour (l/h) are what runs over or beside the place of a weak point, or falls on it, on whatever lies outermost"
            + " there; a dash where that is not reckoned, as in reveals, round pipes and at corners of the building. Where the rain goes, as drawn:";

    private TakenForGranted() {}

    /** All figures on water that were taken for granted. */
    public static List<Assumption> all(Evidence e) {
        List<Assumption> out = new ArrayList<>(e.trace().drive().assumptions());
        DrivingRain.of(e.elevation().exposure()).ifPresent(rain -> out.addAll(rain.assumptions()));
        return out;
    }

    /** For a terminal: how far water is driven, a line or two for each figure, and where the rain goes. */
    static List<String> lines(CheckResult result) {
        Drive drive = result.evidence().trace().drive();
        List<String> out = new ArrayList<>(Columns.hanging("", "Water was followed over the whole wall: lifted "
                + LengthText.mm(drive.rise()) + " mm under lower edges, pushed " + LengthText.mm(drive.creep())
                + " mm under side edges. Taken for granted:", TerminalTable.COLUMNS));
        Columns columns = new Columns(COLUMNS);
        List<Assumption> shown = all(result.evidence());
        shown.forEach(a -> columns.add(List.of("", PlainText.of(a.what()), PlainText.of(a.figure()), PlainText.of(why(a)))));
        for (int i = 0; i < shown.size(); i++) {
            out.addAll(columns.row(i));
        }
        out.addAll(result.evidence().trace().balance().map(b -> balance(b, result.evidence())).orElseGet(() -> Columns.hanging("", NO_RAIN, TerminalTable.COLUMNS)));
        return out;
    }

    private static List<String> balance(Balance b, Evidence e) {
        List<Balance.Share> shares = e.trace().shares();
        List<String> out = new ArrayList<>(Columns.hanging("", RAIN, TerminalTable.COLUMNS));
        Columns columns = new Columns(SHARES);
        columns.add(List.of("", e.elevation().openings().isEmpty() ? "falls on the wall" : "falls on the wall and its openings", LitresText.perHour(b.fallen()), ""));
        shares.forEach(s -> columns.add(List.of("", s.says() + s.inBrackets(), LitresText.perHour(s.litresPerHour()),
                LitresText.percent(s.litresPerHour(), b.fallen()))));
        for (int i = 0; i <= shares.size(); i++) {
            out.addAll(columns.row(i));
        }
        return out;
    }

    private static String why(Assumption a) {
        return a.source().map(Source::text).orElse("as the elevation states") + (a.note().isBlank() ? "" : ". " + a.note());
    }
}
