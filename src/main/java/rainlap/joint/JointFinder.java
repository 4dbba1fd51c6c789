package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Hits;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.geom.Segment;
import rainlap.stack.Face;
import rainlap.stack.Stack;

/** Finds the joints of some faces edge by edge; see the package description. */
final class JointFinder {
    /** Edges this near meet: 1 mm. */
    static final long BUTT = 100;
    /** A strip of nothing up to this wide between facing edges is a gap, wider is bare wall: 100 mm. */
    static final long GAP = 10_000;
    private static final long BESIDE = 3;

    private final Stack stack;
    private final Ground ground;
    private final List<Joint> joints = new ArrayList<>();
    private final List<Joints.Open> open = new ArrayList<>();

    JointFinder(Stack stack, Ground ground) {
        this.stack = stack;
        this.ground = ground;
    }

    /** Walks round those of some faces that may end over, under or beside another. */
    JointFinder find(List<Face> faces) {
        for (Face p : faces) {
            if (Sheets.isSheet(p) || Sheets.isLooseTape(p)) {
                walk(p);
            }
        }
        return this;
    }

    /** What was found; several may have one name. */
    List<Joint> joints() {
        return joints;
    }

    List<Joints.Open> open() {
        return open;
    }

    private void walk(Face p) {
        Near near = Near.of(p, stack.meeting(p.surface(), p.box().grow(BESIDE)));
        Chain chain = new Chain();
        for (Segment e : p.freeEdges()) {
            new EdgeSweep(stack, p, e, near).laps(chain, this::lookOut);
        }
        chain.close((link, runs) -> joints.add(joint(p, link, runs)));
    }

    private static Joint joint(Face outer, Chain.Link link, List<Run> runs) {
        Joint j = new Joint(Naming.name(outer, link, runs), link.kind(), outer, link.inner(), link.sealed(), runs, false);
        return TapedAlong.is(j) ? j.taped() : j;
    }

    /** What lies beside a sheet and has to do with its joints: other sheets of its barrier, and strips; both in laying order. */
    record Near(List<Face> sheets, List<Face> strips) {
        static Near of(Face p, List<Face> all) {
            List<Face> sheets = new ArrayList<>(all.size()), strips = new ArrayList<>(all.size());
            for (Face q : all) {
                if (q.number() != p.number() && Sheets.isStrip(q)) {
                    strips.add(q);
                } else if (q.number() != p.number() && Sheets.isSheet(q) && Sheets.sameBarrier(p, q)) {
                    sheets.add(q);
                }
            }
            return new Near(sheets, strips);
        }
    }

    /** Beside a stretch of an edge lies nothing: is there a facing edge, or is it open? */
    private void lookOut(EdgeSweep sweep, Intervals stretch, Chain chain) {
        if (!Sheets.isSheet(sweep.piece())) {
            return;
        }
        Intervals beside = stretch.intersect(ground.beside(sweep.piece().surface(), sweep.frame()));
        if (beside.isEmpty()) {
            return;
        }
        Intervals faced = new Facing(stack, sweep).gaps(beside, chain);
        Intervals left = beside.minus(faced);
        for (int i = 0; i < left.count(); i++) {
            open.add(new Joints.Open(sweep.piece().surface(),
                    new Segment(sweep.frame().at(left.from(i)), sweep.frame().at(left.to(i)))));
        }
    }

    /** The lap of P over Q from a stretch of P's edge. */
    static Profile lap(EdgeFrame e, double from, double to, Face p, Face q) {
        Hits hits = new Hits(e, from, to, -e.side());
        p.addEnds(hits);
        q.addEnds(hits);
        Profile lap = hits.nearest().atLeastZero();
        return Double.isInfinite(lap.least()) ? Profile.constant(from, to, untilItSlipsOut(e, from, to, p, q)) : lap;
    }

    /** Where nothing stands against us anywhere along a short, slanting edge: the furthest one gets before either sheet ends sideways. */
    private static double untilItSlipsOut(EdgeFrame e, double from, double to, Face p, Face q) {
        Hits hits = new Hits(e, from, to, e.side());
        p.freeEdges().forEach(hits::add);
        q.freeEdges().forEach(hits::add);
        Profile nearest = hits.nearest();
        return IntStream.range(0, nearest.count()).mapToDouble(i -> Math.max(nearest.first(i), nearest.last(i)))
                .filter(Double::isFinite).max().orElse(0);
    }
}
