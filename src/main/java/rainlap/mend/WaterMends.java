package rainlap.mend;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.Joint;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.wall.Side;
import rainlap.wall.Surface;
import rainlap.water.Step;

/** Where the water gets in by a joint, that joint mended as far as the wind drives water there. */
final class WaterMends {
    private static final long INTO = 100;

    private WaterMends() {}

    /** What lies beneath reaches further up or in behind the edge that water gets under last. */
    static Optional<Edited> reaching(Evidence e, Finding f) {
        Optional<Step> step = last(f, Step.Kind.LIFT_UNDER, Step.Kind.PUSH_UNDER);
        return step.flatMap(s -> joint(e, f, s)).map(j -> {
            boolean lift = step.get().kind() == Step.Kind.LIFT_UNDER;
            boolean flashing = lift && j.inner().kind() == MaterialKind.FLASHING;
            long driven = MendSizes.driven(e, step.get()), asked = flashing ? Math.max(driven, MendSizes.overUpstand(e)) : MendSizes.lap(e, step.get());
            Edited out = new Edited(e.elevation().pieces());
            String inner = j.inner().piece().id();
            long top = top(out, inner);
            out.extend(inner, Surface.WALL, LapMends.beneath(j.line(), asked));
            if (flashing) {
                double more = (top(out, inner) - top) / 100.0;
                out.profile(inner, p -> p.withUpstand(p.upstandMm().isPresent() ? OptionalDouble.of(p.upstandMm().getAsDouble() + more) : p.upstandMm()));
            }
            out.sayLap(asked, j.outer().piece().id(), inner, "");
            return out;
        });
    }

    /** Tape over the edge that water gets under last. */
    static Optional<Edited> sealed(Evidence e, Finding f) {
        return last(f, Step.Kind.values()).flatMap(s -> joint(e, f, s)).flatMap(j -> TapeMends.along(e, j));
    }

    /** A head flashing with a higher upstand, or a higher strip behind it, where wind lifts water over it from the head of an opening. */
    static Optional<Edited> raised(Evidence e, Finding f) {
        Optional<Step> step = lastStep(f).filter(s -> s.kind() == Step.Kind.LIFT_UNDER && s.on().side() == Side.HEAD);
        Edited out = new Edited(e.elevation().pieces());
        return step.filter(s -> out.number(s.layer()) >= 0).flatMap(s -> e.elevation().findOpening(s.on().opening()).flatMap(o -> {
            long driven = MendSizes.driven(e, s), top = o.rect().maxY() + driven;
            Optional<Box> old = out.pieces().get(out.number(s.layer())).wallBox().filter(b -> b.maxY() < top);
            old.ifPresent(b -> {
                out.extend(s.layer(), Surface.WALL, List.of(Region.of(new Box(b.minX(), b.maxY() - INTO, b.maxX(), top))));
                out.profile(s.layer(), p -> p.withUpstand(p.upstandMm().isPresent() ? OptionalDouble.of((top - b.minY()) / 100.0) : p.upstandMm()));
                out.say(s.layer() + " reaches " + LengthText.mm(driven) + " up from the head behind " + s.piece() + ", no less than wind lifts water.");
            });
            return old.map(b -> out);
        }));
    }

    private static long top(Edited out, String id) {
        return out.pieces().get(out.number(id)).wallBox().orElseThrow().maxY();
    }

    private static Optional<Step> last(Finding f, Step.Kind... kinds) {
        return lastStep(f).filter(s -> List.of(kinds).contains(s.kind()) && s.on().isWall());
    }

    private static Optional<Step> lastStep(Finding f) {
        return f.path().stream().filter(s -> !s.piece().isEmpty()).reduce((a, b) -> b);
    }

    /** The joint whose outer piece the water gets under, nearest to where it comes onto the frame. */
    private static Optional<Joint> joint(Evidence e, Finding f, Step s) {
        Box b = f.where().box();
        Point at = new Point((b.minX() + b.maxX()) / 2, (b.minY() + b.maxY()) / 2);
        return e.joints().all().stream().filter(j -> j.surface().isWall() && j.outer().piece().id().equals(s.piece()) && j.line().size() > 1)
                .min(Comparator.comparingDouble(j -> away(Box.of(j.line()), at)));
    }

    private static double away(Box b, Point p) {
        return Math.hypot(Math.max(0, Math.max(b.minX() - p.x(), p.x() - b.maxX())), Math.max(0, Math.max(b.minY() - p.y(), p.y() - b.maxY())));
    }
}
