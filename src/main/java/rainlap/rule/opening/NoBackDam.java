package rainlap.rule.opening;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** A sill pan is not turned up along its back, or less high than asked, or its back stands in front of the frame. */
public final class NoBackDam implements RevealRule {
    static final RuleInfo INFO = RuleInfo.of("no-back-dam", "no back dam", RuleInfo.Theme.OPENINGS, Limit.BACK_DAM);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judgeReveal(Evidence e, Opening o, Consumer<Outcome> tell) {
        List<Face> pans = SillFlashings.pans(e, o);
        if (pans.isEmpty()) {
            tell.accept(new Outcome.DoesNotApply("no pan lies on the sill of " + o.id()));
        }
        pans.forEach(pan -> tell.accept(judge(e, o, pan)));
    }

    private static Outcome judge(Evidence e, Opening o, Face pan) {
        if (isShort(o, pan)) {
            return tooShort(e, o, pan);
        }
        LimitValue asked = e.practice().get(Limit.BACK_DAM);
        OptionalDouble stated = pan.piece().material().profile().upstandMm();
        if (stated.isEmpty()) {
            return LevelFlashings.notStated(pan.piece(), "how high its back is turned up", "upstand");
        }
        long high = Math.round(stated.getAsDouble() * 100);
        return high >= asked.hundredths() ? Outcome.Holds.of(pan.piece().id()) : tooLow(e, o, pan, high, asked);
    }

    /** Whether somewhere along its length the pan does not reach the frame, by the drawing's own tolerance. */
    private static boolean isShort(Opening o, Face pan) {
        EdgeFrame edge = EdgeFrame.of(atFrame(o, pan));
        Intervals reached = edge.inside(pan.region(), -Math.min(AskedReturn.LEAST + edge.side(), o.reveal() / 2.0));
        return Intervals.of(0, edge.length()).minus(reached).total() >= AskedReturn.LEAST;
    }

    private static Segment atFrame(Opening o, Face pan) {
        return new Segment(new Point(pan.box().minX(), o.reveal()), new Point(pan.box().maxX(), o.reveal()));
    }

    private static Place back(Evidence e, Opening o, Face pan, long v) {
        return Place.line(e.elevation(), new Surface(o.id(), Side.SILL), new Segment(new Point(pan.box().minX(), v), new Point(pan.box().maxX(), v)));
    }

    private static Outcome tooShort(Evidence e, Opening o, Face pan) {
        LimitValue asked = e.practice().get(Limit.BACK_DAM);
        String id = pan.piece().id(), deep = LengthText.mm(o.reveal());
        return Finding.of(INFO, back(e, o, pan, pan.box().maxY()), List.of(id)).asks(asked)
                .reads(LengthText.mm(pan.box().maxY()) + " deep", deep + " deep, turned up " + asked.number()).defences(1)
                .says("The pan " + id + " does not reach the frame at the sill of " + o.id() + ", which stands " + deep + " from the wall's face"
                        + ": what the window lets in at its foot falls behind the pan. " + Asked.sentence(asked, "a pan turned up " + asked.number() + " at its back"),
                        "Replace " + id + " by a pan " + deep + " deep, its back turned up at least " + asked.number() + " behind the frame, before the window is set."
                        + " Wear gloves: sheet-metal edges cut.");
    }

    private static Outcome tooLow(Evidence e, Opening o, Face pan, long high, LimitValue asked) {
        String id = pan.piece().id(), mm = LengthText.mm(high);
        return Finding.of(INFO, back(e, o, pan, o.reveal()), List.of(id)).asks(asked).measures(high)
                .reads(high == 0 ? "not turned up" : mm + " high", asked.number() + " high").defences(1)
                .says("The back of the pan " + id + " on the sill of " + o.id() + (high == 0 ? " is not turned up" : " is turned up by only " + mm)
                        + ": water that stands on it, or that wind pushes in, runs over its back into the wall. "
                        + Asked.sentence(asked, "a back turned up " + asked.number()),
                        "Fold the back of " + id + " up by at least " + asked.number() + " over its whole length, behind the frame, its corners with the ends folded and not cut;"
                        + " or replace it, before the window is set. Wear gloves: sheet-metal edges cut.");
    }
}
