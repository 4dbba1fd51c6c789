package rainlap.drawing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rainlap.paper.PaperPoint;
import rainlap.water.Step;

/** Where water stands in a section: half way between the outer face of its layer and the next piece outside it. */
final class SectionGaps {
    /** Half the thickness that pieces and the line of the frame's face are drawn with, printed mm. */
    private static final double HALF = 0.5;
    private static final double FRAME_HALF = 0.25;
    /** Distance from a face over which nothing lies. */
    private static final double OPEN = 0.85;
    /** A shorter bare stretch has no room for an arrow, printed mm. */
    private static final double LEAST_BARE = 1.6;
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

    /** Whether a piece outside a layer begins at a place and goes on from there, so that water gets in only just at its edge. */
    boolean isFilledFrom(double place, double sign, String layer) {
        double inner = layer.equals(Step.FRAME) ? 0 : out(layer, place).orElse(0);
        for (CutStack.Strand s : stack.strands()) {
            for (CutStack.Step step : s.steps()) {
                double end = sign > 0 ? step.from() : step.to();
                boolean begins = s.steps().stream().noneMatch(o -> (sign > 0 ? o.to() : o.from()) == end);
                if (begins && Math.abs(end - place) < 1 && !s.piece().id().equals(layer) && strands.out(step.level()) > inner) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The middle of the stretch without any piece at or beside a place; empty when pieces lie on both sides. */
    OptionalDouble bare(double place) {
        for (double beside : new double[] {0, 50, -50}) {
            double p = place + beside;
            if (stack.frameFrom() < p && p < stack.frameTo() && all().noneMatch(s -> s.from() <= p && p <= s.to())) {
                double from = all().mapToDouble(CutStack.Step::to).filter(x -> x < p).max().orElse(stack.frameFrom());
                double to = all().mapToDouble(CutStack.Step::from).filter(x -> x > p).min().orElse(stack.frameTo());
                return OptionalDouble.of((from + to) / 2);
            }
        }
        return OptionalDouble.empty();
    }

    /** The middle of what is shown of a turned frame beyond all that lies on it; empty when that is too little to point at. */
    OptionalDouble bareLeg(WayInPlane.Turned turn, long reveal) {
        double covered = stack.strands().stream().flatMap(s -> (turn == WayInPlane.Turned.LOW ? s.lowLeg() : s.highLeg()).stream())
                .mapToDouble(CutStack.Step::to).max().orElse(0);
        double end = Math.min(reveal, grid.units(depth));
        return grid.length(end - covered) < LEAST_BARE ? OptionalDouble.empty() : OptionalDouble.of((covered + end) / 2);
    }

    private Stream<CutStack.Step> all() {
        return stack.strands().stream().flatMap(s -> s.steps().stream());
    }

    private double along(PaperPoint p) {
        return grid.plumb() ? p.y() : p.x();
    }

    private double outwards(PaperPoint p) {
        return grid.plumb() ? grid.face() - p.x() : p.y() - grid.face();
    }

    /** Where water on a layer goes round a turn. */
    PaperPoint corner(String layer, WayInPlane.Turned turn) {
        double place = turn == WayInPlane.Turned.LOW ? stack.frameFrom() : stack.frameTo();
        PaperPoint wall = onWall(layer, place), leg = onLeg(layer, turn, 0);
        return grid.plumb() ? new PaperPoint(wall.x(), leg.y()) : new PaperPoint(leg.x(), wall.y());
    }

    /** @param inwards from the turn, grid units */
    PaperPoint onLeg(String layer, WayInPlane.Turned turn, double inwards) {
        boolean low = turn == WayInPlane.Turned.LOW;
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
