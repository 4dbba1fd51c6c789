package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rainlap.joint.Joint;
import rainlap.rule.Evidence;
import rainlap.rule.JointRule;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.stack.Crew;

/** What one rule answered: how many places are as asked, and all else; where it failed, nothing but how. */
final class Judged {
    private final String rule;
    private final List<Outcome> outcomes = new ArrayList<>();
    private int held;
    private Optional<Crash> crash = Optional.empty();

    private Judged(Rule rule) {
        this.rule = rule.info().id();
    }

    String rule() {
        return rule;
    }

    /** All but that a place is as asked. */
    List<Outcome> outcomes() {
        return outcomes;
    }

    int held() {
        return held;
    }

    Optional<Crash> crash() {
        return crash;
    }

    /** By one rule. */
    static Judged by(Rule rule, Evidence e) {
        return new Judged(rule).ask(tell -> rule.check(e).forEach(tell));
    }

    /** By rules that judge each joint for itself, one joint after the other. */
    static List<Judged> jointByJoint(List<JointRule> rules, Evidence e, Crew crew) {
        List<List<Judged>> runs = crew.inRuns(e.jointsHere(), joints -> asked(rules, e, joints));
        List<Judged> all = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            Judged whole = new Judged(rules.get(i));
            for (List<Judged> run : runs) {
                whole.add(run.get(i));
            }
            whole.closed(rules.get(i).none());
            all.add(whole);
        }
        return all;
    }

    private static List<Judged> asked(List<JointRule> rules, Evidence e, List<Joint> joints) {
        List<Judged> all = rules.stream().map(Judged::new).toList();
        for (Joint j : joints) {
            for (int i = 0; i < rules.size(); i++) {
                JointRule rule = rules.get(i);
                all.get(i).ask(tell -> rule.judge(e, j, tell));
            }
        }
        return all;
    }

    /** A rule that has failed is not asked again. */
    private Judged ask(Consumer<Consumer<Outcome>> question) {
        try {
            if (crash.isEmpty()) {
                question.accept(this::take);
            }
        } catch (RuntimeException failed) {
            fail(new Crash(rule, failed.getClass().getSimpleName() + ": " + failed.getMessage()));
        }
        return this;
    }

    private void take(Outcome o) {
        if (o instanceof Outcome.Holds) {
            held++;
        } else {
            outcomes.add(o);
        }
    }

    private void fail(Crash how) {
        outcomes.clear();
        held = 0;
        crash = Optional.of(how);
    }

    private void add(Judged more) {
        if (crash.isEmpty()) {
            outcomes.addAll(more.outcomes);
            held += more.held;
            more.crash.ifPresent(this::fail);
        }
    }

    private void closed(String none) {
        if (crash.isEmpty() && held == 0 && outcomes.isEmpty()) {
            outcomes.add(new Outcome.DoesNotApply(none));
        }
    }
}
