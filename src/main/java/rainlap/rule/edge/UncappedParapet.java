package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
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
import rainlap.stack.Face;

/** The top of a parapet has no capping, or one that comes down over the wall's face by too little. */
public final class UncappedParapet implements Rule {
    static final RuleInfo INFO = RuleInfo.of("uncapped-parapet", "parapet not capped", RuleInfo.Theme.EDGES, Limit.CAPPING_COVER);
    private static final String CARE = " Fix it at its sides, never through its top. Folded edges cut: wear gloves; work from a platform or scaffold with a rail, not from the roof's edge.";

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return Capped.each(e, p -> judge(p, e.practice().get(Limit.CAPPING_COVER)));
    }

    private static Stream<Outcome> judge(Capped p, LimitValue asked) {
        Intervals over = Intervals.unionOf(p.cappings().stream().map(p::across).toList());
        Intervals enough = Intervals.unionOf(p.cappings().stream().map(c -> p.across(c).minus(p.down(c).below(asked.hundredths()))).toList());
        List<Outcome> out = new ArrayList<>();
        Intervals none = Intervals.of(0, p.frame().length()).minus(over), little = over.minus(enough);
        for (int i = 0; i < none.count(); i++) {
            if (none.to(i) - none.from(i) >= Capped.LEAST) {
                out.add(none(p, none.from(i), none.to(i), asked));
            }
        }
        for (int i = 0; i < little.count(); i++) {
            if (little.to(i) - little.from(i) >= Capped.LEAST) {
                out.add(little(p, little.from(i), little.to(i), asked));
            }
        }
        if (enough.total() >= Capped.LEAST) {
            out.add(Outcome.Holds.of(p.cappings().stream().filter(c -> !p.across(c).intersect(enough).isEmpty()).map(f -> f.piece().id()).distinct().toList()));
        }
        return out.stream();
    }

    private static Outcome none(Capped p, double from, double to, LimitValue asked) {
        String long_ = LengthText.mmUp(Math.round(to - from));
        List<String> beside = p.cappings().stream().filter(c -> p.across(c).to(p.across(c).count() - 1) == from || p.across(c).from(0) == to).map(f -> f.piece().id()).toList();
        return Finding.of(INFO, p.place(from, to), beside).asks(asked).measures(0).reads("no capping", asked.number() + " down over the face")
                .says("No capping lies over the parapet over " + long_ + ": rain stands on its top and runs in behind the cladding. "
                        + Asked.sentence(asked, "a capping that comes down over the face by " + asked.number()),
                        "Set a capping over the top, " + long_ + " long and more by a lap at each joint, that comes down over the cladding by at least " + asked.number() + " and falls to the roof." + CARE);
    }

    private static Outcome little(Capped p, double from, double to, LimitValue asked) {
        Intervals here = Intervals.of(from, to);
        List<Face> faces = p.cappings().stream().filter(c -> !p.across(c).intersect(here).isEmpty()).toList();
        List<String> ids = faces.stream().map(f -> f.piece().id()).distinct().toList();
        long least = Math.round(faces.stream().mapToDouble(c -> p.down(c).leastWithin(from, to)).filter(Double::isFinite).max().orElse(0));
        String mm = LengthText.mmBeside(least, asked.hundredths());
        return Finding.of(INFO, p.place(from, to), ids).asks(asked).measures(least).reads(mm + " down", asked.number() + " down over the face")
                .says(PieceWords.does(ids, "comes", "come") + " down over the face by only " + mm + " over " + LengthText.mmUp(Math.round(to - from)) + ": wind drives rain in under the edge. " + Asked.sentence(asked),
                        "Replace " + PieceWords.list(ids) + " by a capping folded to come down by at least " + asked.number() + " over the cladding." + CARE);
    }
}
