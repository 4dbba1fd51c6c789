package rainlap.rule.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import rainlap.geom.Box;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Sheets;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Part of the frame at the foot of an opening lies bare where the wall does not go on below it, as under a door. */
public final class BareThreshold implements RevealRule {
    static final RuleInfo INFO = RuleInfo.of("bare-threshold", "bare threshold", RuleInfo.Theme.OPENINGS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judgeReveal(Evidence e, Opening o, Consumer<Outcome> tell) {
        tell.accept(judge(e, o));
    }

    private static Outcome judge(Evidence e, Opening o) {
        Intervals foot = Intervals.of(0, o.along(Side.SILL)).minus(AskedReturn.of(e, o, Side.SILL).wall());
        if (foot.total() < AskedReturn.LEAST) {
            return new Outcome.DoesNotApply("the wall goes on below " + Openings.name(o, Side.SILL));
        }
        List<Face> covers = e.stack().on(new Surface(o.id(), Side.SILL)).stream().filter(Sheets::covers).toList();
        List<Region> bare = Overlay.difference(threshold(o, foot), covers.stream().map(Face::region).toList()).stream()
                .filter(r -> !Overlay.vanishes(r, AskedReturn.LEAST / 2)).toList();
        List<String> ids = covers.stream().map(f -> f.piece().id()).distinct().toList();
        return bare.isEmpty() ? Outcome.Holds.of(ids) : broken(e, o, bare, ids);
    }

    private static List<Region> threshold(Opening o, Intervals foot) {
        List<Region> out = new ArrayList<>();
        for (int i = 0; i < foot.count(); i++) {
            out.add(Region.of(new Box(Math.round(foot.from(i)), 0, Math.round(foot.to(i)), o.reveal())));
        }
        return out;
    }

    private static Outcome broken(Evidence e, Opening o, List<Region> bare, List<String> covers) {
        long from = bare.stream().mapToLong(r -> r.box().minX()).min().orElseThrow(), to = bare.stream().mapToLong(r -> r.box().maxX()).max().orElseThrow();
        Place where = Place.line(e.elevation(), new Surface(o.id(), Side.SILL), new Segment(new Point(from, 0), new Point(to, 0)));
        double along = Intervals.unionOf(bare.stream().map(r -> Intervals.of(r.box().minX(), r.box().maxX())).toList()).total();
        long deep = bare.stream().mapToLong(r -> r.box().height()).max().orElseThrow();
        String size = LengthText.mm(Math.round(along)) + " × " + LengthText.mm(deep);
        return Finding.of(INFO, where, covers).reads("bare, " + size, "covered")
                .says("Nothing covers " + size + " of the threshold of " + o.id() + ", at " + where.inWords()
                        + ": what the door lets in at its foot, and what is blown against it, wets the frame. Common practice asks for the whole threshold to be covered.",
                        remedy(e, o));
    }

    private static String remedy(Evidence e, Opening o) {
        String up = e.practice().get(Limit.SILL_TURN_UP).number();
        return "Before the door is set, lay flexible tape or a pan over all of it in one piece, " + LengthText.mm(o.along(Side.SILL)) + " × " + LengthText.mm(o.reveal())
                + ", up both jambs by at least " + up + "; then the jambs over its ends.";
    }
}
