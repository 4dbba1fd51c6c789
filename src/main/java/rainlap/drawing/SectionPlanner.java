package rainlap.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Grid;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.material.Layer;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.wall.EdgeRole;
import rainlap.wall.Stage;

/** Where to cut the wall so that a weak point shows: square to a weak stretch, with what is short and what is asked inside. */
final class SectionPlanner {
    /** Length of a plumb and of a level cut at 1:5. */
    private static final long PLUMB = 215 * Grid.MM;
    private static final long LEVEL = 260 * Grid.MM;
    /** What is turned inwards may be so deep at 1:5. */
    private static final long DEEPEST = 80 * Grid.MM;
    private static final long MARGIN = 32 * Grid.MM;
    /** Rules on what is turned round an edge: there even nothing is worth a dimension of what is asked. */
    private static final Set<String> TURNED = Set.of("short-return", "short-corner-wrap", "unwrapped-corner");
    /** Rules on ends of flashings. */
    private static final Set<String> ENDS = Set.of("no-end-dam", "way-round-an-end");
    /** A longer lap is no lap to dimension: one sheet lies over the other altogether. */
    private static final long LONGEST = 300 * Grid.MM;
    private final Evidence evidence;

    SectionPlanner(Evidence evidence) {
        this.evidence = evidence;
    }

    /** The cut for a weak point with its letter still open. */
    SectionPlan plan(WeakPoint p, double share) {
        Place where = p.finding().where();
        boolean plumb = isPlumb(where) && !isEnd(p.finding());
        Point at = onWall(where.isLine() ? along(where.line(), share) : where.surface().isWall() ? middle(where.box()) : atEdge(where), plumb);
        Optional<SectionPlan.Gauge> gauge = gauge(p.finding(), at, plumb);
        long reach = gauge.filter(g -> g.sign() != 0).map(g -> Math.max(g.measured(), g.asked())).orElse(0L);
        long inwards = gauge.filter(g -> g.sign() == 0).map(g -> Math.max(g.measured(), g.asked())).orElse(0L);
        int scale = 5;
        while (scale < 20 && (reach + 2 * MARGIN > (plumb ? PLUMB : LEVEL) * scale / 5 || inwards > DEEPEST * scale / 5)) {
            scale *= 2;
        }
        long length = (plumb ? PLUMB : LEVEL) * scale / 5;
        long centre = middle(p.finding(), plumb ? at.y() : at.x()) + gauge.map(SectionPlan.Gauge::sign).orElse(0) * reach / 2 - (plumb ? 0 : internal(at) * length / 5);
        return new SectionPlan("", List.of(p), new Cut(plumb, at, centre - length / 2, centre + length / 2), scale, gauge, Optional.empty());
    }

    /** Cuts at these shares of the weak stretch and within the streams that get in there, those that meet the water first. */
    List<SectionPlan> plans(WeakPoint p, double[] shares) {
        if (isEnd(p.finding())) {
            return new ArrayList<>(Arrays.stream(shares).mapToObj(share -> plan(p, share)).toList());
        }
        WetPlanes water = new WetPlanes(evidence, p);
        List<SectionPlan> wet = new ArrayList<>(), dry = new ArrayList<>();
        Stream.concat(Arrays.stream(shares).boxed(), streams(p, water)).map(share -> plan(p, share))
                .forEach(plan -> (water.isWet(plan.cut()) ? wet : dry).add(plan));
        wet.addAll(dry);
        return wet;
    }

    private static Stream<Double> streams(WeakPoint p, WetPlanes water) {
        Place where = p.finding().where();
        if (!where.isLine() || where.line().size() < 2) {
            return Stream.empty();
        }
        int i = longest(where.line());
        return water.shares(where.line().get(i), where.line().get(i + 1), isPlumb(where)).stream();
    }

    /** Whether a finding is about battens, cladding or trims, so that a cut through the wrap alone shows nothing of it. */
    static boolean isBeyondTheWrap(Finding f, Evidence evidence) {
        return evidence.stage() == Stage.FINISHED && (Rules.find(f.rule()).map(r -> r.info().theme())
                .filter(t -> t == RuleInfo.Theme.CAVITY || t == RuleInfo.Theme.FACE).isPresent() || evidence.elevation().pieces().stream()
                .anyMatch(p -> f.pieces().contains(p.id()) && p.material().layer() != Layer.WRAP));
    }

    /** The place itself, or where a plumb cut through it meets the wall's top, where that lies far below: a raked wall is as high as its highest place only there. */
    private Point onWall(Point at, boolean plumb) {
        Box wall = evidence.elevation().outline().box();
        if (!plumb || at.x() < wall.minX() || at.x() > wall.maxX()) {
            return at;
        }
        Intervals in = EdgeFrame.of(new Segment(new Point(at.x(), wall.minY()), new Point(at.x(), wall.maxY()))).inside(evidence.elevation().outline().region(), 0).shifted(wall.minY());
        double top = in.isEmpty() ? at.y() : in.to(in.count() - 1);
        return at.y() - top > PLUMB / 4.0 ? new Point(at.x(), Math.round(top)) : at;
    }

    /** 1 at an internal corner on the right, -1 on the left, 0 elsewhere: room is left on the wall for what is dimensioned on the other one. */
    private long internal(Point at) {
        Box wall = evidence.elevation().outline().box();
        boolean there = evidence.elevation().outline().edges().stream().anyMatch(e -> e.role() == EdgeRole.INTERNAL_CORNER && e.line().box().grow(Grid.MM).contains(at));
        return there ? Long.signum(2 * at.x() - wall.minX() - wall.maxX()) : 0;
    }

    /** Where water comes off the end of a ledge at one place, a cut from above shows that end. */
    private static boolean isEnd(Finding f) {
        return ENDS.contains(f.rule()) && f.where().box().width() < Grid.MM;
    }

    /** What is missing at the back of a sill is seen with its front, which is at the opening's edge. */
    private long middle(Finding f, long at) {
        return !f.rule().equals("no-back-dam") ? at : evidence.elevation().findOpening(f.where().surface().opening()).map(o -> o.rect().minY()).orElse(at);
    }

    /** The middle of an area of a reveal, out at the opening's edge. */
    private Point atEdge(Place where) {
        Point m = middle(where.box());
        return evidence.elevation().findOpening(where.surface().opening()).map(o -> o.edge(where.surface().side()))
                .map(s -> where.surface().side().isJamb() ? new Point(s.a().x(), m.y()) : new Point(m.x(), s.a().y())).orElse(m);
    }

    /** A stretch that runs more across than up is cut plumb; so is an area wider than high, and all of a sill or head. */
    private static boolean isPlumb(Place where) {
        if (!where.isLine() && !where.surface().isWall()) {
            return !where.surface().side().isJamb();
        }
        if (where.isLine()) {
            Point a = where.line().get(0), b = where.line().get(where.line().size() - 1);
            return Math.abs(b.x() - a.x()) >= Math.abs(b.y() - a.y());
        }
        Box b = where.box();
        return b.width() >= b.height();
    }

    private static Point middle(Box b) {
        return new Point((b.minX() + b.maxX()) / 2, (b.minY() + b.maxY()) / 2);
    }

    private static Point along(List<Point> line, double share) {
        if (line.size() == 1) {
            return line.get(0);
        }
        int longest = longest(line);
        Point a = line.get(longest), b = line.get(longest + 1);
        return new Point(Math.round(a.x() + share * (b.x() - a.x())), Math.round(a.y() + share * (b.y() - a.y())));
    }

    private static int longest(List<Point> line) {
        int longest = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            if (length(line, i) > length(line, longest)) {
                longest = i;
            }
        }
        return longest;
    }

    private static double length(List<Point> line, int i) {
        return Math.hypot(line.get(i + 1).x() - line.get(i).x(), line.get(i + 1).y() - line.get(i).y());
    }

    private Optional<SectionPlan.Gauge> gauge(Finding f, Point at, boolean plumb) {
        if (!f.unit().equals("mm") && f.measured().isPresent()) {
            return Optional.empty();
        }
        long asked = f.required().isPresent() && f.unit().equals("mm") ? Math.round(f.required().getAsDouble() * 100) : 0;
        Optional<Joint> joint = f.joint().flatMap(id -> evidence.joints().all().stream().filter(j -> j.id().equals(id)).findFirst());
        if (joint.isPresent()) {
            return joint.get().kind().isLap() ? lap(joint.get(), at, plumb, asked) : Optional.empty();
        }
        return isAtTurn(at, plumb) && TURNED.contains(f.rule())
                ? Optional.of(new SectionPlan.Gauge(plumb ? at.y() : at.x(), 0, Math.round(f.measured().orElse(0) * 100), asked))
                : Optional.empty();
    }

    /** The lap at a place of a joint's edge, measured from the edge on to the outer piece. */
    static Optional<SectionPlan.Gauge> lap(Joint joint, Point at, boolean plumb, long asked) {
        for (Run r : joint.runs()) {
            EdgeFrame e = EdgeFrame.of(r.line());
            double s = e.s(at.x(), at.y());
            if (Math.abs(e.t(at.x(), at.y())) < 2 && s >= -1 && s <= e.length() + 1) {
                double lap = r.lap().leastWithin(Math.max(0, s), Math.min(e.length(), Math.max(0, s)));
                double inwards = plumb ? e.ux() : -e.uy();
                if (lap <= LONGEST && Math.abs(inwards) > 0.5) {
                    return Optional.of(new SectionPlan.Gauge(plumb ? at.y() : at.x(), inwards > 0 ? 1 : -1, Math.round(lap), asked > lap ? asked : 0));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether the place lies on the edge of an opening or on the end of the wall. */
    private boolean isAtTurn(Point at, boolean plumb) {
        List<Long> edges = new ArrayList<>();
        evidence.elevation().openings().stream().filter(o -> o.rect().contains(at)).forEach(o -> edges.addAll(plumb
                ? List.of(o.rect().minY(), o.rect().maxY()) : List.of(o.rect().minX(), o.rect().maxX())));
        evidence.elevation().outline().edges().stream().filter(e -> plumb ? e.line().isLevel() : e.line().isPlumb())
                .forEach(e -> edges.add(plumb ? e.line().a().y() : e.line().a().x()));
        long place = plumb ? at.y() : at.x();
        return edges.stream().anyMatch(x -> Math.abs(x - place) <= Grid.MM);
    }
}
