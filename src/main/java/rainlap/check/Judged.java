package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.PlaceRule;
import rainlap.rule.Rule;
import rainlap.stack.Crew;

/** What one rule answered: how many places are as asked, and all else; where it failed, nothing but how. */
final class Judged {
    private final String rule;
    private final List<Outcome> outcomes = new ArrayList<>();
    private final Consumer<Outcome> taken = this::take;
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

    /** By rules that judge each place of one sort for itself, one place after the other. */
    static <P> List<Judged> placeByPlace(List<? extends PlaceRule<P>> rules, Evidence e, Crew crew) {
        List<P> places = rules.isEmpty() ? List.of() : rules.get(0).places(e);
        List<List<Judged>> runs = crew.inRuns(places, run -> asked(rules, e, run));
        List<Judged> all = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            Judged whole = new Judged(rules.get(i));
            for (List<Judged> run : runs) {
                whole.add(run.get(i));
            }
            PlaceRule<P> rule = rules.get(i);
            boolean silent = whole.held == 0 && whole.outcomes.isEmpty();
            whole.ask(tell -> rule.atLast(e, silent).forEach(tell));
            all.add(whole);
        }
        return all;
    }

    private static <P> List<Judged> asked(List<? extends PlaceRule<P>> rules, Evidence e, List<P> places) {
        List<Judged> all = rules.stream().map(Judged::new).toList();
        for (P p : places) {
            for (int i = 0; i < rules.size(); i++) {
                PlaceRule<P> rule = rules.get(i);
                all.get(i).ask(tell -> rule.judge(e, p, tell));
            }
        }
        return all;
    }

    /** A rule that has failed is not asked again. */
    private Judged ask(Consumer<Consumer<Outcome>> question) {
        try {
            if (crash.isEmpty()) {
                question.accept(taken);
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
}
