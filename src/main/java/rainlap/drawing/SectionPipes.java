package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.paper.Area;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Polyline;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Penetration;
import rainlap.water.Step;

/** Pipes that a section cuts, and the water that runs in along one of them. */
final class SectionPipes {
    /** How far a pipe is shown outside the outermost piece, printed mm. */
    private static final double OUTSIDE = 2.5;
    /** The gap round a pipe by which water gets in, as wide as others are drawn. */
    static final double GAP = 1.3;
    private static final double AFTER = 9;
    private final CutStack stack;
    private final SectionGrid grid;
    private final double outer;
    private final double inner;
    private final List<Penetration> pipes;

    /** @param depth how far inwards the drawing goes, printed mm */
    SectionPipes(Evidence evidence, CutStack stack, SectionGrid grid, double furthest, double depth) {
        this.stack = stack;
        this.grid = grid;
        this.outer = furthest + OUTSIDE;
        this.inner = depth;
        this.pipes = evidence.elevation().penetrations().stream().filter(p -> !along(p).isEmpty()).toList();
    }

    /** Also where the cut runs just along a straight side of it; a round one that it only touches is not cut. */
    private Intervals along(Penetration p) {
        EdgeFrame e = EdgeFrame.of(stack.cut().line());
        Intervals at = e.inside(p.region(), 0);
        Intervals in = at.count() > 0 ? at : e.inside(p.region(), e.side()).union(e.inside(p.region(), -e.side()));
        double across = stack.cut().plumb() ? p.region().box().height() : p.region().box().width();
        boolean touched = at.count() == 0 && in.total() < Math.min(across, stack.cut().length()) / 2;
        return touched ? Intervals.NONE : in.shifted(stack.cut().from()).intersect(Intervals.of(stack.frameFrom(), stack.frameTo()));
    }

    /** Each white between two wide lines, over what it passes. */
    List<Mark> marks() {
        List<Mark> out = new ArrayList<>();
        for (Penetration p : pipes) {
            Intervals in = along(p);
            double from = in.from(0), to = in.to(in.count() - 1), middle = (from + to) / 2;
            out.add(Area.filled(PaperRegion.of(PaperBox.of(List.of(grid.at(from, outer), grid.at(to, -inner)))), Tone.WHITE));
            out.add(Polyline.of(Looks.WIDE, grid.at(from, outer), grid.at(from, -inner)));
            out.add(Polyline.of(Looks.WIDE, grid.at(to, outer), grid.at(to, -inner)));
            out.add(Polyline.of(Looks.CENTRE, grid.at(middle, outer + 1), grid.at(middle, -inner)));
        }
        return out;
    }

    /** Whether a point lies on a pipe or at its edge, where no piece is to be seen. */
    boolean hide(PaperPoint p) {
        return pipes.stream().map(this::along).anyMatch(in -> PaperBox.of(List.of(grid.at(in.from(0), outer), grid.at(in.to(in.count() - 1), -inner)))
                .grown(GAP + 0.5).holds(p));
    }

    /** In beneath a pipe to the frame and down it; empty where the way of a finding ends otherwise, or beside this cut. */
    Optional<WaterSigns.Way> way(Finding f) {
        Optional<Step> last = f.path().stream().reduce((a, b) -> b);
        if (!stack.cut().plumb() || last.filter(s -> s.kind() == Step.Kind.ALONG_A_PIPE && s.layer().equals(Step.FRAME)).isEmpty()) {
            return Optional.empty();
        }
        return pipes.stream().filter(p -> p.region().box().grow(1).contains(f.where().box())).findFirst().map(p -> beneath(p, last.get().failure()));
    }

    private WaterSigns.Way beneath(Penetration p, boolean failed) {
        double low = along(p).from(0), y = low - grid.units(GAP / 2), face = GAP / 2;
        double foot = Math.max(Math.max(stack.cut().from(), stack.frameFrom()), low - grid.units(AFTER));
        List<PaperPoint> line = List.of(grid.at(y, outer), grid.at(y, face), grid.at(foot, face));
        return failed ? new WaterSigns.Way(List.of(), line) : new WaterSigns.Way(line, List.of());
    }

    /** What is cut away from the pieces beneath a pipe by which water comes in. */
    Mark gap(Finding f) {
        double low = pipes.stream().filter(p -> p.region().box().grow(1).contains(f.where().box())).findFirst().map(p -> along(p).from(0)).orElseThrow();
        return Area.filled(PaperRegion.of(PaperBox.of(List.of(grid.at(low, outer), grid.at(low - grid.units(GAP), 0.3)))), Tone.WHITE);
    }
}
