package rainlap.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import rainlap.practice.Practice;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.JointRule;
import rainlap.rule.OpeningRule;
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
        Found<List<Judged>> judged = new Found<>(() -> judged(rules, evidence, crew));
        crew.all(List.of(judged, new Found<>(evidence.trace()::packed)));
        judged.found().forEach(run::take);
        OnePlace.Merged merged = OnePlace.merged(evidence, run.findings, crew);
        Evidence told = evidence.with(evidence.trace().with(merged.ofTwoFailures()));
        told.trace().letGo();
        return new CheckResult(told, ranked(merged.findings()), run.held, run.notApplicable, run.unchecked, run.crashes);
    }

    private static List<Judged> judged(List<Rule> rules, Evidence e, Crew crew) {
        List<Supplier<List<Judged>>> all = new ArrayList<>();
        all.add(() -> Judged.placeByPlace(only(JointRule.class, rules), e, crew));
        all.add(() -> Judged.placeByPlace(only(OpeningRule.class, rules), e, crew));
        rules.stream().filter(r -> !(r instanceof JointRule || r instanceof OpeningRule)).forEach(r -> all.add(() -> List.of(Judged.by(r, e))));
        return crew.all(all).stream().flatMap(List::stream).sorted(Comparator.comparing(Judged::rule)).toList();
    }

    private static <R extends Rule> List<R> only(Class<R> sort, List<Rule> rules) {
        return rules.stream().filter(sort::isInstance).map(sort::cast).toList();
    }

    private void take(Judged judged) {
        judged.crash().ifPresent(crashes::add);
        judged.outcomes().forEach(o -> take(judged.rule(), o));
        if (judged.held() > 0) {
            held.put(judged.rule(), judged.held());
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
