package rainlap.rule.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.OpeningCorner;
import rainlap.joint.Sheets;
import rainlap.material.EndDams;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** At a lower corner of an opening nothing turns from the sill up the jamb in one piece, or not as far as asked. */
public final class FlatSill implements RevealRule {
    static final RuleInfo INFO = RuleInfo.of("flat-sill", "sill not turned up the jamb", RuleInfo.Theme.OPENINGS, Limit.SILL_TURN_UP);
    /** How far beside the corner one looks for what lies there: 0.5 mm. */
    private static final long BESIDE = 50;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judgeReveal(Evidence e, Opening o, Consumer<Outcome> tell) {
        e.corners(o).stream().filter(c -> c.level() == Side.SILL).forEach(c -> tell.accept(judge(e, c)));
    }

    private static Outcome judge(Evidence e, OpeningCorner c) {
        Opening o = c.opening();
        LimitValue asked = e.practice().get(Limit.SILL_TURN_UP);
        double deep = AskedReturn.of(e, o, Side.SILL).deep() / 2.0;
        List<Face> sill = at(e, c, Side.SILL, deep), jamb = at(e, c, c.jamb(), deep);
        long high = sill.stream().mapToLong(f -> turnedUp(c, f.piece(), jamb)).max().orElse(0);
        if (high >= Math.min(asked.hundredths(), o.along(Side.LEFT) / 2)) {
            return new Outcome.Holds(() -> ids(sill));
        }
        return sill.isEmpty() || jamb.isEmpty() ? new Outcome.DoesNotApply("the " + c.inWords() + " of " + o.id() + " is not covered on both its sides: that is no turn to measure")
                : broken(e, c, ids(sill), high, asked);
    }

    private static List<String> ids(List<Face> faces) {
        return faces.stream().map(f -> f.piece().id()).distinct().toList();
    }

    /** What lies on one side of a corner, half as deep as the return asked of the sill and directly beside the fold: flaps of a diagonal cut do not lie there. */
    private static List<Face> at(Evidence e, OpeningCorner c, Side side, double deep) {
        long u = side.isJamb() || c.jamb() == Side.LEFT ? BESIDE : c.opening().along(Side.SILL) - BESIDE;
        List<Face> out = new ArrayList<>(2);
        for (Face f : e.stack().on(new Surface(c.opening().id(), side))) {
            if (f.region().covers(u, deep) && Sheets.covers(f)) {
                out.add(f);
            }
        }
        return out;
    }

    /** How high the same piece goes on up the jamb, drawn there or stated as an end dam. */
    private static long turnedUp(OpeningCorner c, Piece p, List<Face> jamb) {
        long drawn = jamb.stream().filter(f -> f.piece().id().equals(p.id())).mapToLong(f -> f.box().maxX()).max().orElse(0);
        Profile folded = p.material().profile();
        Optional<EndDams> dams = p.material().kind() == MaterialKind.FLASHING ? folded.endDams() : Optional.empty();
        boolean dam = dams.filter(d -> c.jamb() == Side.LEFT ? d.atLeft() : d.atRight()).isPresent();
        return Math.max(drawn, dam ? Math.round(folded.endDamMm().orElse(0) * 100) : 0);
    }

    private static Outcome broken(Evidence e, OpeningCorner c, List<String> ids, long high, LimitValue asked) {
        Opening o = c.opening();
        long u = c.jamb() == Side.LEFT ? 0 : o.along(Side.SILL);
        Place where = Place.line(e.elevation(), new Surface(o.id(), Side.SILL), new Segment(new Point(u, 0), new Point(u, o.reveal())));
        String mm = LengthText.mm(high), by = PieceWords.does(ids, "turns", "turn");
        return Finding.of(INFO, where, ids).asks(asked).measures(high)
                .reads(high == 0 ? "not turned up" : mm + " up", asked.number() + " up the jamb")
                .says((high == 0 ? "At the " + c.inWords() + " of " + o.id() + " nothing turns from the sill up the jamb in one piece" : by + " only " + mm + " up the jamb at the "
                        + c.inWords() + " of " + o.id()) + ": water that stands on the sill runs out into the corner. " + Asked.sentence(asked, asked.number() + " up the jamb"),
                        "Stick a corner piece over the " + c.inWords() + " of " + o.id() + ", " + LengthText.mm(o.reveal()) + " deep and at least " + CornerLegs.upTheJamb(e, c).inWords()
                        + ", turned " + e.practice().get(Limit.TAPE_COVER).number() + " out onto the wall, before the tape on the jamb goes over it.");
    }
}
