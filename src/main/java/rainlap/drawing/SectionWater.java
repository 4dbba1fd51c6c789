package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.drawing.WayInPlane.Moment;
import rainlap.drawing.WayInPlane.Turned;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.paper.PaperPoint;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Shelter;
import rainlap.wall.Opening;
import rainlap.wall.Surface;
import rainlap.water.Arrival;
import rainlap.water.Step;

/**
 * The water's way in the plane of a section: in the gap outside each layer that the trace says it is on, from one line it crosses to the
 * next. What leaves the plane is not drawn.
 */
final class SectionWater {
    /** Shown of the water before it meets the first line and after it reaches the frame, printed mm. */
    private static final double BEFORE = 13;
    private static final double BENEATH = 5;
    private static final double AFTER = 7;
    /** How far water goes past an end before it moves inwards, and takes to do so. */
    private static final double PAST = 0.5;
    private static final double DROP = 0.9;
    /** Where an arrow touches the frame's face, and where rain comes from. */
    private static final double TOUCH = 0.3;
    private static final double OUTSIDE = 8;
    /** Short of the dimensions there. */
    private static final double OUTSIDE_LEG = 4.6;
    private static final double SAMPLE = 0.4;
    static final double PITCH = 7;
    private final Evidence evidence;
    private final CutStack stack;
    private final SectionGrid grid;
    private final SectionGaps gaps;
    private final Cut cut;
    private final PipesInPlane pipes;
    private final List<Moment> moments = new ArrayList<>();
    private Optional<Lift> lift = Optional.empty();
    /** Where the line has got to along the wall, and which way it went last. */
    private double at;
    private double heading;
    /** Whether the way ends where it can go no further, and not on the frame. */
    private boolean stands;

    /** Where water is driven up from. */
    record Lift(double from, long rise) {}

    SectionWater(Evidence evidence, CutStack stack, SectionGrid grid, SectionStrands strands, double depth) {
        this.evidence = evidence;
        this.stack = stack;
        this.grid = grid;
        this.cut = stack.cut();
        this.pipes = new PipesInPlane(evidence.elevation(), cut);
        this.gaps = new SectionGaps(stack, grid, strands, depth);
    }

    /** The drive upwards that the way shows; known once {@link #find} has been asked. */
    Optional<Lift> lift() {
        return lift;
    }

    /** The first of some ways that reaches the frame in this plane; empty where none does. */
    Optional<WaterSigns.Way> find(List<Arrival> ways) {
        WayInPlane plane = new WayInPlane(evidence, stack);
        for (Arrival a : ways) {
            List<Moment> found = plane.moments(a);
            if (found.size() > 1) {
                moments.addAll(found);
                return Optional.of(drawn());
            }
        }
        return Optional.empty();
    }

    /** Water that gets in and finds no way out, as far as it stands; empty where that is not to be seen in this plane. */
    Optional<WaterSigns.Way> standing(Finding f) {
        moments.addAll(new WayInPlane(evidence, stack).standing(f.path(), f.where()));
        stands = moments.size() > 1;
        return stands ? Optional.of(drawn()) : Optional.empty();
    }

    private WaterSigns.Way drawn() {
        List<PaperPoint> free = new ArrayList<>(), failed = new ArrayList<>();
        moments.set(0, start());
        at = moments.get(0).place();
        for (int i = 0; i + 1 < moments.size(); i++) {
            Moment a = moments.get(i), b = moments.get(i + 1);
            stretch(a, b, a.failed() ? failed : free);
            if (!a.failed() && b.failed() && !free.isEmpty()) {
                failed.add(free.get(free.size() - 1));
            }
            if (i > 0) {
                noteLift(a, b);
            }
        }
        Moment last = moments.get(moments.size() - 1);
        if (!stands) {
            end(last, last.failed() ? failed : free);
        }
        return new WaterSigns.Way(free, failed);
    }

    /** The last climb counts, if it is no higher than wind lifts water: a higher one is a lap that is overrun. */
    private void noteLift(Moment a, Moment b) {
        if (cut.plumb() && a.place() < b.place()) {
            long rise = Shelter.lift(evidence, Surface.WALL, new Point(cut.across(), Math.round(a.place()) + 1), a.layer());
            lift = b.place() - a.place() <= rise ? Optional.of(new Lift(a.place(), rise)) : Optional.empty();
        }
    }

    /** Water comes from a little before the line that it meets first. */
    private Moment start() {
        Moment first = moments.get(0), next = moments.get(1);
        double way = next.place() - first.place(), far = grid.units(BEFORE);
        double from;
        if (!cut.plumb()) {
            double on = moments.size() > 2 ? Math.signum(moments.get(2).place() - next.place()) : Math.signum(way);
            from = next.place() - (on == 0 ? 1 : on) * far;
        } else {
            from = way < 0 ? Math.min(first.place(), next.place() + far) : next.place() - grid.units(BENEATH);
        }
        return new Moment(first.layer(), Math.max(cut.from(), Math.min(cut.to(), from)), first.depth(), first.on(), first.failed());
    }

    /** Along a layer's outer face from where water got on it to a little past the line it crosses next. */
    private void stretch(Moment a, Moment b, List<PaperPoint> out) {
        if (a.on() != Turned.WALL) {
            add(out, gaps.onLeg(a.layer(), a.on(), a.depth()));
            add(out, gaps.onLeg(a.layer(), a.on(), b.depth()));
            return;
        }
        boolean turns = b.on() != Turned.WALL;
        double sign = Math.signum(b.place() - a.place());
        if (sign < 0 && pipes.under(b.place()).isPresent()) {
            run(a.layer(), b.place() + grid.units(SectionPipes.GAP / 2), out);
            return;
        }
        boolean ends = stands && b == moments.get(moments.size() - 1);
        run(a.layer(), b.place() + sign * grid.units(turns ? -PAST : ends || gaps.isFilledFrom(b.place(), sign, b.layer()) ? 0 : PAST), out);
        if (turns) {
            add(out, gaps.corner(a.layer(), b.on()));
            add(out, gaps.onLeg(a.layer(), b.on(), b.depth()));
        }
    }

    /** On along the wall on a layer, from where the water is now: slantwise on to it where it goes on the same way. */
    private void run(String layer, double to, List<PaperPoint> out) {
        double sign = Math.signum(to - at), from = at + (sign == heading ? sign * grid.units(DROP) : 0);
        if ((to - from) * sign > 0) {
            int n = (int) Math.max(1, Math.ceil(grid.length(Math.abs(to - from)) / SAMPLE));
            for (int i = 0; i <= n; i++) {
                add(out, gaps.onWall(layer, from + (to - from) * i / n));
            }
            at = to;
            heading = sign;
        }
    }

    /** On the frame: down it in a plumb cut, else on to its face. */
    private void end(Moment last, List<PaperPoint> out) {
        if (last.on() != Turned.WALL) {
            add(out, gaps.onLeg(last.layer(), last.on(), last.depth()));
        } else if (heading < 0 && pipes.under(last.place()).isPresent()) {
            add(out, gaps.onWall(last.layer(), at));
        } else if (cut.plumb()) {
            add(out, gaps.onWall(last.layer(), at - (heading < 0 ? grid.units(DROP) : 0)));
            double foot = Math.max(Math.max(cut.from(), stack.frameFrom()), at - grid.units(AFTER));
            run(last.layer(), foot, out);
        } else {
            PaperPoint p = out.isEmpty() ? gaps.onWall(last.layer(), at) : out.get(out.size() - 1);
            add(out, new PaperPoint(p.x(), grid.face() + TOUCH));
        }
    }

    /** Rain straight on to a frame that lies bare at or beside the place of interest, where its way begins, or past a turn beyond what is folded there. */
    Optional<WaterSigns.Way> bare(Step rain) {
        OptionalDouble here = gaps.bare(cut.centre());
        OptionalDouble place = here.isEmpty() && rain.on().isWall() ? gaps.bare(middle(Box.of(rain.where()))) : here;
        if (place.isPresent() && !stack.isThreshold()) {
            long along = Math.round(place.getAsDouble());
            Point p = cut.plumb() ? new Point(cut.across(), along) : new Point(along, cut.across());
            return !evidence.trace().isWet(Surface.WALL, p) ? Optional.empty() : onTo(grid.at(along, OUTSIDE), grid.at(along, TOUCH));
        }
        return stack.low().flatMap(t -> bareLeg(t, Turned.LOW)).or(() -> stack.high().flatMap(t -> bareLeg(t, Turned.HIGH)));
    }

    private double middle(Box b) {
        return cut.plumb() ? (b.minY() + b.maxY()) / 2.0 : (b.minX() + b.maxX()) / 2.0;
    }

    private Optional<WaterSigns.Way> bareLeg(CutStack.Turn turn, Turned side) {
        OptionalDouble inwards = turn.opening().isPresent() ? gaps.bareLeg(side, turn.opening().get().reveal()) : OptionalDouble.empty();
        if (inwards.isEmpty()) {
            return Optional.empty();
        }
        Opening o = turn.opening().get();
        long u = cut.across() - (turn.side().isJamb() ? o.rect().minY() : o.rect().minX());
        boolean dry = !evidence.trace().isWet(new Surface(o.id(), turn.side()), new Point(u, Math.round(inwards.getAsDouble())));
        double away = (side == Turned.LOW ? -1 : 1), at = (side == Turned.LOW ? stack.frameFrom() : stack.frameTo());
        return dry ? Optional.empty() : onTo(grid.at(at + away * grid.units(OUTSIDE_LEG), -grid.length(inwards.getAsDouble())),
                grid.at(at + away * grid.units(TOUCH), -grid.length(inwards.getAsDouble())));
    }

    private static Optional<WaterSigns.Way> onTo(PaperPoint from, PaperPoint face) {
        return Optional.of(new WaterSigns.Way(List.of(from, face), List.of()));
    }

    /** Adds a point that lies apart from the last; straight on, it takes the last one's place. */
    private static void add(List<PaperPoint> out, PaperPoint p) {
        int n = out.size();
        if (n > 0 && out.get(n - 1).distance(p) <= 0.02) {
            return;
        }
        if (n > 1 && isStraightOn(out.get(n - 2), out.get(n - 1), p)) {
            out.set(n - 1, p);
        } else {
            out.add(p);
        }
    }

    private static boolean isStraightOn(PaperPoint a, PaperPoint b, PaperPoint c) {
        double ux = b.x() - a.x(), uy = b.y() - a.y(), vx = c.x() - b.x(), vy = c.y() - b.y();
        return Math.abs(ux * vy - uy * vx) < 0.002 * Math.hypot(ux, uy) * Math.hypot(vx, vy) && ux * vx + uy * vy > 0;
    }
}
