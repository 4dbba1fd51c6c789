package rainlap.rule.opening;

import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** The membrane laps over the upstand of a head flashing by less than asked. */
public final class ShortUpstand implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-upstand", "upstand too short", RuleInfo.Theme.OPENINGS, Limit.HEAD_UPSTAND);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        LimitValue asked = e.practice().get(Limit.HEAD_UPSTAND);
        return HeadStretch.judge(e, edge -> edge.lap().below(asked.hundredths()).intersect(edge.lapped()),
                s -> broken(s, asked));
    }

    private static Outcome broken(HeadStretch s, LimitValue asked) {
        long lap = Math.round(s.edge().lap().part(s.from(), s.to()).least());
        String h = s.flashing(), m = PieceWords.list(s.membranes()), mm = LengthText.mm(lap);
        return Finding.of(INFO, s.place(), s.pieces()).asks(asked).measures(lap)
                .reads(mm + " behind", asked.number() + " behind")
                .says(m + " laps over the upstand of " + h + " by only " + mm + ". " + Asked.sentence(asked), remedy(s, asked));
    }

    /** A flashing that is itself too low is replaced; else the sheet is brought down. */
    private static String remedy(HeadStretch s, LimitValue asked) {
        String h = s.flashing(), n = asked.number();
        Box box = s.edge().flashing().box();
        double stated = s.edge().flashing().piece().material().profile().upstandMm().orElse(Double.POSITIVE_INFINITY);
        if (Math.min(stated * 100, box.height()) < asked.hundredths()) {
            return "Replace " + h + " by one with an upstand of at least " + n + ", and lap the membrane over it by " + n + ".";
        }
        return "Lap a strip of membrane over the upstand of " + h + ", " + s.length() + " long and at least " + n
                + " down over it, its top at least " + LengthText.mm(MendSizes.lap(s.evidence())) + " up under "
                + PieceWords.list(s.membranes()) + ".";
    }
}
