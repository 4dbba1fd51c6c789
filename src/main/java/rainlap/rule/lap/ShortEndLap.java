package rainlap.rule.lap;

import rainlap.practice.Limit;
import rainlap.rule.RuleInfo;

/** A membrane laps its neighbour along the course by less than the practice asks. */
public final class ShortEndLap extends ShortLap {
    static final RuleInfo INFO = RuleInfo.of("short-end-lap", "end lap too short", RuleInfo.Theme.LAPS, Limit.END_LAP);

    public ShortEndLap() {
        super(INFO, Limit.END_LAP, (outer, inner, missing, required) -> "Slide " + outer + " over " + inner + " by at least "
                + missing + " more, or slip a strip in behind " + outer + " and over " + inner + " that laps each by " + required);
    }
}
