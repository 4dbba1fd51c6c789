package rainlap.rule.edge;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.joint.Sheets;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.EdgeRole;

/** The membrane, or a flashing beneath it, comes down past the base of the wall by less than asked. */
public final class UncoveredBase implements Rule {
    static final RuleInfo INFO = RuleInfo.of("uncovered-base", "base not covered", RuleInfo.Theme.EDGES, Limit.BASE_COVER);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        LimitValue asked = e.practice().get(Limit.BASE_COVER);
        List<PastEdge> bases = PastEdge.of(e, Set.of(EdgeRole.BASE), Sheets::covers);
        return bases.isEmpty() ? Stream.of(new Outcome.DoesNotApply("the outline has no base"))
                : bases.stream().flatMap(b -> b.judge(b.reached(), b.reached().minus(b.past(asked.hundredths())), s -> broken(s, e, asked)));
    }

    private static Outcome broken(PastEdge.Stretch s, Evidence e, LimitValue asked) {
        List<String> pieces = s.pieces(0);
        String mm = LengthText.mm(s.least()), lap = e.practice().get(Limit.COURSE_LAP).number();
        return Finding.of(INFO, s.place(), pieces).asks(asked).measures(s.least())
                .reads(mm + " past", asked.number() + " past")
                .says(PieceWords.does(pieces, "runs", "run") + (s.least() == 0 ? " no further than the base" : " only " + mm + " past the base") + " over " + s.length()
                        + ": what runs off there is drawn in under the foot of the wall. " + Asked.sentence(asked, asked.number() + " past the base"),
                        "Slip a strip of membrane " + s.length() + " long in behind " + PieceWords.list(pieces) + ", " + lap + " up, and bring it down at least " + asked.number()
                        + " past the base; tape the joint.");
    }
}
