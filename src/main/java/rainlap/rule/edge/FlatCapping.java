package rainlap.rule.edge;

import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.measure.AngleText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;

/** The top of a parapet's capping lies level, or falls by too little. */
public final class FlatCapping implements Rule {
    static final RuleInfo INFO = RuleInfo.of("flat-capping", "capping without fall", RuleInfo.Theme.EDGES, Limit.CAPPING_FALL);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return Capped.each(e, p -> p.cappings().isEmpty() ? Stream.of(new Outcome.DoesNotApply("no capping lies over the parapet"))
                : p.cappings().stream().map(c -> judge(p, c, e.practice().get(Limit.CAPPING_FALL))));
    }

    private static Outcome judge(Capped p, Face capping, LimitValue asked) {
        String id = capping.piece().id();
        if (capping.piece().material().profile().fallDeg().isEmpty()) {
            return new Outcome.CannotTell(List.of(id), "neither " + id + " nor its material " + capping.piece().material().id() + " states how far it falls (fall_deg)");
        }
        double fall = Math.abs(capping.piece().material().profile().fallDeg().getAsDouble());
        return asked.isMetBy(fall) ? Outcome.Holds.of(id) : broken(p, capping, fall, asked);
    }

    private static Outcome broken(Capped p, Face capping, double fall, LimitValue asked) {
        String id = capping.piece().id(), drawn = fall == 0 ? "level" : AngleText.deg(fall);
        Intervals along = p.across(capping);
        return Finding.of(INFO, p.place(along.from(0), along.to(along.count() - 1)), List.of(id)).asks(asked).degrees(fall).reads(drawn, asked.number() + "°")
                .says((fall == 0 ? id + " lies level" : id + " falls by only " + drawn) + ": water stands on it and finds its joints. " + Asked.sentence(asked, "a fall of " + asked.number() + "°"),
                        "Take " + id + " off and set a sloped packer under it, so that it falls at least " + asked.number() + "° to the roof, " + drop(asked)
                                + " in each 100 of its width; fold it anew if its sides then stand off. Folded edges cut: wear gloves; work from a platform or scaffold with a rail, not from the roof's edge.");
    }

    private static String drop(LimitValue asked) {
        return Long.toString((long) Math.ceil(100 * Math.tan(Math.toRadians(asked.value()))));
    }
}
