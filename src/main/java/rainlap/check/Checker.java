package rainlap.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import rainlap.practice.Practice;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.stack.Crew;
import rainlap.stack.Found;
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

    /** On at most so many threads; the result does not depend on how many. */
    public static CheckResult check(Elevation elevation, Stage stage, Practice practice, List<Rule> rules, int threads) {
        Crew crew = Crew.of(threads, elevation.pieces().size());
        return check(Evidence.of(elevation, stage, practice, crew), rules, crew);
    }

    /** With rules of the caller's choice, in any order: the result does not depend on it. */
    public static CheckResult check(Evidence evidence, List<Rule> rules) {
        return check(evidence, rules, Crew.ALONE);
    }

    static CheckResult check(Evidence evidence, List<Rule> rules, Crew crew) {
        Checker run = new Checker();
        List<Supplier<Judged>> all = new ArrayList<>();
        rules.stream().sorted(Comparator.comparing(r -> r.info().id())).forEach(r -> all.add(() -> judge(r, evidence)));
        Found<List<Judged>> judged = new Found<>(() -> crew.all(all));
        crew.all(List.of(judged, new Found<>(evidence.trace()::packed)));
        judged.found().forEach(run::take);
        OnePlace.Merged merged = OnePlace.merged(evidence, run.findings, crew);
        Evidence told = evidence.with(evidence.trace().with(merged.ofTwoFailures()));
        told.trace().letGo();
        return new CheckResult(told, ranked(merged.findings()), run.held, run.notApplicable, run.unchecked, run.crashes);
    }

    /** What one rule answered, and of how many places that they are as asked; where it failed, nothing but how. */
    private record Judged(String rule, List<Outcome> outcomes, int held, Optional<Crash> crash) {}

    private static Judged judge(Rule rule, Evidence evidence) {
        String id = rule.info().id();
        try {
            List<Outcome> told = new ArrayList<>();
            int[] held = {0};
            rule.check(evidence).forEach(o -> {
                if (o instanceof Outcome.Holds) {
                    held[0]++;
                } else {
                    told.add(o);
                }
            });
            return new Judged(id, told, held[0], Optional.empty());
        } catch (RuntimeException e) {
            return new Judged(id, List.of(), 0, Optional.of(new Crash(id, e.getClass().getSimpleName() + ": " + e.getMessage())));
        }
    }

    private void take(Judged judged) {
        judged.crash.ifPresent(crashes::add);
        judged.outcomes.forEach(o -> take(judged.rule, o));
        if (judged.held > 0) {
            held.put(judged.rule, judged.held);
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

    private static List<WeakPoint> ranked(List<Finding> merged) {
        List<Ranked> ranked = new ArrayList<>(merged.stream().map(f -> new Ranked(0, f)).toList());
        ranked.sort(Ranked.ORDER);
        List<WeakPoint> out = new ArrayList<>(ranked.size());
        ranked.forEach(r -> out.add(new WeakPoint(out.size() + 1, r.finding())));
        return out;
    }
}
