package rainlap.rule.edge;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.joint.Sheets;
import rainlap.material.Edge;
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

/** At an eave, verge or parapet the membrane ends at the top of the wall and is neither turned over it nor sealed there. */
public final class OpenTop implements Rule {
    static final RuleInfo INFO = RuleInfo.of("open-top", "top left open", RuleInfo.Theme.EDGES, Limit.TOP_TURN);
    private static final Set<EdgeRole> TOPS = Set.of(EdgeRole.EAVE, EdgeRole.VERGE, EdgeRole.PARAPET);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        LimitValue asked = e.practice().get(Limit.TOP_TURN);
        List<PastEdge> tops = PastEdge.of(e, TOPS, Sheets::covers);
        return tops.isEmpty() ? Stream.of(new Outcome.DoesNotApply("the outline has no eave, verge or parapet"))
                : tops.stream().flatMap(t -> t.judge(t.reached(), lacking(t, asked), s -> broken(s, e, asked)));
    }

    private static Intervals lacking(PastEdge top, LimitValue asked) {
        Intervals sealed = top.beside(f -> Sheets.isSheet(f) && f.piece().bond().seals(Edge.TOP));
        return top.reached().minus(top.past(asked.hundredths())).minus(sealed);
    }

    private static Outcome broken(PastEdge.Stretch s, Evidence e, LimitValue asked) {
        List<String> pieces = s.pieces(0);
        String mm = LengthText.mm(s.least()), lap = e.practice().get(Limit.COURSE_LAP).number();
        return Finding.of(INFO, s.place(), pieces).asks(asked).measures(s.least())
                .reads(s.least() == 0 ? "ends at the top" : mm + " over", asked.number() + " over, or sealed")
                .says(PieceWords.does(pieces, "ends", "end") + (s.least() == 0 ? " at the " + s.edge() : " only " + mm + " past the " + s.edge()) + " over " + s.length()
                        + ", not sealed there: what comes in under the roof's edge runs down behind. " + Asked.sentence(asked, "a turn of " + asked.number() + " over the top"),
                        "Lap a strip of membrane " + s.length() + " long over " + PieceWords.list(pieces) + " by " + lap + " and turn it at least " + asked.number()
                        + " over the top, its upper edge under the roof's underlay; or stick tape over the upper edge, as far onto the wall's top. Work from a platform or scaffold, not from the top of a ladder.");
    }
}
