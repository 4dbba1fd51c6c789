package rainlap.rule.lap;

import java.util.stream.Stream;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** A membrane laps its neighbour along the course by less than the practice asks. */
public final class ShortEndLap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-end-lap", "end lap too short", RuleInfo.Theme.LAPS, Limit.END_LAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return new ShortLap(INFO, Limit.END_LAP, (outer, inner, missing, required) -> "Slide " + outer + " over " + inner + " by at least "
                + missing + " more, or slip a strip in behind " + outer + " and over " + inner + " that laps each by " + required)
                .check(e);
    }
}
