package rainlap.rule.lap;

import java.util.stream.Stream;
import rainlap.joint.JointKind;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** A strip of nothing lies between the facing edges of two sheets. */
public final class OpenGap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("open-gap", "open gap", RuleInfo.Theme.LAPS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return new NoLap(INFO, JointKind.GAP).check(e);
    }
}
