package rainlap.rule.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.geom.Segment;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.wall.Surface;

/** A stretch of a head flashing's upper edge, and what the rules that walk along it have in common. */
record HeadStretch(Evidence evidence, HeadEdge edge, double from, double to) {

    /** Judges each stretch of 1 mm and more of what a rule looks for; edges without one hold. */
    static Stream<Outcome> judge(Evidence e, Function<HeadEdge, Intervals> where, Function<HeadStretch, Outcome> broken) {
        List<HeadEdge> edges = HeadEdge.of(e);
        if (edges.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("the wall has no head flashing"));
        }
        return edges.stream().flatMap(edge -> {
            List<Outcome> out = new ArrayList<>();
            Intervals found = where.apply(edge);
            for (int i = 0; i < found.count(); i++) {
                if (found.to(i) - found.from(i) >= AskedReturn.LEAST) {
                    out.add(broken.apply(new HeadStretch(e, edge, found.from(i), found.to(i))));
                }
            }
            if (out.isEmpty()) {
                out.add(Outcome.Holds.of(edge.flashing().piece().id()));
            }
            return out.stream();
        });
    }

    String flashing() {
        return edge.flashing().piece().id();
    }

    String opening() {
        return edge.opening().id();
    }

    /** The membranes over or behind it. */
    List<String> membranes() {
        return edge.membranes(from, to);
    }

    /** The flashing, then the membranes. */
    List<String> pieces() {
        return Stream.concat(Stream.of(flashing()), membranes().stream()).toList();
    }

    boolean isTaped() {
        return edge.isTaped(from, to);
    }

    Segment line() {
        return new Segment(edge.frame().at(to), edge.frame().at(from));
    }

    Place place() {
        return Place.line(evidence.elevation(), Surface.WALL, line());
    }

    String length() {
        return LengthText.mm(Math.round(to - from));
    }
}
