package rainlap.rule.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.wall.Surface;
import rainlap.water.Arrival;
import rainlap.water.Step;

/**
 * One way by which water comes onto the frame.
 *
 * @param where the line along which it arrives, in the surface's own frame
 * @param litresPerHour of water that meets the first edge it gets past; empty where no rain is stated
 */
record Way(int defences, Surface surface, List<Point> where, List<Step> path, OptionalDouble litresPerHour) {
    static Way of(Arrival a) {
        return new Way(a.defences(), a.surface(), a.where(), a.path(), a.litresPerHour());
    }

    /** The pieces it gets under, leaves by or passes, the last first: that one let it onto the frame. */
    List<String> pieces() {
        List<String> under = path.stream().map(Step::piece).filter(p -> !p.isEmpty()).toList();
        Stream<String> on = path.stream().map(Step::layer).filter(p -> !p.equals(Step.FRAME));
        return (under.isEmpty() ? on : Stream.iterate(under.size() - 1, i -> i >= 0, i -> i - 1).map(under::get)).distinct().toList();
    }

    /** What tells it from other ways: the pieces it gets under, and which of them fail. */
    String told() {
        StringBuilder out = new StringBuilder();
        for (Step s : path) {
            if (!s.piece().isEmpty()) {
                out.append(' ').append(s.piece()).append(s.failure() ? "!" : "");
            }
        }
        return out.toString();
    }

    Optional<Step> failing() {
        for (Step s : path) {
            if (s.failure()) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    /** The last step by which it got under, behind or past a piece. */
    Optional<Step> last() {
        return path.stream().filter(s -> !s.piece().isEmpty()).reduce((a, b) -> b);
    }

    boolean leavesALedge() {
        for (Step s : path) {
            if (s.kind() == Step.Kind.OFF_A_LEDGE) {
                return true;
            }
        }
        return false;
    }

    /** Whether it starts on frame that lies bare inside an opening. */
    boolean startsInsideAnOpening() {
        return path.get(0).layer().equals(Step.FRAME) && !path.get(0).on().isWall();
    }

    Place place(Evidence e) {
        return Place.line(e.elevation(), surface, where);
    }

    double lengthMm() {
        double length = 0;
        for (int i = 1; i < where.size(); i++) {
            length += new Segment(where.get(i - 1), where.get(i)).lengthMm();
        }
        return length;
    }
}
