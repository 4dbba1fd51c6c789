package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.paper.PaperPoint;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
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
    private static final double SAMPLE = 0.4;
    static final double PITCH = 7;
    private final Evidence evidence;
    private final CutStack stack;
    private final SectionGrid grid;
    private final SectionGaps gaps;
    private final Cut cut;
    private final long rise;
    private final List<Moment> moments = new ArrayList<>();
    private Optional<Lift> lift = Optional.empty();

    /** Water that gets on a layer at a place along the cut: {@code depth} is 0 on the wall, else how far inwards past the turn. */
    private record Moment(String layer, double place, double depth, Turned on, boolean failed) {}

    /** Which part of the frame. */
    enum Turned {
        WALL, LOW, HIGH
    }

    /** Where water is driven up from. */
    record Lift(double from, long rise) {}

    SectionWater(Evidence evidence, CutStack stack, SectionGrid grid, SectionStrands strands, double depth) {
        this.evidence = evidence;
        this.stack = stack;
        this.grid = grid;
        this.cut = stack.cut();
        this.gaps = new SectionGaps(stack, grid, strands, depth);
        this.rise = evidence.trace().drive().rise();
    }

    /** The drive upwards that the way shows; known once {@link #find} has been asked. */
    Optional<Lift> lift() {
        return lift;
    }

    /** The first of some ways that reaches the frame in this plane; empty where none does. */
    Optional<WaterSigns.Way> find(List<Arrival> ways) {
        for (Arrival a : ways) {
            if (isInPlane(Place.line(evidence.elevation(), a.surface(), a.where()).box()) && follow(a) && moments.size() > 1) {
                return Optional.of(drawn());
            }
        }
        return Optional.empty();
    }

    private boolean isInPlane(Box b) {
        long low = cut.plumb() ? b.minX() : b.minY(), high = cut.plumb() ? b.maxX() : b.maxY();
        long from = cut.plumb() ? b.minY() : b.minX(), to = cut.plumb() ? b.maxY() : b.maxX();
        return low <= cut.across() && cut.across() <= high && from <= cut.to() && to >= cut.from();
    }

    /** Notes where the water is, step by step; whether it comes to the frame within the section. */
    private boolean follow(Arrival a) {
        moments.clear();
        boolean failed = false;
        for (Step s : a.path()) {
            failed |= s.failure();
            Optional<Moment> m = moment(s, failed);
            if (m.isEmpty()) {
                moments.clear();
            }
            m.ifPresent(moments::add);
        }
        return !moments.isEmpty() && moments.get(moments.size() - 1).layer().equals(Step.FRAME);
    }

    private Optional<Moment> moment(Step s, boolean failed) {
        Optional<Turned> on = part(s);
        if (on.isEmpty()) {
            return Optional.empty();
        }
        if (on.get() != Turned.WALL) {
            double v = (s.where().get(0).y() + s.where().get(s.where().size() - 1).y()) / 2.0;
            return Optional.of(new Moment(s.layer(), on.get() == Turned.LOW ? stack.frameFrom() : stack.frameTo(), v, on.get(), failed));
        }
        double a = along(s, 0), b = along(s, s.where().size() - 1);
        double before = moments.isEmpty() ? cut.centre() : moments.get(moments.size() - 1).place();
        double place = moments.isEmpty() && a != b ? Math.max(a, b) : Math.max(Math.min(a, b), Math.min(Math.max(a, b), before));
        return Optional.of(new Moment(s.layer(), place, 0, Turned.WALL, failed));
    }

    private double along(Step s, int i) {
        return cut.plumb() ? s.where().get(i).y() : s.where().get(i).x();
    }

    private Optional<Turned> part(Step s) {
        if (s.on().isWall()) {
            return Optional.of(Turned.WALL);
        }
        if (isTurn(stack.low(), s)) {
            return Optional.of(Turned.LOW);
        }
        return isTurn(stack.high(), s) ? Optional.of(Turned.HIGH) : Optional.empty();
    }

    private static boolean isTurn(Optional<CutStack.Turn> turn, Step s) {
        return turn.filter(t -> t.side() == s.on().side() && t.opening().filter(o -> o.id().equals(s.on().opening())).isPresent()).isPresent();
    }

    private WaterSigns.Way drawn() {
        List<PaperPoint> free = new ArrayList<>(), failed = new ArrayList<>();
        moments.set(0, start());
        for (int i = 0; i + 1 < moments.size(); i++) {
            Moment a = moments.get(i), b = moments.get(i + 1);
            stretch(a, b, a.failed() ? failed : free);
            if (!a.failed() && b.failed() && !free.isEmpty()) {
                failed.add(free.get(free.size() - 1));
            }
            if (a.place() < b.place() && cut.plumb() && b.place() - a.place() <= rise && i > 0 && lift.isEmpty()) {
                lift = Optional.of(new Lift(a.place(), rise));
            }
        }
        Moment last = moments.get(moments.size() - 1);
        end(last, last.failed() ? failed : free);
        return new WaterSigns.Way(free, failed);
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

    /** Along a layer's outer face from where water got on it to the line it crosses next. */
    private void stretch(Moment a, Moment b, List<PaperPoint> out) {
        if (a.on() == Turned.WALL && b.on() == Turned.WALL) {
            double way = b.place() - a.place(), sign = Math.signum(way), from = a.place() + (out.isEmpty() ? 0 : sign * grid.units(PAST + DROP));
            double to = b.place() + sign * grid.units(PAST);
            int n = (int) Math.max(1, Math.ceil(grid.length(Math.abs(to - from)) / SAMPLE));
            for (int i = 0; i <= n && (to - from) * sign > 0; i++) {
                add(out, gaps.onWall(a.layer(), from + (to - from) * i / n));
            }
            return;
        }
        if (a.on() == Turned.WALL) {
            double turn = b.place(), sign = Math.signum(turn - a.place());
            stretch(a, new Moment(a.layer(), turn - sign * grid.units(PAST), 0, Turned.WALL, a.failed()), out);
            add(out, gaps.corner(a.layer(), b.on()));
            add(out, gaps.onLeg(a.layer(), b.on(), b.depth()));
        } else {
            add(out, gaps.onLeg(a.layer(), a.on(), a.depth()));
            add(out, gaps.onLeg(a.layer(), a.on(), b.depth()));
        }
    }

    /** On the frame: down it in a plumb cut, else on to its face. */
    private void end(Moment last, List<PaperPoint> out) {
        if (last.on() != Turned.WALL) {
            add(out, gaps.onLeg(last.layer(), last.on(), last.depth()));
            return;
        }
        if (!cut.plumb()) {
            PaperPoint p = out.isEmpty() ? gaps.onWall(last.layer(), last.place()) : out.get(out.size() - 1);
            add(out, new PaperPoint(p.x(), grid.face() + 0.3));
            return;
        }
        double before = moments.size() > 1 ? moments.get(moments.size() - 2).place() : last.place();
        double at = last.place() + Math.signum(last.place() - before) * grid.units(PAST + DROP);
        double foot = Math.max(Math.max(cut.from(), stack.frameFrom()), at - grid.units(AFTER));
        add(out, gaps.onWall(last.layer(), at));
        add(out, gaps.onWall(last.layer(), Math.min(foot, at)));
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
