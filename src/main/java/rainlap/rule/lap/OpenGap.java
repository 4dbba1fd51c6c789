package rainlap.rule.lap;

import rainlap.joint.JointKind;
import rainlap.rule.RuleInfo;

/** A strip of nothing lies between the facing edges of two sheets. */
public final class OpenGap extends NoLap {
    static final RuleInfo INFO = RuleInfo.of("open-gap", "open gap", RuleInfo.Theme.LAPS);

    public OpenGap() {
        super(INFO, JointKind.GAP);
    }
}
