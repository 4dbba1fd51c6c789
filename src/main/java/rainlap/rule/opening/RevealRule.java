package rainlap.rule.opening;

import java.util.function.Consumer;
import java.util.stream.Stream;
import rainlap.rule.Evidence;
import rainlap.rule.OpeningRule;
import rainlap.rule.Outcome;
import rainlap.wall.Opening;

/** A rule that judges what is turned into the reveal of each opening; one without a reveal has nothing to turn into. */
interface RevealRule extends OpeningRule {
    /** Tells one outcome for each thing that it looks at in the reveal. */
    void judgeReveal(Evidence e, Opening o, Consumer<Outcome> tell);

    @Override
    default void judge(Evidence e, Opening o, Consumer<Outcome> tell) {
        if (o.reveal() > 0) {
            judgeReveal(e, o, tell);
        }
    }

    @Override
    default Stream<Outcome> atLast(Evidence e, boolean silent) {
        return Stream.concat(OpeningRule.super.atLast(e, silent), e.elevation().openings().stream().filter(o -> o.reveal() == 0)
                .map(o -> new Outcome.DoesNotApply(o.id() + " has no reveal")));
    }
}
