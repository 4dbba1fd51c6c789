package rainlap.rule.opening;

import java.util.List;
import java.util.stream.Stream;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Beside;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** No membrane reaches the upper edge of a head flashing: nothing laps over its upstand and nothing lies behind it. */
public final class MissingHeadFlap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("missing-head-flap", "no flap over the flashing", RuleInfo.Theme.OPENINGS);
    /** How far above or below the edge a sheet is still named: 300 mm. */
    private static final long NEAR = 30_000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return HeadStretch.judge(e, HeadEdge::withoutFlap, MissingHeadFlap::broken);
    }

    private static Outcome broken(HeadStretch s) {
        LimitValue asked = s.evidence().practice().get(Limit.HEAD_UPSTAND);
        List<String> near = Beside.membranes(s.evidence().stack(), s.line(), NEAR);
        String h = s.flashing();
        return Finding.of(INFO, s.place(), Stream.concat(Stream.of(h), near.stream()).toList()).asks(asked).measures(0)
                .reads(s.isTaped() ? "no flap, taped" : "no flap", asked.number() + " over the upstand")
                .says("No membrane reaches the upper edge of " + h + " over " + s.length() + ": nothing laps over its upstand"
                        + ". " + Asked.sentence(asked, "a lap of " + asked.number() + " over it"),
                        "Lay a strip of membrane " + s.length() + " long over the upstand of " + h + " by at least " + asked.number()
                        + ", its top at least " + LengthText.mm(MendSizes.lap(s.evidence()))
                        + " up under the sheet above, and tape its ends and the foot of that sheet.");
    }
}
