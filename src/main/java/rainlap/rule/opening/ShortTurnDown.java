package rainlap.rule.opening;

import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Grid;
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

/** The front of a flashing that lies across the wall comes down over what lies below by less than asked. */
public final class ShortTurnDown implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-turn-down", "front not turned down", RuleInfo.Theme.OPENINGS, Limit.TURN_DOWN);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return LevelFlashings.each(e, p -> judge(e, p));
    }

    private static Outcome judge(Evidence e, Piece p) {
        LimitValue asked = e.practice().get(Limit.TURN_DOWN);
        if (p.material().profile().turnDownMm().isEmpty()) {
            return LevelFlashings.notStated(p, "how far its front comes down over what lies below", "turn_down");
        }
        long down = Grid.of(p.material().profile().turnDownMm().getAsDouble());
        return down >= asked.hundredths() ? Outcome.Holds.of(p.id()) : broken(e, p, down, asked);
    }

    private static Outcome broken(Evidence e, Piece p, long down, LimitValue asked) {
        String mm = LengthText.mmBeside(down, asked.hundredths());
        return Finding.of(INFO, LevelFlashings.foot(e, p), List.of(p.id())).asks(asked).measures(down)
                .reads(down == 0 ? "not turned down" : mm + " down", asked.number() + " down")
                .says((down == 0 ? "The front of " + p.id() + " does not come down over what lies below it" : "The front of " + p.id() + " comes down by only " + mm)
                        + ", so water is drawn and blown in beneath it. " + Asked.sentence(asked, "a front that comes down " + asked.number() + " over what lies below"),
                        "Replace " + p.id() + " by one whose front is folded down by at least " + asked.number()
                        + " over what lies below it, its drip at the foot of that. Wear gloves: sheet-metal edges cut.");
    }
}
