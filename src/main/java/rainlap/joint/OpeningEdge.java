package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Profile;
import rainlap.geom.Segment;
import rainlap.geom.Slabs;
import rainlap.stack.Face;
import rainlap.stack.Stack;
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

    /** All edges of all openings with a reveal: sill, left, right, head of each in the file's order. */
    public static List<OpeningEdge> of(Stack stack) {
        List<OpeningEdge> out = new ArrayList<>();
        for (Opening o : stack.elevation().openings()) {
            for (Side side : List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD)) {
                if (o.reveal() > 0) {
                    out.add(of(stack, o, side));
                }
            }
        }
        return out;
    }

    private static OpeningEdge of(Stack stack, Opening o, Side side) {
        List<Face> faces = stack.on(new Surface(o.id(), side)).stream().filter(Sheets::covers).toList();
        EdgeFrame front = EdgeFrame.of(new Segment(new Point(0, 0), new Point(o.along(side), 0)));
        List<Turn> turns = faces.stream().map(f -> new Turn(f, turned(f, front))).filter(t -> !t.where.isEmpty()).toList();
        Intervals turned = turns.stream().map(Turn::where).reduce(Intervals.NONE, Intervals::union);
        Profile covered = new Slabs(o.surface(side), faces.stream().map(Face::region).toList()).coveredFromBelow();
        return new OpeningEdge(o, side, whereTurned(covered, turned, front.length()), turns);
    }

    private static Intervals turned(Face f, EdgeFrame front) {
        Intervals out = Intervals.NONE;
        for (Segment s : f.folds()) {
            if (s.a().y() == 0 && s.b().y() == 0) {
                out = out.union(Intervals.of(Math.min(s.a().x(), s.b().x()), Math.max(s.a().x(), s.b().x())));
            }
        }
        return out.intersect(Intervals.of(0, front.length()));
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
