package rainlap.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Grid;
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
    /** Sloped edges are off whole millimetres by no more, grid units. */
    private static final long OFF = 2;

    private MendedGauge() {}

    static SectionPlan in(SectionPlan plan, Mended mended) {
        Optional<SectionPlan.Gauge> turned = plan.gauge().filter(g -> g.sign() == 0 && g.asked() > 0)
                .map(g -> new SectionPlan.Gauge(g.from(), 0, g.asked(), 0));
        Optional<SectionPlan.Gauge> strip = strip(plan.cut(), mended), lap = lap(plan, mended);
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
            boolean strip = mended.added().contains(f.piece().id()) && f.kind() != MaterialKind.SEALANT;
            Intervals in = strip ? e.inside(f.region(), 0) : Intervals.NONE;
            if (!in.isEmpty() && in.from(0) > 1 && in.to(0) < cut.length() - 1) {
                return Optional.of(new SectionPlan.Gauge(Math.round(cut.from() + in.from(0)), 1, Math.round(in.to(0) - in.from(0)), 0));
            }
        }
        return Optional.empty();
    }

    /** The sound lap between two pieces of a finding, or one of them and one that was added, that the cut meets nearest to its middle; first of those on what it names first. */
    private static Optional<SectionPlan.Gauge> lap(SectionPlan plan, Mended mended) {
        Finding f = plan.first().finding();
        Evidence e = mended.evidence();
        Cut cut = plan.cut();
        Set<String> of = Stream.concat(f.pieces().stream(), mended.added().stream()).collect(Collectors.toSet());
        List<Joint> laps = e.joints().all().stream().filter(j -> j.kind().isLap() && j.kind() != JointKind.REVERSE_LAP && j.surface().isWall())
                .filter(j -> of.containsAll(ids(j)) && f.pieces().stream().anyMatch(ids(j)::contains)).toList();
        List<Joint> first = laps.stream().filter(j -> ids(j).contains(f.pieces().get(0))).toList();
        return nearest(first, cut).or(() -> nearest(laps, cut));
    }

    private static List<String> ids(Joint j) {
        return List.of(j.outer().piece().id(), j.inner().piece().id());
    }

    private static Optional<SectionPlan.Gauge> nearest(List<Joint> laps, Cut cut) {
        return laps.stream().flatMap(j -> j.runs().stream().flatMap(r -> crossing(r, cut).stream().flatMap(p -> SectionPlanner.lap(j, p, cut.plumb(), 0).stream()))).map(MendedGauge::whole)
                .filter(g -> cut.from() < g.from() && g.from() < cut.to())
                .min(Comparator.comparingLong(g -> Math.abs(g.from() - cut.centre())));
    }

    /** A sloped edge lies on a grid: what that takes off whole millimetres is none. */
    private static SectionPlan.Gauge whole(SectionPlan.Gauge g) {
        long whole = Math.round((double) g.measured() / Grid.MM) * Grid.MM;
        return Math.abs(whole - g.measured()) > OFF ? g : new SectionPlan.Gauge(g.from(), g.sign(), whole, g.asked());
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
