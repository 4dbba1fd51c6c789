package rainlap.rule.opening;

import java.util.stream.Stream;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** A head flashing lies in front of the membrane with nothing lapped over its upstand: water on the membrane runs in behind it. */
public final class FlashingInFront implements Rule {
    static final RuleInfo INFO = RuleInfo.of("flashing-in-front", "flashing in front", RuleInfo.Theme.OPENINGS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return HeadStretch.judge(e, HeadEdge::inFront, FlashingInFront::judge);
    }

    private static Outcome judge(HeadStretch s) {
        LimitValue asked = s.evidence().practice().get(Limit.HEAD_UPSTAND);
        if (asked.orTaped() && s.isTaped()) {
            return Outcome.Holds.of(s.pieces().toArray(String[]::new));
        }
        String h = s.flashing(), m = PieceWords.list(s.membranes());
        String taped = s.isTaped() ? ", held by tape alone" : "";
        return Finding.of(INFO, s.place(), s.pieces()).asks(asked).measures(0)
                .reads(s.isTaped() ? "0 behind, taped" : "0 behind", asked.number() + " behind")
                .says(h + " lies in front of " + m + taped + ", so water on " + m + " runs in behind its upstand"
                        + ". " + Asked.sentence(asked, "an upstand of " + asked.number() + " behind the membrane"),
                        "Slit " + m + " at 45° from both ends of " + h + ", lay the flap over the upstand by at least "
                        + asked.number() + " and tape the slits; or lap a second layer of membrane over it as far, its top under the"
                        + " course above. Mind the sheet-metal edges.");
    }
}
