package rainlap.rule.lap;

import rainlap.joint.JointKind;
import rainlap.rule.RuleInfo;

/** Two sheets meet edge to edge and do not lap. */
public final class ButtJoint extends NoLap {
    static final RuleInfo INFO = RuleInfo.of("butt-joint", "butt joint", RuleInfo.Theme.LAPS);

    public ButtJoint() {
        super(INFO, JointKind.BUTT);
    }
}
