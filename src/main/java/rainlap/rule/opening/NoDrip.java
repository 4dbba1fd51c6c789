package rainlap.rule.opening;

import java.util.List;
import java.util.stream.Stream;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Piece;

/** A flashing that lies across the wall has no drip, or one that stands off the face below by less than asked. */
public final class NoDrip implements Rule {
    static final RuleInfo INFO = RuleInfo.of("no-drip", "no drip", RuleInfo.Theme.OPENINGS, Limit.DRIP, Limit.SILL_DRIP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return LevelFlashings.each(e, Limit.SILL_DRIP, Limit.DRIP, (p, asked) -> judge(e, p, asked));
    }

    private static Outcome judge(Evidence e, Piece p, LimitValue asked) {
        if (p.material().profile().dripMm().isEmpty()) {
            return LevelFlashings.notStated(p, "how far its drip stands off the face below", "drip");
        }
        long drip = Math.round(p.material().profile().dripMm().getAsDouble() * 100);
        return drip >= asked.hundredths() ? Outcome.Holds.of(p.id()) : broken(e, p, drip, asked);
    }

    private static Outcome broken(Evidence e, Piece p, long drip, LimitValue asked) {
        String mm = LengthText.mm(drip);
        return Finding.of(INFO, LevelFlashings.foot(e, p), List.of(p.id())).asks(asked).measures(drip)
                .reads(drip == 0 ? "no drip" : mm + " off", asked.number() + " off the face below")
                .says((drip == 0 ? p.id() + " has no drip" : "The drip of " + p.id() + " stands only " + mm + " off the face below")
                        + ", so water creeps back along its underside. " + Asked.sentence(asked, "a drip that stands " + asked.number() + " off"),
                        "Fold the front edge of " + p.id() + " down and out, so that it stands at least " + asked.number()
                        + " off the face below, or replace it. Wear gloves: sheet-metal edges cut.");
    }
}
