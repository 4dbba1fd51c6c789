package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.geom.Segment;
import rainlap.geom.Slabs;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * One edge of an opening and what turns it.
 *
 * @param depth how deep, from the wall's face inwards, the reveal is covered at each place along the edge (grid units, no more than the
 *     reveal); 0 where no piece goes on from the wall into the reveal
 * @param turns which piece turns which stretch of the edge, sheets and strips, in laying order
 */
public record OpeningEdge(Opening opening, Side side, Profile depth, List<Turn> turns) {
    public OpeningEdge {
        turns = List.copyOf(turns);
    }

    /** A piece that goes on over the edge, between two places along it. */
    public record Turn(Face face, Intervals where) {}

    public Surface surface() {
        return new Surface(opening.id(), side);
    }

    static OpeningEdge of(Reveals.One reveal, Side side) {
        Opening o = reveal.opening();
        Intervals whole = Intervals.of(0, o.along(side)), turned = Intervals.NONE;
        List<Turn> turns = new ArrayList<>();
        for (Face f : reveal.on(side)) {
            Intervals where = turned(f, whole);
            if (!where.isEmpty()) {
                turns.add(new Turn(f, where));
                turned = turned.union(where);
            }
        }
        return new OpeningEdge(o, side, whereTurned(covered(reveal, side), turned, o.along(side)), turns);
    }

    private static Profile covered(Reveals.One reveal, Side side) {
        Box surface = reveal.opening().surface(side);
        return reveal.isWhole(side, surface) ? Profile.constant(0, surface.width(), surface.height())
                : new Slabs(surface, reveal.on(side).stream().map(Face::region).toList()).coveredFromBelow();
    }

    private static Intervals turned(Face f, Intervals whole) {
        Intervals out = Intervals.NONE;
        for (Segment s : f.folds()) {
            if (s.ay() == 0 && s.by() == 0) {
                out = out.union(Intervals.of(Math.min(s.ax(), s.bx()), Math.max(s.ax(), s.bx())));
            }
        }
        return out.intersect(whole);
    }

    /** The covered depth where the edge is turned, nothing elsewhere. */
    private static Profile whereTurned(Profile covered, Intervals turned, double length) {
        Profile.Builder out = new Profile.Builder();
        double at = 0;
        for (int i = 0; i < turned.count(); i++) {
            if (turned.from(i) > at) {
                out.add(at, turned.from(i), 0, 0);
            }
            out.add(covered.part(turned.from(i), turned.to(i)));
            at = turned.to(i);
        }
        if (length > at) {
            out.add(at, length, 0, 0);
        }
        return out.build();
    }
}
