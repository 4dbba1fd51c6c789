package rainlap.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.material.MaterialKind;
import rainlap.mend.Mended;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.RuleInfo;
import rainlap.check.Rules;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** What is dimensioned in a mended cut: what was asked, the lap that is there now, or a strip that was added. */
final class MendedGauge {
    private MendedGauge() {}

    static SectionPlan in(SectionPlan plan, Mended mended) {
        Optional<SectionPlan.Gauge> turned = plan.gauge().filter(g -> g.sign() == 0 && g.asked() > 0)
                .map(g -> new SectionPlan.Gauge(g.from(), 0, g.asked(), 0));
        Optional<SectionPlan.Gauge> strip = strip(plan.cut(), mended), lap = lap(plan, mended.evidence());
        boolean tape = Rules.find(plan.first().finding().rule()).filter(r -> r.info().theme() == RuleInfo.Theme.TAPE).isPresent();
        return plan.with(turned.or(() -> tape ? strip.or(() -> lap) : lap.or(() -> strip)).or(() -> overlap(plan, mended.evidence())));
    }

    /** How far two pieces that are no sheets of one layer lie over one another, as cappings do. */
    private static Optional<SectionPlan.Gauge> overlap(SectionPlan plan, Evidence e) {
        Finding f = plan.first().finding();
        EdgeFrame line = EdgeFrame.of(plan.cut().line());
        if (f.pieces().size() != 2 || f.required().isEmpty() || !f.unit().equals("mm")) {
            return Optional.empty();
        }
        Intervals both = along(line, f.pieces().get(0), e).intersect(along(line, f.pieces().get(1), e));
        return both.count() != 1 || both.from(0) < 1 || both.to(0) > plan.cut().length() - 1 ? Optional.empty()
                : Optional.of(new SectionPlan.Gauge(Math.round(plan.cut().from() + both.from(0)), 1, Math.round(both.total()), 0));
    }

    private static Intervals along(EdgeFrame line, String id, Evidence e) {
        return e.stack().on(Surface.WALL).stream().filter(f -> f.piece().id().equals(id)).map(f -> line.inside(f.region(), 0)).reduce(Intervals.NONE, Intervals::union);
    }

    /** How far the first piece added reaches along the cut, all of which lies within it. */
    private static Optional<SectionPlan.Gauge> strip(Cut cut, Mended mended) {
        EdgeFrame e = EdgeFrame.of(cut.line());
        for (Face f : mended.evidence().stack().on(Surface.WALL)) {
            boolean strip = mended.added().contains(f.piece().id()) && f.piece().material().kind() != MaterialKind.SEALANT;
            Intervals in = strip ? e.inside(f.region(), 0) : Intervals.NONE;
            if (!in.isEmpty() && in.from(0) > 1 && in.to(0) < cut.length() - 1) {
                return Optional.of(new SectionPlan.Gauge(Math.round(cut.from() + in.from(0)), 1, Math.round(in.to(0) - in.from(0)), 0));
            }
        }
        return Optional.empty();
    }

    /** The sound lap between the two pieces of a finding that the cut meets nearest to its middle. */
    private static Optional<SectionPlan.Gauge> lap(SectionPlan plan, Evidence e) {
        Finding f = plan.first().finding();
        Cut cut = plan.cut();
        return e.joints().all().stream().filter(j -> j.kind().isLap() && j.kind() != JointKind.REVERSE_LAP && j.surface().isWall())
                .filter(j -> Set.copyOf(f.pieces()).containsAll(List.of(j.outer().piece().id(), j.inner().piece().id())))
                .flatMap(j -> j.runs().stream().flatMap(r -> crossing(r, cut).stream().flatMap(p -> SectionPlanner.lap(j, p, cut.plumb(), 0).stream())))
                .filter(g -> cut.from() < g.from() && g.from() < cut.to())
                .min(Comparator.comparingLong(g -> Math.abs(g.from() - cut.centre())));
    }

    /** Where a plane crosses a run. */
    private static Optional<Point> crossing(Run r, Cut cut) {
        Segment s = r.line();
        long a = cut.plumb() ? s.a().x() : s.a().y(), b = cut.plumb() ? s.b().x() : s.b().y();
        if (a == b || (a - cut.across()) * (double) (b - cut.across()) > 0) {
            return Optional.empty();
        }
        double share = (double) (cut.across() - a) / (b - a);
        return Optional.of(new Point(Math.round(s.a().x() + share * (s.b().x() - s.a().x())), Math.round(s.a().y() + share * (s.b().y() - s.a().y()))));
    }
}
