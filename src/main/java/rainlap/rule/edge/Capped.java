package rainlap.rule.edge;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.geom.Segment;
import rainlap.material.MaterialKind;
import rainlap.rule.Cappings;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Surface;

/**
 * A parapet and the cappings over it: trims and flashings that cross its edge and lie outside the cladding there. Places along it are grid units from its first end, wall on the left.
 *
 * @param cappings in the order in which they begin
 */
record Capped(Evidence evidence, OutlineEdge edge, EdgeFrame frame, List<Face> cappings) {
    /** The drawing's own tolerance: 1 mm. */
    static final double LEAST = 100;

    /** Judges each parapet of a finished wall; says so where there is nothing to judge. */
    static Stream<Outcome> each(Evidence e, Function<Capped, Stream<Outcome>> judge) {
        List<Capped> all = e.elevation().outline().edges().stream().filter(o -> o.role() == EdgeRole.PARAPET).map(o -> of(e, o)).toList();
        if (all.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("the outline has no parapet"));
        }
        boolean clad = e.stack().on(Surface.WALL).stream().anyMatch(f -> Cladding.is(f) || Cladding.isOf(f, MaterialKind.TRIM));
        return clad ? all.stream().flatMap(judge) : Stream.of(Cladding.none());
    }

    private static Capped of(Evidence e, OutlineEdge edge) {
        EdgeFrame frame = EdgeFrame.of(edge.line());
        List<Face> cappings = e.stack().meeting(Surface.WALL, edge.line().box().grow(3)).stream()
                .filter(f -> Cappings.isAlong(f, frame) && !isBehind(e, frame, f))
                .sorted(Comparator.comparingDouble((Face f) -> across(f, frame).from(0)).thenComparing(Face::number)).toList();
        return new Capped(e, edge, frame, cappings);
    }

    /** Behind cladding, or a flashing beneath the trim that caps it all. */
    private static boolean isBehind(Evidence e, EdgeFrame frame, Face capping) {
        boolean flashing = Cladding.isOf(capping, MaterialKind.FLASHING);
        return e.stack().meeting(Surface.WALL, capping.box()).stream()
                .filter(f -> Cladding.is(f) || flashing && Cladding.isOf(f, MaterialKind.TRIM) && Cappings.isAlong(f, frame))
                .anyMatch(f -> e.stack().isOutside(f, capping) && f.region().overlaps(capping.region()));
    }

    private static Intervals across(Face f, EdgeFrame frame) {
        return f.across(frame, 0, frame.length());
    }

    Intervals across(Face capping) {
        return across(capping, frame);
    }

    /** How far a capping comes down over the wall's face, square to the edge. */
    Profile down(Face capping) {
        return Cappings.down(capping, frame);
    }

    Place place(double from, double to) {
        return Place.line(evidence.elevation(), Surface.WALL, new Segment(frame.at(from), frame.at(to)));
    }

    /** Square to the edge at a place of it, as far down the face as a length. */
    Place across(double at, double down) {
        return Place.line(evidence.elevation(), Surface.WALL, new Segment(frame.at(at), frame.at(at, down)));
    }
}
