package rainlap.rule.lap;

import java.util.stream.Stream;
import rainlap.joint.JointKind;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** Two sheets meet edge to edge and do not lap. */
public final class ButtJoint implements Rule {
    static final RuleInfo INFO = RuleInfo.of("butt-joint", "butt joint", RuleInfo.Theme.LAPS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return new NoLap(INFO, JointKind.BUTT).check(e);
    }
}
