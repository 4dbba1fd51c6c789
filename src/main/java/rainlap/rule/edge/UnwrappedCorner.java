package rainlap.rule.edge;

import java.util.List;
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

/** No membrane goes round a corner of the building. */
public final class UnwrappedCorner implements Rule {
    static final RuleInfo INFO = RuleInfo.of("unwrapped-corner", "corner not wrapped", RuleInfo.Theme.EDGES);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return CornerStretch.judge(e, c -> List.of(CornerStretch.unwrapped(c)), UnwrappedCorner::broken);
    }

    private static Outcome broken(CornerStretch s) {
        LimitValue asked = s.evidence().practice().get(Limit.CORNER_WRAP);
        List<String> pieces = s.pieces();
        String stops = pieces.isEmpty() ? "" : "; " + PieceWords.does(pieces, "stops", "stop") + " there";
        return Finding.of(INFO, s.place(), pieces).asks(asked).measures(0)
                .reads(s.isTaped() ? "0 round, taped" : "0 round", asked.number() + " round").defences(s.isTaped() ? 1 : 0)
                .says("No membrane goes round the " + s.name() + " over " + s.length() + stops + ". "
                        + Asked.sentence(asked, "a wrap of " + asked.number()),
                        s.strip().remedy() + " Or lay sheets that run " + asked.number() + " on round the corner.");
    }
}
