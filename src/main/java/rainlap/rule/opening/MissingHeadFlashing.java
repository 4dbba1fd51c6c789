package rainlap.rule.opening;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Consumer;
import rainlap.geom.Segment;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Beside;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.HeadFlashings;
import rainlap.rule.OpeningRule;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** A window or door has no head flashing, and no eave deep enough shelters it. */
public final class MissingHeadFlashing implements OpeningRule {
    static final RuleInfo INFO = RuleInfo.of("missing-head-flashing", "no head flashing", RuleInfo.Theme.OPENINGS,
            Limit.EAVE_SHELTER);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judge(Evidence e, Opening o, Consumer<Outcome> tell) {
        tell.accept(judge(e, o));
    }

    private static Outcome judge(Evidence e, Opening o) {
        if (o.kind() != Opening.Kind.WINDOW && o.kind() != Opening.Kind.DOOR) {
            return new Outcome.DoesNotApply(o.id() + " is neither a window nor a door");
        }
        List<Face> there = HeadFlashings.of(e, o);
        if (!there.isEmpty()) {
            return new Outcome.Holds(() -> there.stream().map(f -> f.piece().id()).distinct().toList());
        }
        LimitValue asked = e.practice().get(Limit.EAVE_SHELTER);
        if (o.eaveOverhang().isPresent() && o.eaveAbove().isPresent()) {
            return underEave(e, o, asked);
        }
        if (o.noHeadFlashing().isPresent()) {
            return new Outcome.CannotTell(List.of(), o.id() + " has no head flashing, for the reason given (\"" + o.noHeadFlashing().get()
                    + "\"); without eave_overhang and eave_above nobody can tell whether that is enough");
        }
        return missing(e, o, asked, Finding.of(INFO, head(e, o), above(e, o)).asks(asked), "none", "");
    }

    private static Outcome underEave(Evidence e, Opening o, LimitValue asked) {
        double over = o.eaveOverhang().getAsLong(), up = o.eaveAbove().getAsLong();
        if (up == 0 ? over > 0 : asked.isMetBy(over / up)) {
            return Outcome.Holds.of();
        }
        double times = up == 0 ? 0 : over / up;
        String eave = "; the eave overhangs " + LengthText.mm(Math.round(over)) + ", " + LengthText.mm(Math.round(up))
                + " above the head";
        return missing(e, o, asked, Finding.of(INFO, head(e, o), above(e, o)).asks(asked).factor(times),
                "none, eave " + factor(times) + " × its height", eave);
    }

    /** Two decimals, cut off and not rounded: what is too little never reads as enough. */
    private static String factor(double times) {
        return BigDecimal.valueOf(times).setScale(2, RoundingMode.DOWN).stripTrailingZeros().toPlainString();
    }

    private static Outcome missing(Evidence e, Opening o, LimitValue asked, Finding.Builder finding, String drawn, String eave) {
        LimitValue past = e.practice().get(Limit.FLASHING_PAST_OPENING);
        String shelter = (asked.strict() ? "more than " : "") + asked.number() + " times its height above the head";
        List<String> above = above(e, o);
        String flap = above.isEmpty() ? "lap the membrane" : "slit " + PieceWords.list(above) + " at 45° from both its ends and lay the flap";
        return finding.reads(drawn, "flashing, or eave " + (asked.strict() ? "over " : "") + asked.number() + " × its height")
                .says(o.id() + " has no head flashing" + eave
                        + ". " + Asked.sentence(asked, "a head flashing or an eave that overhangs " + shelter),
                        "Fit a head flashing " + LengthText.mm(o.rect().width() + 2 * past.hundredths()) + " long, " + past.number()
                        + " past both jambs; " + flap + " over its upstand by at least " + LengthText.mm(MendSizes.overUpstand(e)) + "." + strip(e, o));
    }

    /** What was turned into the head goes with the flap that is laid over the flashing. */
    private static String strip(Evidence e, Opening o) {
        return o.reveal() == 0 ? "" : " Before that turn flexible tape " + LengthText.mm(Math.min(o.reveal(), e.practice().get(Limit.RETURN_HEAD).hundredths()))
                + " deep into the head and at least " + LengthText.mm(MendSizes.upFromHead(e)) + " up the frame.";
    }

    private static Place head(Evidence e, Opening o) {
        return Place.line(e.elevation(), Surface.WALL, o.edge(Side.HEAD));
    }

    private static List<String> above(Evidence e, Opening o) {
        Segment head = o.edge(Side.HEAD);
        return Beside.membranes(e.stack(), head, AskedReturn.LEAST);
    }
}
