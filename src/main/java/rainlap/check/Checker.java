package rainlap.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rainlap.geom.Box;
import rainlap.practice.Practice;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** Runs the rules over an elevation and ranks what they find. */
public final class Checker {
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Integer> held = new TreeMap<>();
    private final Map<String, String> notApplicable = new TreeMap<>();
    private final List<Unchecked> unchecked = new ArrayList<>();
    private final List<Crash> crashes = new ArrayList<>();

    private Checker() {}

    public static CheckResult check(Elevation elevation, Stage stage, Practice practice) {
        return check(Evidence.of(elevation, stage, practice), Rules.all());
    }

    /** With rules of the caller's choice, in any order: the result does not depend on it. */
    public static CheckResult check(Evidence evidence, List<Rule> rules) {
        Checker run = new Checker();
        rules.stream().sorted(Comparator.comparing(r -> r.info().id())).forEach(r -> run.apply(r, evidence));
        return new CheckResult(evidence, run.ranked(), run.held, run.notApplicable, run.unchecked, run.crashes);
    }

    private void apply(Rule rule, Evidence evidence) {
        String id = rule.info().id();
        try {
            List<Outcome> outcomes = rule.check(evidence).toList();
            outcomes.forEach(o -> take(id, o));
            int sound = (int) outcomes.stream().filter(Outcome.Holds.class::isInstance).count();
            if (sound > 0) {
                held.put(id, sound);
            }
        } catch (RuntimeException e) {
            crashes.add(new Crash(id, e.getClass().getSimpleName() + ": " + e.getMessage()));
        }
    }

    private void take(String rule, Outcome outcome) {
        if (outcome instanceof Outcome.Broken b) {
            findings.add(b.finding());
        } else if (outcome instanceof Outcome.DoesNotApply n) {
            notApplicable.put(rule, n.why());
        } else if (outcome instanceof Outcome.CannotTell c) {
            unchecked.add(new Unchecked(rule, c.pieces(), c.why()));
        }
    }

    private List<WeakPoint> ranked() {
        List<Ranked> ranked = new ArrayList<>(findings.stream().map(Ranked::new).toList());
        ranked.sort(Ranked.ORDER);
        List<WeakPoint> out = new ArrayList<>(ranked.size());
        ranked.forEach(r -> out.add(new WeakPoint(out.size() + 1, r.finding)));
        return out;
    }

    /** A finding with the box of its place, which every comparison asks for. */
    private record Ranked(Finding finding, Box box) {
        private static final Comparator<Ranked> ORDER = Comparator.comparingInt((Ranked r) -> r.finding.defences())
                .thenComparing(r -> r.finding.rule()).thenComparing(r -> r.finding.where().surface())
                .thenComparing(r -> r.box.minY(), Comparator.reverseOrder()).thenComparingLong(r -> r.box.minX())
                .thenComparing(r -> r.finding.where().wkt()).thenComparing(r -> String.join(" ", r.finding.pieces()));

        Ranked(Finding finding) {
            this(finding, finding.where().box());
        }
    }
}
