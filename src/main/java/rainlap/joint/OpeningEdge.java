package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Profile;
import rainlap.geom.Region;
import rainlap.geom.Segment;
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
 * @param covered the covered part of the surface, in its own frame
 */
public record OpeningEdge(Opening opening, Side side, Profile depth, List<Turn> turns, List<Region> covered) {
    public OpeningEdge {
        turns = List.copyOf(turns);
        covered = List.copyOf(covered);
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
        List<Region> covered = Overlay.intersection(
                Overlay.union(faces.stream().map(Face::region).toList()), List.of(Region.of(o.surface(side))));
        EdgeFrame front = EdgeFrame.of(new Segment(new Point(0, 0), new Point(o.along(side), 0)));
        List<Turn> turns = faces.stream().map(f -> new Turn(f, turned(f, front))).filter(t -> !t.where.isEmpty()).toList();
        Intervals turned = turns.stream().map(Turn::where).reduce(Intervals.NONE, Intervals::union);
        return new OpeningEdge(o, side, depth(covered, front, turned), turns, covered);
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

    private static Profile depth(List<Region> covered, EdgeFrame front, Intervals turned) {
        Intervals started = Intervals.NONE;
        for (Region r : covered) {
            started = started.union(front.inside(r, front.side()));
        }
        Intervals good = started.intersect(turned);
        Profile.Hits hits = new Profile.Hits(front, 0, front.length(), front.side());
        covered.forEach(r -> r.edges().forEach(hits::add));
        Profile seen = hits.nearest();
        List<Profile.Stretch> out = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < good.count(); i++) {
            if (good.from(i) > at) {
                out.add(new Profile.Stretch(at, good.from(i), 0, 0));
            }
            out.addAll(seen.part(good.from(i), good.to(i)).stretches());
            at = good.to(i);
        }
        if (front.length() > at) {
            out.add(new Profile.Stretch(at, front.length(), 0, 0));
        }
        return Profile.of(out);
    }
}
