package rainlap.joint;

import java.util.LinkedHashMap;
import java.util.Map;
import rainlap.geom.Cuts;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Hits;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.geom.Segment;
import rainlap.stack.Face;
import rainlap.stack.Stack;

/** Looks out from a stretch of an edge beside which nothing lies, for the nearest facing edge of another sheet. */
final class Facing {
    private final Stack stack;
    private final EdgeSweep sweep;
    private final EdgeFrame out;
    private final double length;

    Facing(Stack stack, EdgeSweep sweep) {
        this.stack = stack;
        this.sweep = sweep;
        this.out = sweep.frame().turned();
        this.length = sweep.frame().length();
    }

    /** Adds butts and gaps on these stretches to the chain; returns where a sheet faces the edge, whoever reports it. */
    Intervals gaps(Intervals stretches, Chain chain) {
        Intervals faced = Intervals.NONE;
        for (int i = 0; i < stretches.count(); i++) {
            faced = faced.union(gapsOn(stretches.from(i), stretches.to(i), chain));
        }
        return faced;
    }

    private Intervals gapsOn(double from, double to, Chain chain) {
        Face p = sweep.piece();
        Segment at = new Segment(sweep.frame().at(from), sweep.frame().at(to));
        Map<Face, Profile> seen = new LinkedHashMap<>();
        for (Face q : stack.meeting(p.surface(), at.box().grow(JointFinder.GAP))) {
            if (q.number() != p.number() && Sheets.isSheet(q) && Sheets.sameBarrier(p, q)) {
                seen.put(q, distance(q, from, to));
            }
        }
        Intervals faced = Intervals.NONE;
        double[] cuts = cuts(seen, from, to);
        for (int i = 0; i + 1 < cuts.length; i++) {
            Face nearest = nearestAt(seen, (cuts[i] + cuts[i + 1]) / 2);
            if (nearest != null) {
                faced = faced.union(report(nearest, seen.get(nearest), cuts[i], cuts[i + 1], chain));
            }
        }
        return faced;
    }

    /** How far out the first edge of q that faces this one lies, in this edge's own s. */
    private Profile distance(Face q, double from, double to) {
        Hits hits = new Hits(out, length - to, length - from, -out.side());
        for (Segment e : q.freeEdges()) {
            if (turnsTowardsUs(e)) {
                hits.add(e);
            }
        }
        return hits.nearest().turned(length);
    }

    /** The sheet lies beyond the edge, not before it: its edge runs with ours seen from outside. */
    private boolean turnsTowardsUs(Segment e) {
        return out.s(e.b().x(), e.b().y()) > out.s(e.a().x(), e.a().y());
    }

    private static double[] cuts(Map<Face, Profile> seen, double from, double to) {
        Cuts cuts = new Cuts();
        cuts.add(from);
        cuts.add(to);
        for (Profile p : seen.values()) {
            for (int i = 0; i < p.count(); i++) {
                cuts.add(Math.max(from, Math.min(to, p.from(i))));
                cuts.add(Math.max(from, Math.min(to, p.to(i))));
            }
        }
        return cuts.sorted();
    }

    /** Of several in one place the outermost. */
    private Face nearestAt(Map<Face, Profile> seen, double s) {
        Face best = null;
        double least = JointFinder.GAP + 0.5;
        for (Map.Entry<Face, Profile> e : seen.entrySet()) {
            double d = e.getValue().leastWithin(s, s);
            if (d < least || best != null && d == least && stack.isOutside(e.getKey(), best)) {
                least = d;
                best = e.getKey();
            }
        }
        return best;
    }

    private Intervals report(Face q, Profile distance, double from, double to, Chain chain) {
        Intervals here = Intervals.of(from, to);
        Intervals butt = distance.below(JointFinder.BUTT + 0.5).intersect(here);
        Intervals gap = distance.below(JointFinder.GAP + 0.5).intersect(here).minus(butt);
        if (sweep.piece().number() > q.number()) {
            add(q, JointKind.BUTT, distance, butt, chain);
            add(q, JointKind.GAP, distance, gap, chain);
        }
        return butt.union(gap);
    }

    private void add(Face q, JointKind kind, Profile distance, Intervals where, Chain chain) {
        for (int i = 0; i < where.count(); i++) {
            Profile width = distance.part(where.from(i), where.to(i)).atLeastZero();
            chain.add(new Chain.Link(q, kind, false), sweep.run(where.from(i), where.to(i), width, q, kind));
        }
    }
}
