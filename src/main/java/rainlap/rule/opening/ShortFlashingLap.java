package rainlap.rule.opening;

import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Cappings;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** Where one flashing goes on as the next they lap by less than asked, or only meet. */
public final class ShortFlashingLap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-flashing-lap", "lap of flashings too short", RuleInfo.Theme.OPENINGS,
            Limit.FLASHING_LAP, Limit.FLASHING_LAP_SEALED);

    /** Further apart they are two flashings: at most 100 mm, as for a gap between sheets. */
    private static final long WIDEST = 10_000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        Stream<Outcome> laps = e.jointsHere().stream().filter(j -> j.kind().isLap() && j.kind() != JointKind.REVERSE_LAP
                && isFlashing(e, j.outer()) && isFlashing(e, j.inner()) && j.runs().stream().anyMatch(r -> r.faces().facesSideways())).flatMap(j -> judge(e, j));
        List<Outcome> all = Stream.concat(laps, meeting(e)).toList();
        return all.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no flashing goes on as another")) : all.stream();
    }

    private static boolean isFlashing(Evidence e, Face f) {
        return f.kind() == MaterialKind.FLASHING && !Cappings.isCapping(e.elevation(), f);
    }

    /** Flashings that end beside one another: under a sheet those make no joint of their own. */
    private static Stream<Outcome> meeting(Evidence e) {
        return e.onWall(MaterialKind.FLASHING).stream().filter(f -> isLevel(e, f)).flatMap(left -> {
            Box end = left.box();
            List<Face> near = e.stack().meeting(Surface.WALL, new Box(end.maxX(), end.minY(), end.maxX() + WIDEST, end.maxY())).stream()
                    .filter(f -> isLevel(e, f) && isLevelWith(f.box(), end)).toList();
            return near.stream().filter(right -> isBeside(end, right.box()) && near.stream().noneMatch(f -> f.box().minX() < end.maxX() && right.box().minX() < f.box().maxX()))
                    .map(right -> apart(e, left, right));
        });
    }

    private static boolean isLevel(Evidence e, Face f) {
        return isFlashing(e, f) && f.box().width() > f.box().height();
    }

    private static boolean isBeside(Box left, Box right) {
        long gap = right.minX() - left.maxX();
        return gap >= 0 && gap <= WIDEST;
    }

    private static boolean isLevelWith(Box a, Box b) {
        return a.minY() < b.maxY() && b.minY() < a.maxY();
    }

    private static Outcome apart(Evidence e, Face left, Face right) {
        Box a = left.box(), b = right.box();
        long gap = b.minX() - a.maxX(), x = a.maxX() + gap / 2;
        Segment line = new Segment(new Point(x, Math.max(a.minY(), b.minY())), new Point(x, Math.min(a.maxY(), b.maxY())));
        LimitValue asked = e.practice().get(Limit.FLASHING_LAP);
        boolean leftFirst = left.number() < right.number();
        String one = (leftFirst ? left : right).piece().id(), other = (leftFirst ? right : left).piece().id();
        return Finding.of(INFO, Place.line(e.elevation(), Surface.WALL, line), List.of(one, other)).asks(asked).measures(-gap)
                .reads(gap == 0 ? "only meet" : LengthText.mm(gap) + " apart", asked.number() + ", not sealed")
                .says(one + " and " + other + (gap == 0 ? " only meet" : " end " + LengthText.mm(gap) + " apart") + ": water that runs along them leaves there. "
                        + Asked.sentence(asked, "a lap of " + asked.number() + " where it is not sealed"), remedy(e, one, other));
    }

    private static Stream<Outcome> judge(Evidence e, Joint j) {
        boolean sealed = j.sealed() || j.isTaped() || hasSealant(e, j);
        LimitValue asked = e.practice().get(sealed ? Limit.FLASHING_LAP_SEALED : Limit.FLASHING_LAP);
        List<Joint.Stretch> lacking = MembraneJoints.parts(e, j, r -> below(r, asked));
        return lacking.isEmpty() ? Stream.of(Outcome.Holds.of(j))
                : lacking.stream().map(s -> broken(e, j, s, asked, sealed));
    }

    private static Intervals below(Run r, LimitValue asked) {
        return r.faces().facesSideways() ? r.lap().below(asked.hundredths()) : Intervals.NONE;
    }

    /** A bead that crosses the whole joint, between the flashings or along their edge. */
    private static boolean hasSealant(Evidence e, Joint j) {
        Box edge = Box.of(j.line());
        return e.stack().meeting(j.surface(), edge.grow(j.lap())).stream().filter(f -> f.kind() == MaterialKind.SEALANT)
                .anyMatch(f -> f.box().minY() <= edge.minY() && f.box().maxY() >= edge.maxY());
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s, LimitValue asked, boolean sealed) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id(), how = sealed ? "sealed" : "not sealed";
        String mm = LengthText.mm(s.least());
        return Finding.of(INFO, Place.line(e.elevation(), j.surface(), s.line()), List.of(outer, inner)).asks(asked).measures(s.least()).joint(j.id())
                .reads(mm + ", " + how, asked.number() + ", " + how)
                .says(outer + " laps " + inner + " by only " + mm + ", " + how + ": water that runs along them leaves there. "
                        + Asked.sentence(asked, "a lap of " + asked.number() + (sealed ? " where it is sealed" : " where it is not sealed")), remedy(e, outer, inner));
    }

    private static String remedy(Evidence e, String outer, String inner) {
        return "Replace one of " + outer + " and " + inner + " by a longer one: lapped by at least " + e.practice().get(Limit.FLASHING_LAP).number() + ", or by "
                + e.practice().get(Limit.FLASHING_LAP_SEALED).number() + " with sealant between them and fixed through; the upper end over the lower. Wear gloves: sheet-metal edges cut.";
    }
}
