package rainlap.rule;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.file.ElevationFile;
import rainlap.file.Reading;
import rainlap.measure.LengthText;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** A small wall written as a file writes it (with single quotes), and what a rule says of it, as text for tests. */
public final class Written {
    private Written() {}

    /** A wall 1800 wide and 1600 high, with these roles of base, right side, top and left side; pieces one an argument. */
    public static Elevation wall(String roles, String openings, String... pieces) {
        return read("{'rainlap': 1, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]], 'edges': [" + roles + "]}, 'openings': ["
                + openings + "], 'pieces': [" + String.join(",\n", pieces) + "]}");
    }

    public static Elevation read(String json) {
        Reading r = ElevationFile.read("written.json", json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
        return r.elevation().orElseThrow(() -> new AssertionError(String.join("\n",
                r.problems().stream().flatMap(p -> p.lines().stream()).toList())));
    }

    /** Every outcome under {@code common}, one a line, in the rule's order. */
    public static String said(Rule rule, Elevation e) {
        return said(rule, e, Practices.common());
    }

    public static String said(Rule rule, Elevation e, Practice practice) {
        return outcomes(rule, e, practice).map(Written::text).collect(Collectors.joining("\n"));
    }

    /** At a stage of the caller's choice. */
    public static String said(Rule rule, Elevation e, Practice practice, Stage stage) {
        return rule.check(Evidence.of(e, stage, practice)).map(Written::text).collect(Collectors.joining("\n"));
    }

    /** The findings alone. */
    public static String found(Rule rule, Elevation e) {
        return outcomes(rule, e, Practices.common()).filter(o -> o instanceof Outcome.Broken).map(Written::text)
                .collect(Collectors.joining("\n"));
    }

    public static List<Finding> findings(Rule rule, Elevation e) {
        return outcomes(rule, e, Practices.common()).filter(o -> o instanceof Outcome.Broken)
                .map(o -> ((Outcome.Broken) o).finding()).toList();
    }

    private static Stream<Outcome> outcomes(Rule rule, Elevation e, Practice practice) {
        return rule.check(Evidence.of(e, Stage.WRAP, practice));
    }

    private static String text(Outcome o) {
        if (o instanceof Outcome.Holds h) {
            return ("holds " + String.join(" ", h.pieces())).strip();
        }
        if (o instanceof Outcome.DoesNotApply n) {
            return "not here: " + n.why();
        }
        if (o instanceof Outcome.CannotTell c) {
            return ("cannot tell " + String.join(" ", c.pieces())).strip() + ": " + c.why();
        }
        Finding f = ((Outcome.Broken) o).finding();
        return "broken " + String.join(" ", f.pieces()) + " | " + f.where().inWords() + " | " + number(f.measured()) + " of "
                + number(f.required()) + (f.defences() == Finding.MANY ? "" : " | defences " + f.defences());
    }

    private static String number(OptionalDouble v) {
        return v.isEmpty() ? "-" : LengthText.mm(Math.round(v.getAsDouble() * 100));
    }
}
