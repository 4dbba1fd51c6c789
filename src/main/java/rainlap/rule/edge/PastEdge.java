package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Surface;

/** How far pieces of one sort run on past a side of the outline. Places along it are grid units from its first end, wall on the left. */
final class PastEdge {
    /** The drawing's own tolerance: 1 mm. */
    private static final double LEAST = 100;

    private final Evidence evidence;
    private final OutlineEdge edge;
    private final EdgeFrame frame;
    private final List<Face> faces;
    private final Intervals wall;

    private PastEdge(Evidence e, OutlineEdge edge, Predicate<Face> sort, double near) {
        this.evidence = e;
        this.edge = edge;
        this.frame = EdgeFrame.of(edge.line());
        this.faces = e.stack().meeting(Surface.WALL, edge.line().box().grow(Math.round(Math.max(near, LEAST)) + 3)).stream().filter(sort).toList();
        this.wall = Intervals.of(0, frame.length()).minus(Intervals.unionOf(
                e.elevation().openingsMeeting(edge.line().box()).stream().map(o -> frame.inside(Region.of(o.rect()), frame.side())).toList()));
    }

    /** Every side of the outline with one of these roles. */
    static List<PastEdge> of(Evidence e, Set<EdgeRole> roles, Predicate<Face> sort) {
        return of(e, roles, sort, 0);
    }

    /** The same with pieces that come no nearer than a distance, grid units. */
    static List<PastEdge> of(Evidence e, Set<EdgeRole> roles, Predicate<Face> sort, double near) {
        return e.elevation().outline().edges().stream().filter(s -> roles.contains(s.role())).map(s -> new PastEdge(e, s, sort, near)).toList();
    }

    /** A stretch of it that lacks something. */
    record Stretch(PastEdge past, double from, double to) {
        /** How far what runs furthest goes on past it, least over the stretch, grid units. */
        long least() {
            return Math.round(past.faces.stream().mapToDouble(f -> past.runsOn(f).leastWithin(from, to)).filter(Double::isFinite).max().orElse(0));
        }

        /** Ids in laying order of the pieces that lie at it. */
        List<String> pieces(double near) {
            return past.faces.stream().filter(f -> !past.at(f, near).intersect(Intervals.of(from, to)).isEmpty()).map(f -> f.piece().id()).distinct().toList();
        }

        Place place() {
            Segment s = new Segment(past.frame.at(from), past.frame.at(to));
            return Place.line(past.evidence.elevation(), Surface.WALL, s);
        }

        String length() {
            return LengthText.mmUp(Math.round(to - from));
        }

        String edge() {
            return past.edge.role().word();
        }
    }

    /** Judges each stretch of 1 mm and more that a rule finds lacking among those it looks at; what is left of them holds. */
    Stream<Outcome> judge(Intervals looked, Intervals lacking, Function<Stretch, Outcome> broken) {
        List<Outcome> out = new ArrayList<>();
        for (int i = 0; i < lacking.count(); i++) {
            if (lacking.to(i) - lacking.from(i) >= LEAST) {
                out.add(broken.apply(new Stretch(this, lacking.from(i), lacking.to(i))));
            }
        }
        Intervals sound = looked.minus(lacking);
        if (out.isEmpty() || sound.total() >= LEAST) {
            out.add(Outcome.Holds.of(faces.stream().filter(f -> !at(f, 0).intersect(sound).isEmpty()).map(f -> f.piece().id()).distinct().toList()));
        }
        return out.stream();
    }

    /** Where pieces lie directly beside it, or a distance inside it, and no opening stands there. */
    Intervals reached(double... near) {
        List<Intervals> out = new ArrayList<>();
        for (double t : near) {
            faces.forEach(f -> out.add(at(f, t)));
        }
        faces.forEach(f -> out.add(at(f, 0)));
        return Intervals.unionOf(out).intersect(wall);
    }

    /** What ends no further inside it than the drawing's own tolerance reaches it, too: where more lies bare, that is told of the bare wall. */
    private Intervals at(Face f, double near) {
        return near > 0 ? frame.inside(f.region(), near) : frame.inside(f.region(), frame.side()).union(frame.inside(f.region(), LEAST + frame.side()));
    }

    /** Where a piece of a sort lies directly beside it. */
    Intervals beside(Predicate<Face> sort) {
        return Intervals.unionOf(faces.stream().filter(sort).map(f -> at(f, 0)).toList());
    }

    /** Where some piece runs on past it by at least a length, grid units. */
    Intervals past(long least) {
        return Intervals.unionOf(faces.stream().map(f -> f.across(frame, 0, frame.length()).minus(runsOn(f).below(least))).toList());
    }

    private Profile runsOn(Face f) {
        Intervals across = f.across(frame, 0, frame.length());
        EdgeFrame out = frame.turned();
        double length = frame.length();
        Profile.Builder all = new Profile.Builder();
        for (int i = 0; i < across.count(); i++) {
            all.add(f.runsOn(out, length - across.to(i), length - across.from(i)).turned(length));
        }
        return all.build();
    }
}
