package rainlap.drawing;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.wall.Elevation;
import rainlap.wall.Penetration;
import rainlap.water.Step;

/** Where a plumb section is cut by pipes, along the cut in grid units. */
final class PipesInPlane {
    private final Cut cut;
    private final List<Penetration> pipes;

    /** From one edge of a pipe to the other. */
    record Span(double low, double high) {}

    PipesInPlane(Elevation elevation, Cut cut) {
        this.cut = cut;
        this.pipes = cut.plumb() ? elevation.penetrations() : List.of();
    }

    private Optional<Span> span(Penetration p) {
        Intervals in = EdgeFrame.of(cut.line()).inside(p.region(), 0).shifted(cut.from());
        return in.isEmpty() ? Optional.empty() : Optional.of(new Span(in.from(0), in.to(in.count() - 1)));
    }

    /** The pipe that water gets in along in a step; empty for other steps, and where the section passes beside it. */
    Optional<Span> along(Step s) {
        return s.kind() != Step.Kind.ALONG_A_PIPE ? Optional.empty()
                : pipes.stream().filter(p -> p.region().box().grow(1).contains(Box.of(s.where()))).findFirst().flatMap(this::span);
    }

    /** The pipe whose upper edge is at a place. */
    Optional<Span> under(double place) {
        return pipes.stream().flatMap(p -> span(p).stream()).filter(s -> Math.abs(s.high() - place) < 1).findFirst();
    }
}
