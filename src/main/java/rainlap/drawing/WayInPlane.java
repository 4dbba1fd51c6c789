package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** Reads a way of water in the plane of a section: on which layer it is from which place along the cut on. */
final class WayInPlane {
    private final Evidence evidence;
    private final CutStack stack;
    private final Cut cut;
    private final PipesInPlane pipes;
    private final List<Moment> moments = new ArrayList<>();

    /**
     * Water that gets on a layer.
     *
     * @param place along the cut, grid units; that of the turn where it is past one
     * @param depth how far inwards past the turn, grid units; 0 on the wall
     * @param failed whether something had to fail by then
     */
    record Moment(String layer, double place, double depth, Turned on, boolean failed) {}

    /** Which part of the frame: its face, or what is turned inwards at the lower or the upper end of the cut. */
    enum Turned {
        WALL, LOW, HIGH
    }

    WayInPlane(Evidence evidence, CutStack stack) {
        this.evidence = evidence;
        this.stack = stack;
        this.cut = stack.cut();
        this.pipes = new PipesInPlane(evidence.elevation(), cut);
    }

    private boolean isInPlane(Box b) {
        long low = cut.plumb() ? b.minX() : b.minY(), high = cut.plumb() ? b.maxX() : b.maxY();
        long from = cut.plumb() ? b.minY() : b.minX(), to = cut.plumb() ? b.maxY() : b.maxX();
        return low <= cut.across() && cut.across() <= high && from <= cut.to() && to >= cut.from();
    }

    /** Where the water is, step by step, from where it last enters the plane or has run along a line to it; empty unless it comes to the frame within the section. */
    List<Moment> moments(Arrival a) {
        if (!isInPlane(Place.line(evidence.elevation(), a.surface(), a.where()).box())) {
            return List.of();
        }
        follow(a.path());
        return !moments.isEmpty() && moments.get(moments.size() - 1).layer().equals(Step.FRAME) ? List.copyOf(moments) : List.of();
    }

    /** The same for water that ends along a line on the wall, with that end; empty in a level cut, which shows no depth of it. */
    List<Moment> standing(List<Step> path, Place where) {
        if (!cut.plumb() || !where.surface().isWall() || !isInPlane(where.box())) {
            return List.of();
        }
        List<List<Step>> legs = Legs.of(path);
        follow(legs.isEmpty() ? path : legs.get(legs.size() - 1));
        if (moments.isEmpty()) {
            return List.of();
        }
        Moment last = moments.get(moments.size() - 1);
        double end = Math.max(where.box().minY(), Math.min(where.box().maxY(), last.place()));
        moments.add(new Moment(last.layer(), end, 0, Turned.WALL, last.failed()));
        return List.copyOf(moments);
    }

    private void follow(List<Step> path) {
        moments.clear();
        boolean failed = false;
        for (Step s : path) {
            failed |= s.failure();
            Optional<Moment> m = moment(s, failed);
            if (m.isEmpty() || isElsewhere(s) || s.kind() == Step.Kind.RUN_ALONG) {
                moments.clear();
            }
            m.ifPresent(this::add);
        }
    }

    /**
     * A step past the ends of the cut, or over a line that runs along with it, so that water comes through the plane there: what came before is not to be
     * seen here, only on which layer water is after it.
     */
    private boolean isElsewhere(Step s) {
        if (!s.on().isWall()) {
            return false;
        }
        double a = along(s, 0), b = along(s, s.where().size() - 1);
        OptionalDouble crossing = crossing(s);
        if (crossing.isPresent()) {
            return crossing.getAsDouble() < cut.from() || crossing.getAsDouble() > cut.to();
        }
        return Math.max(a, b) < cut.from() || Math.min(a, b) > cut.to() || a != b && across(s, 0) == across(s, s.where().size() - 1);
    }

    /** Water that only passes a place on its way to the next is not drawn there. */
    private void add(Moment m) {
        int last = moments.size() - 1;
        if (last > 0 && moments.get(last).place() == m.place() && moments.get(last).depth() == m.depth() && moments.get(last).on() == m.on()) {
            moments.remove(last);
        }
        moments.add(m);
    }

    private Optional<Moment> moment(Step s, boolean failed) {
        Optional<Turned> on = part(s);
        if (on.isEmpty()) {
            return Optional.empty();
        }
        if (on.get() != Turned.WALL) {
            return Optional.of(new Moment(s.layer(), on.get() == Turned.LOW ? stack.frameFrom() : stack.frameTo(), depth(s), on.get(), failed));
        }
        double a = along(s, 0), b = along(s, s.where().size() - 1);
        double before = moments.isEmpty() ? cut.centre() : moments.get(moments.size() - 1).place();
        double beside = moments.isEmpty() && a != b ? Math.max(a, b) : Math.max(Math.min(a, b), Math.min(Math.max(a, b), before));
        double crossed = crossing(s).orElse(beside);
        double place = pipes.along(s).map(p -> before > p.high() - 1 ? p.high() : p.low()).orElse(crossed);
        return Optional.of(new Moment(s.layer(), isElsewhere(s) ? within(place) : place, 0, Turned.WALL, failed));
    }

    /** Where a line that lies across the cut, or aslant, meets its plane; empty for one that runs along with it or ends beside it. */
    private OptionalDouble crossing(Step s) {
        int last = s.where().size() - 1;
        double from = across(s, 0), to = across(s, last), share = (cut.across() - from) / (to - from);
        return from == to || share < 0 || share > 1 ? OptionalDouble.empty() : OptionalDouble.of(along(s, 0) + share * (along(s, last) - along(s, 0)));
    }

    /** How far inwards a line in a reveal is crossed in the plane, or half way along it where it lies beside. */
    private double depth(Step s) {
        Point a = s.where().get(0), b = s.where().get(s.where().size() - 1);
        Box reveal = evidence.elevation().findOpening(s.on().opening()).orElseThrow().rect();
        double u = cut.across() - (s.on().side().isJamb() ? reveal.minY() : reveal.minX());
        double share = a.x() == b.x() ? 0.5 : (u - a.x()) / (b.x() - a.x());
        return a.y() + (share < 0 || share > 1 ? 0.5 : share) * (b.y() - a.y());
    }

    private double within(double place) {
        return Math.max(cut.from(), Math.min(cut.to(), place));
    }

    private double along(Step s, int i) {
        return cut.plumb() ? s.where().get(i).y() : s.where().get(i).x();
    }

    private double across(Step s, int i) {
        return cut.plumb() ? s.where().get(i).x() : s.where().get(i).y();
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
}
