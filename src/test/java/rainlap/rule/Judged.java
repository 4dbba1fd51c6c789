package rainlap.rule;

import java.util.List;
import java.util.stream.Collectors;
import rainlap.joint.Drawn;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** What one rule says of a drawn wall, as text for tests. */
public final class Judged {
    private Judged() {}

    public static List<Outcome> outcomes(Rule rule, Elevation e, Practice practice) {
        return rule.check(Evidence.of(e, Stage.WRAP, practice)).toList();
    }

    /** Findings under {@code common}, one a line: pieces, place, drawn / asked. */
    public static String found(Rule rule, Drawn wall) {
        return found(rule, wall, "common");
    }

    public static String found(Rule rule, Drawn wall, String practice) {
        return findings(rule, wall, practice).stream().map(Judged::text).sorted().collect(Collectors.joining("\n"));
    }

    public static List<Finding> findings(Rule rule, Drawn wall, String practice) {
        return outcomes(rule, wall.elevation(), Practices.find(practice).orElseThrow()).stream()
                .filter(o -> o instanceof Outcome.Broken).map(o -> ((Outcome.Broken) o).finding()).toList();
    }

    /** How many places hold, and that nothing else was said but findings. */
    public static long held(Rule rule, Drawn wall, String practice) {
        return outcomes(rule, wall.elevation(), Practices.find(practice).orElseThrow()).stream()
                .filter(o -> o instanceof Outcome.Holds).count();
    }

    private static String text(Finding f) {
        return String.join(" ", f.pieces()) + " | " + f.where().inWords() + " | " + f.drawn() + " / " + f.asked();
    }
}
