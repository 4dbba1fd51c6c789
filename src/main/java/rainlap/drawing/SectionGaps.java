package rainlap.drawing;

import java.util.List;
import java.util.OptionalDouble;
import rainlap.paper.PaperPoint;
import rainlap.water.Step;

/** Where water stands in a section: half way between the outer face of its layer and the next piece outside it. */
final class SectionGaps {
    /** Half the thickness that pieces and the line of the frame's face are drawn with, printed mm. */
    private static final double HALF = 0.5;
    private static final double FRAME_HALF = 0.25;
    /** Distance from a face over which nothing lies. */
    private static final double OPEN = 0.85;
    private final CutStack stack;
    private final SectionGrid grid;
    private final SectionStrands strands;
    private final double depth;

    SectionGaps(CutStack stack, SectionGrid grid, SectionStrands strands, double depth) {
        this.stack = stack;
        this.grid = grid;
        this.strands = strands;
        this.depth = depth;
    }

    PaperPoint onWall(String layer, double place) {
        double face = layer.equals(Step.FRAME) ? FRAME_HALF : HALF + out(layer, place).orElse(0);
        double next = Double.POSITIVE_INFINITY;
        for (CutStack.Strand s : stack.strands()) {
            OptionalDouble o = s.piece().id().equals(layer) ? OptionalDouble.empty() : wall(s, place);
            if (o.isPresent() && o.getAsDouble() - HALF > face - 0.05) {
                next = Math.min(next, o.getAsDouble() - HALF);
            }
        }
        return grid.at(place, Math.min(face + OPEN, (face + next) / 2));
    }

    /** A layer's distance from the frame; where it has ended, that of its end. */
    private OptionalDouble out(String layer, double place) {
        for (CutStack.Strand s : stack.strands()) {
            if (s.piece().id().equals(layer)) {
                OptionalDouble there = wall(s, place);
                return there.isPresent() ? there : nearest(s, place);
            }
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble nearest(CutStack.Strand s, double place) {
        double best = Double.POSITIVE_INFINITY, out = Double.NaN;
        for (CutStack.Step step : s.steps()) {
            for (double end : new double[] {step.from(), step.to()}) {
                if (Math.abs(end - place) < best) {
                    best = Math.abs(end - place);
                    out = wall(s, end + (end == step.from() ? 1 : -1)).orElse(strands.out(step.level()));
                }
            }
        }
        return Double.isNaN(out) ? OptionalDouble.empty() : OptionalDouble.of(out);
    }

    /** Distance from the frame of a piece at a place on the wall; empty where it is not. */
    private OptionalDouble wall(CutStack.Strand s, double place) {
        PaperPoint at = grid.at(place, 0);
        for (List<PaperPoint> path : strands.paths(s)) {
            for (int i = 0; i + 1 < path.size(); i++) {
                double a = along(path.get(i)), b = along(path.get(i + 1)), p = along(at);
                double oa = outwards(path.get(i)), ob = outwards(path.get(i + 1));
                if (oa > 0 && ob > 0 && a != b && (a - p) * (b - p) <= 0) {
                    return OptionalDouble.of(oa + (p - a) / (b - a) * (ob - oa));
                }
            }
        }
        return OptionalDouble.empty();
    }

    private double along(PaperPoint p) {
        return grid.plumb() ? p.y() : p.x();
    }

    private double outwards(PaperPoint p) {
        return grid.plumb() ? grid.face() - p.x() : p.y() - grid.face();
    }

    /** Where water on a layer goes round a turn. */
    PaperPoint corner(String layer, SectionWater.Turned turn) {
        double place = turn == SectionWater.Turned.LOW ? stack.frameFrom() : stack.frameTo();
        PaperPoint wall = onWall(layer, place), leg = onLeg(layer, turn, 0);
        return grid.plumb() ? new PaperPoint(wall.x(), leg.y()) : new PaperPoint(leg.x(), wall.y());
    }

    /** @param inwards from the turn, grid units */
    PaperPoint onLeg(String layer, SectionWater.Turned turn, double inwards) {
        boolean low = turn == SectionWater.Turned.LOW;
        double face = FRAME_HALF, next = Double.POSITIVE_INFINITY;
        for (CutStack.Strand s : stack.strands()) {
            for (CutStack.Step step : low ? s.lowLeg() : s.highLeg()) {
                if (step.from() <= inwards && inwards <= step.to() && s.piece().id().equals(layer)) {
                    face = strands.out(step.level()) + HALF;
                }
            }
        }
        for (CutStack.Strand s : stack.strands()) {
            for (CutStack.Step step : low ? s.lowLeg() : s.highLeg()) {
                double o = strands.out(step.level()) - HALF;
                if (step.from() <= inwards && inwards <= step.to() && !s.piece().id().equals(layer) && o > face - 0.05) {
                    next = Math.min(next, o);
                }
            }
        }
        double out = Math.min(face + OPEN, (face + next) / 2);
        double turnAt = low ? stack.frameFrom() : stack.frameTo();
        return grid.at(turnAt + (low ? -1 : 1) * grid.units(out), -Math.min(depth, grid.length(inwards)));
    }
}
