package rainlap.rule.edge;

import java.util.List;
import java.util.stream.Stream;
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

/** The membrane goes round a corner of the building, but by less than asked. */
public final class ShortCornerWrap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-corner-wrap", "wrap too short", RuleInfo.Theme.EDGES, Limit.CORNER_WRAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        LimitValue asked = e.practice().get(Limit.CORNER_WRAP);
        return CornerStretch.judge(e, c -> List.of(c.wrap().below(asked.hundredths()).minus(CornerStretch.unwrapped(c))),
                s -> broken(s, asked));
    }

    private static Outcome broken(CornerStretch s, LimitValue asked) {
        long wrap = Math.round(s.corner().wrap().part(s.from(), s.to()).least());
        String mm = LengthText.mm(wrap);
        return Finding.of(INFO, s.place(), s.pieces()).asks(asked).measures(wrap)
                .reads(mm + " round", asked.number() + " round").defences(1)
                .says(PieceWords.does(s.pieces(), "goes", "go") + " only " + mm + " round the " + s.name() + ". "
                        + Asked.sentence(asked, "a wrap of " + asked.number()),
                        s.strip().remedy());
    }
}
