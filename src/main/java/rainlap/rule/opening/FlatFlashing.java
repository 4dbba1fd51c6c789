package rainlap.rule.opening;

import java.util.List;
import java.util.stream.Stream;
import rainlap.measure.AngleText;
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

/** A flashing that lies across the wall falls outwards by less than asked, lies level or falls inwards. */
public final class FlatFlashing implements Rule {
    static final RuleInfo INFO = RuleInfo.of("flat-flashing", "flashing without fall", RuleInfo.Theme.OPENINGS,
            Limit.FLASHING_FALL, Limit.SILL_FALL);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return LevelFlashings.each(e, Limit.SILL_FALL, Limit.FLASHING_FALL, (p, asked) -> judge(e, p, asked));
    }

    private static Outcome judge(Evidence e, Piece p, LimitValue asked) {
        if (p.material().profile().fallDeg().isEmpty()) {
            return LevelFlashings.notStated(p, "how far it falls outwards", "fall_deg");
        }
        double fall = p.material().profile().fallDeg().getAsDouble();
        return asked.isMetBy(fall) ? Outcome.Holds.of(p.id()) : broken(e, p, fall, asked);
    }

    private static Outcome broken(Evidence e, Piece p, double fall, LimitValue asked) {
        String drawn = fall == 0 ? "level" : AngleText.deg(Math.abs(fall)) + (fall < 0 ? " inwards" : " outwards");
        String says = fall == 0 ? p.id() + " lies level, so water stays on it" : fall < 0 ? p.id() + " falls " + drawn + ", so water runs to the wall"
                : p.id() + " falls only " + drawn;
        return Finding.of(INFO, LevelFlashings.foot(e, p), List.of(p.id())).asks(asked).degrees(fall)
                .reads(drawn, asked.number() + "° outwards")
                .says(says + ". " + Asked.sentence(asked, "a fall of " + asked.number() + "° outwards"), remedy(p, asked));
    }

    private static String remedy(Piece p, LimitValue asked) {
        String drop = p.material().profile().depthMm().stream()
                .mapToObj(d -> ": " + LengthText.mmUp((long) Math.ceil(d * 100 * Math.tan(Math.toRadians(asked.value())))) + " over its depth of "
                        + LengthText.mm(Math.round(d * 100))).findFirst().orElse("");
        return "Replace " + p.id() + " by one folded to fall at least " + asked.number() + "° outwards" + drop
                + "; packing the old one up leaves its fold open. Wear gloves: sheet-metal edges cut.";
    }
}
