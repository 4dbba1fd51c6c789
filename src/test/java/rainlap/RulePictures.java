package rainlap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.report.RuleExamples;
import rainlap.rule.Finding;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/**
 * Which of a rule's examples its page shows: one that breaks it and one that holds it, as near to the limit as the examples' names say,
 * {@code just-outside} and {@code exactly}; else the textbook case, which stands first.
 */
final class RulePictures {
    private RulePictures() {}

    /** A picture: the name of its file, what stands over it, and what was checked. */
    record Picture(String file, String caption, CheckResult result) {
        rainlap.drawing.Picture drawing() {
            return rainlap.drawing.Picture.of(result);
        }
    }

    static List<Picture> of(String rule) {
        List<Picture> out = new ArrayList<>();
        one(rule, "bad-", "just-").ifPresent(out::add);
        one(rule, "good-", "exactly-").ifPresent(out::add);
        return out;
    }

    private static Optional<Picture> one(String rule, String kind, String near) {
        List<String> names = RuleExamples.names(rule).stream().filter(n -> n.startsWith(kind)).toList();
        return names.stream().filter(n -> n.contains(near)).findFirst().or(() -> names.stream().findFirst()).map(n -> picture(rule, n));
    }

    private static Picture picture(String rule, String example) {
        Elevation e = ElevationFile.read(example, RuleExamples.bytes(rule, example)).elevation().orElseThrow();
        Practice practice = Practices.find(e.practice().orElse(Practices.COMMON)).orElseThrow();
        CheckResult result = Checker.check(e, Stage.drawn(e), practice);
        String file = rule + "-" + example.substring(0, example.length() - ".json".length()) + ".svg";
        return new Picture(file, e.name() + ": " + verdict(rule, result) + " by " + practice.id() + ", " + result.evidence().stage().word()
                + " stage", result);
    }

    private static String verdict(String rule, CheckResult result) {
        Optional<Finding> own = result.weakPoints().stream().map(WeakPoint::finding).filter(f -> f.rule().equals(rule)).findFirst();
        return own.map(f -> "broken, " + f.drawn() + (f.asked().isBlank() ? "" : "; asked: " + f.asked())).orElse("holds");
    }
}
