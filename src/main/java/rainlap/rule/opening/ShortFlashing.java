package rainlap.rule.opening;

import java.util.List;
import java.util.function.Consumer;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.OpeningRule;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/** A head flashing runs past a jamb of its opening by less than asked. Several flashings of one opening count as one run. */
public final class ShortFlashing implements OpeningRule {
    static final RuleInfo INFO = RuleInfo.of("short-flashing", "flashing too short", RuleInfo.Theme.OPENINGS,
            Limit.FLASHING_PAST_OPENING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judge(Evidence e, Opening o, Consumer<Outcome> tell) {
        List<Face> found = HeadFlashings.of(e, o);
        if (found.isEmpty()) {
            tell.accept(new Outcome.DoesNotApply(o.id() + " has no head flashing"));
        } else {
            tell.accept(end(e, o, found, true));
            tell.accept(end(e, o, found, false));
        }
    }

    /** One end: the face that reaches furthest there, and how far past the jamb. */
    private record End(Opening opening, boolean left, Face last, long past, boolean single) {
        long jamb() {
            return left ? opening.rect().minX() : opening.rect().maxX();
        }

        String side() {
            return left ? "left" : "right";
        }

        String id() {
            return last.piece().id();
        }
    }

    private static Outcome end(Evidence e, Opening o, List<Face> found, boolean left) {
        Face last = found.stream().reduce((a, b) -> reach(b, o, left) > reach(a, o, left) ? b : a).orElseThrow();
        End end = new End(o, left, last, reach(last, o, left), found.stream().map(Face::number).distinct().count() == 1);
        LimitValue asked = e.practice().get(Limit.FLASHING_PAST_OPENING);
        if (end.past >= asked.hundredths()) {
            return Outcome.Holds.of(end.id());
        }
        long room = room(e, end);
        return end.past >= room ? new Outcome.CannotTell(List.of(end.id()), end.id() + " ends at the edge of the wall, "
                + LengthText.mm(end.past) + " past the " + end.side() + " jamb of " + o.id()
                + "; whether it goes on round that edge is not drawn here") : broken(e, end, asked);
    }

    private static long reach(Face f, Opening o, boolean left) {
        return left ? o.rect().minX() - f.box().minX() : f.box().maxX() - o.rect().maxX();
    }

    /** How far the wall goes on beside the jamb at the flashing's foot. */
    private static long room(Evidence e, End end) {
        Box wall = e.elevation().outline().box();
        return end.left ? end.jamb() - wall.minX() : wall.maxX() - end.jamb();
    }

    private static Outcome broken(Evidence e, End end, LimitValue asked) {
        Box f = end.last.box();
        long y = f.minY(), tip = end.left ? f.minX() : f.maxX();
        Segment line = tip == end.jamb() ? new Segment(new Point(tip, f.minY()), new Point(tip, f.maxY()))
                : new Segment(new Point(Math.min(tip, end.jamb()), y), new Point(Math.max(tip, end.jamb()), y));
        String drawn = end.past < 0 ? LengthText.mm(-end.past) + " short of the jamb" : LengthText.mm(end.past) + " past";
        return Finding.of(INFO, Place.line(e.elevation(), Surface.WALL, line), List.of(end.id())).asks(asked).measures(end.past)
                .reads(drawn, asked.number() + " past")
                .says(end.id() + " ends " + drawn + (end.past < 0 ? "" : " the " + end.side() + " jamb") + " of " + end.opening.id()
                        + (end.past < 0 ? " on the " + end.side() : "") + ". " + Asked.sentence(asked, asked.number() + " past the opening"), remedy(end, asked));
    }

    private static String remedy(End end, LimitValue asked) {
        long whole = end.opening.rect().width() + 2 * asked.hundredths();
        return end.single ? "Replace " + end.id() + " by one " + LengthText.mm(whole) + " long: " + asked.number()
                + " past both jambs of " + end.opening.id() + ". Wear gloves: sheet-metal edges cut."
                : "Replace " + end.id() + " by one that runs " + asked.number() + " past the " + end.side() + " jamb of "
                + end.opening.id() + ". Wear gloves: sheet-metal edges cut.";
    }
}
