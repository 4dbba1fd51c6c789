package rainlap.rule;

import java.util.stream.Stream;

/** One thing that is looked for. */
public interface Rule {
    RuleInfo info();

    /** One outcome for each place looked at; when there is none to look at, one {@link Outcome.DoesNotApply}. */
    Stream<Outcome> check(Evidence e);
}
