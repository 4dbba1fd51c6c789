package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** The lower edge of the cladding ends nearer to the ground, a deck or a roof than asked. Sheets side by side are one finding. */
public final class LowCladding implements Rule {
    static final RuleInfo INFO = RuleInfo.of("low-cladding", "cladding too low", RuleInfo.Theme.EDGES,
            Limit.GROUND_CLEARANCE, Limit.SANDY_CLEARANCE, Limit.PAVED_CLEARANCE, Limit.DECK_CLEARANCE, Limit.ROOF_CLEARANCE);
    /** The drawing's own tolerance: 1 mm. */
    private static final long LEAST = 100;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Face> cladding = e.onWall(MaterialKind.CLADDING);
        if (cladding.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no cladding is drawn at this stage"));
        }
        return Stream.concat(overGround(e, cladding), NearAbutment.judge(e, cladding));
    }

    private static Stream<Outcome> overGround(Evidence e, List<Face> cladding) {
        if (e.elevation().outline().ground().isEmpty()) {
            return Stream.of(new Outcome.CannotTell(List.of(), "the level of the ground is not stated (ground, in wall)"));
        }
        LimitValue asked = e.practice().get(FootHeights.clearance(e.elevation().outline().groundCover()));
        long ground = e.elevation().outline().ground().getAsLong();
        List<Face> low = cladding.stream().filter(f -> f.box().minY() - ground < asked.hundredths()).toList();
        return Stream.concat(cladding.stream().filter(f -> !low.contains(f)).map(f -> Outcome.Holds.of(f.piece().id())),
                sideBySide(low).stream().map(group -> broken(e, group, ground, asked)));
    }

    private static List<List<Face>> sideBySide(List<Face> low) {
        List<List<Face>> out = new ArrayList<>();
        long end = 0;
        for (Face f : low.stream().sorted(Comparator.comparingLong((Face f) -> f.box().minX()).thenComparing(f -> f.piece().id())).toList()) {
            if (out.isEmpty() || f.box().minX() > end + LEAST) {
                out.add(new ArrayList<>());
                end = f.box().maxX();
            }
            out.get(out.size() - 1).add(f);
            end = Math.max(end, f.box().maxX());
        }
        return out;
    }

    private static Outcome broken(Evidence e, List<Face> group, long ground, LimitValue asked) {
        Box all = group.stream().map(Face::box).reduce(Box::join).orElseThrow();
        List<String> pieces = group.stream().sorted(Comparator.comparingInt(Face::number)).map(f -> f.piece().id()).distinct().toList();
        Place where = Place.line(e.elevation(), Surface.WALL, new Segment(new Point(all.minX(), all.minY()), new Point(all.maxX(), all.minY())));
        long above = all.minY() - ground;
        String mm = LengthText.mm(above), on = e.elevation().outline().groundCover().inWords();
        return Finding.of(INFO, where, pieces).asks(asked).measures(above)
                .reads(mm + " above ground", asked.number() + " above ground")
                .says(PieceWords.does(pieces, "ends", "end") + " " + (above <= 0 ? "in or on the ground" : "only " + mm + " above the " + on)
                        + ": rain splashes up behind and the foot stays wet. " + Asked.sentence(asked, asked.number() + " above the " + on),
                        remedy(pieces, FootHeights.at(e, all), asked, ground));
    }

    private static String remedy(List<String> pieces, Optional<FootHeights> right, LimitValue asked, long ground) {
        String cut = "Cut " + PieceWords.list(pieces) + " ", end = " Wear gloves and eye protection: cut sheet is sharp.";
        return right.map(r -> r.first().isEmpty() ? cut + r.inWords() + ", and treat the cut edges; or lower the ground." : r.first() + "Have " + PieceWords.list(pieces) + " cut or set "
                + r.inWords() + ", and treat cut edges.")
                .orElseGet(() -> cut + "to end at " + Place.level(ground + asked.hundredths()) + ", at least " + asked.number()
                        + " above the ground, treat the cut edges and leave the frame covered; or lower the ground.") + end;
    }
}
