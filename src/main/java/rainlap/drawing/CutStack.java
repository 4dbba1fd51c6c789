package rainlap.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Grid;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.Layer;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;
import rainlap.wall.Opening;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Piece;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * The stack along a cut, computed from the faces it crosses: where the frame lies, how it turns away at an opening or at the wall's end, or towards the eye at an internal corner,
 * and how far from the frame each piece lies at each place. Places are grid units along the cut's axis.
 */
final class CutStack {
    private static final double THRESHOLD = 30 * Grid.MM;
    private final Evidence evidence;
    private final Cut cut;
    private final boolean withFace;
    private final Map<Integer, Strand> strands = new LinkedHashMap<>();
    private double frameFrom;
    private double frameTo;
    private Optional<Turn> low = Optional.empty();
    private Optional<Turn> high = Optional.empty();
    private boolean threshold;

    /**
     * Where the frame's face turns inwards.
     *
     * @param opening the opening, or empty at the end of the wall
     * @param side of the opening
     * @param outwards towards the eye, as at an internal corner of the building
     * @param parapet whether a capping lies over it
     */
    record Turn(Optional<Opening> opening, Side side, boolean outwards, boolean parapet) {
        Turn(Optional<Opening> opening, Side side) {
            this(opening, side, false, false);
        }
    }

    /** A stretch of a piece and how far it stands off the frame, in pieces: see {@link CutLevels}. */
    record Step(double from, double to, int level) {}

    /**
     * One piece along the cut.
     *
     * @param number of the piece in laying order
     * @param steps on the wall's face, ascending
     * @param lowLeg past the lower turn, by the distance from it
     * @param highLeg past the upper turn
     */
    record Strand(int number, Piece piece, List<Step> steps, List<Step> lowLeg, List<Step> highLeg) {
        boolean isEmpty() {
            return steps.isEmpty() && lowLeg.isEmpty() && highLeg.isEmpty();
        }

        int highest() {
            return Stream.of(steps, lowLeg, highLeg).flatMap(List::stream).mapToInt(Step::level).max().orElse(0);
        }
    }

    private CutStack(Evidence evidence, Cut cut, boolean withFace) {
        this.withFace = withFace;
        this.evidence = evidence;
        this.cut = cut;
    }

    /** The wrap along a cut. */
    static CutStack of(Evidence evidence, Cut cut) {
        return of(evidence, cut, false);
    }

    /** @param withFace whether battens, cladding and trims are cut too */
    static CutStack of(Evidence evidence, Cut cut, boolean withFace) {
        CutStack stack = new CutStack(evidence, cut, withFace);
        stack.onFoot().ifPresentOrElse(stack::standOn, stack::findFrame);
        Map<Integer, Intervals> onWall = stack.onWall();
        Map<Integer, Intervals> lowLeg = stack.low.map(t -> stack.leg(t, false)).orElse(Map.of());
        Map<Integer, Intervals> highLeg = stack.high.map(t -> stack.leg(t, true)).orElse(Map.of());
        CutLevels wall = new CutLevels(evidence, onWall, true), low = new CutLevels(evidence, lowLeg, false), high = new CutLevels(evidence, highLeg, false);
        for (int number : order(onWall, lowLeg, highLeg)) {
            Strand s = new Strand(number, evidence.elevation().pieces().get(number), wall.steps(number), low.steps(number), high.steps(number));
            if (!s.isEmpty()) {
                stack.strands.put(number, s);
            }
        }
        return stack;
    }

    private static TreeSet<Integer> order(Map<Integer, Intervals> a, Map<Integer, Intervals> b, Map<Integer, Intervals> c) {
        TreeSet<Integer> out = new TreeSet<>(a.keySet());
        out.addAll(b.keySet());
        out.addAll(c.keySet());
        return out;
    }

    Cut cut() {
        return cut;
    }

    /** Whether one lies outside another wherever both lie. */
    boolean isOutside(Strand outer, Strand inner) {
        return evidence.stack().order().isOutside(outer.number(), inner.number());
    }

    List<Strand> strands() {
        return List.copyOf(strands.values());
    }

    double frameFrom() {
        return frameFrom;
    }

    double frameTo() {
        return frameTo;
    }

    Optional<Turn> low() {
        return low;
    }

    Optional<Turn> high() {
        return high;
    }

    /** Whether it is cut through an opening whose foot is the foot of the wall. */
    boolean isThreshold() {
        return threshold;
    }

    boolean turnsOutwards() {
        return Stream.of(low, high).flatMap(Optional::stream).anyMatch(Turn::outwards);
    }

    /** An opening that stands on the foot of the wall, where the plane meets its sill and no wall beneath. */
    private Optional<Opening> onFoot() {
        long x = cut.at().x(), y = cut.at().y();
        return evidence.elevation().openings().stream().filter(o -> cut.plumb() && o.rect().minX() <= x && x <= o.rect().maxX())
                .filter(o -> o.rect().minY() == y || cut.from() < o.rect().minY() && o.rect().minY() < cut.to() && frame().isEmpty())
                .filter(o -> !evidence.elevation().outline().region().covers(x, y - (double) Grid.MM)).findFirst();
    }

    /** Nothing is known of what carries a threshold: some frame is drawn beneath it. */
    private void standOn(Opening o) {
        threshold = true;
        frameTo = o.rect().minY();
        frameFrom = frameTo - THRESHOLD;
        low = Optional.of(new Turn(Optional.empty(), Side.WALL));
        high = Optional.of(new Turn(Optional.of(o), Side.SILL));
    }

    /** The stretch of frame at or nearest to the place of interest, within the cut. */
    private void findFrame() {
        Intervals frame = frame();
        double want = cut.centre() - cut.from(), best = Double.POSITIVE_INFINITY;
        frameFrom = cut.from();
        frameTo = cut.to();
        for (int i = 0; i < frame.count(); i++) {
            double away = Math.max(0, Math.max(frame.from(i) - want, want - frame.to(i)));
            if (away < best) {
                best = away;
                frameFrom = cut.from() + frame.from(i);
                frameTo = cut.from() + frame.to(i);
            }
        }
        low = frameFrom > cut.from() ? turn(frameFrom, false) : Optional.empty();
        high = frameTo < cut.to() ? turn(frameTo, true) : Optional.empty();
    }

    /** The stretches of wall that the cut crosses, from its beginning. */
    private Intervals frame() {
        EdgeFrame e = EdgeFrame.of(cut.line());
        Intervals frame = e.inside(evidence.elevation().outline().region(), 0);
        for (Opening o : evidence.elevation().openings()) {
            frame = frame.minus(e.inside(Region.of(o.rect()), 0));
        }
        return frame;
    }

    private Optional<Turn> turn(double place, boolean atHigh) {
        for (Opening o : evidence.elevation().openings()) {
            long edge = cut.plumb() ? atHigh ? o.rect().minY() : o.rect().maxY() : atHigh ? o.rect().minX() : o.rect().maxX();
            long a = cut.plumb() ? o.rect().minX() : o.rect().minY(), b = cut.plumb() ? o.rect().maxX() : o.rect().maxY();
            if (Math.abs(edge - place) < 1 && a <= cut.across() && cut.across() <= b) {
                Side side = cut.plumb() ? atHigh ? Side.SILL : Side.HEAD : atHigh ? Side.LEFT : Side.RIGHT;
                return Optional.of(new Turn(Optional.of(o), side));
            }
        }
        for (OutlineEdge edge : evidence.elevation().outline().edges()) {
            Segment s = edge.line();
            if (crossing(s).filter(at -> Math.abs(at - place) < 1).isPresent()) {
                return Optional.of(new Turn(Optional.empty(), Side.WALL, edge.role() == EdgeRole.INTERNAL_CORNER && !cut.plumb(), edge.role() == EdgeRole.PARAPET && cut.plumb() && atHigh));
            }
        }
        return Optional.empty();
    }

    /** Where the cut's plane crosses an edge of the wall that runs more across it than along it, as a raked top does too. */
    private Optional<Double> crossing(Segment s) {
        double a = cut.plumb() ? s.a().x() : s.a().y(), b = cut.plumb() ? s.b().x() : s.b().y();
        double from = cut.plumb() ? s.a().y() : s.a().x(), to = cut.plumb() ? s.b().y() : s.b().x();
        boolean meets = a != b && Math.abs(to - from) <= Math.abs(b - a) && (cut.across() - a) * (cut.across() - b) <= 0;
        return meets ? Optional.of(from + (cut.across() - a) / (b - a) * (to - from)) : Optional.empty();
    }

    /** Whether a piece follows the frame round a turn: what folds, and beads. */
    static boolean goesRound(Piece p) {
        return p.material().kind().folds() || p.material().kind() == MaterialKind.SEALANT;
    }

    /** Whether a stiff piece is folded over the top of a parapet. */
    boolean caps(Piece p) {
        MaterialKind kind = p.material().kind();
        return high.filter(Turn::parapet).isPresent() && (kind == MaterialKind.TRIM || kind == MaterialKind.FLASHING);
    }

    /** What each piece covers along the cut; soft pieces only as far as the frame goes, unless a stiff one beneath them goes on. */
    private Map<Integer, Intervals> onWall() {
        EdgeFrame e = EdgeFrame.of(cut.line());
        Map<Integer, Intervals> out = new LinkedHashMap<>();
        for (Face f : evidence.stack().meeting(Surface.WALL, cut.line().box())) {
            if (withFace || f.piece().material().layer() == Layer.WRAP) {
                Intervals in = e.inside(f.region(), 0).shifted(cut.from());
                boolean soft = (goesRound(f.piece()) || caps(f.piece())) && !hangs(f);
                Intervals part = soft && threshold ? Intervals.NONE : soft && (low.isPresent() || high.isPresent()) ? in.intersect(Intervals.of(
                        low.isPresent() ? frameFrom : cut.from(), high.isPresent() ? frameTo : cut.to())) : in;
                out.merge(f.number(), part, Intervals::union);
            }
        }
        return out;
    }

    /** Whether a soft piece hangs down over a flashing that goes on past the foot of the wall: that is in the way of turning it under. */
    private boolean hangs(Face soft) {
        double foot = frameFrom;
        return cut.plumb() && goesRound(soft.piece()) && low.filter(t -> t.opening().isEmpty()).isPresent() && !threshold && passes(soft, foot + 1)
                && evidence.stack().meeting(Surface.WALL, cut.line().box()).stream().filter(f -> f.kind() == MaterialKind.FLASHING)
                        .anyMatch(f -> evidence.stack().order().isOutside(soft.number(), f.number()) && passes(f, foot - 1) && passes(f, foot + 1));
    }

    private boolean passes(Face f, double place) {
        return EdgeFrame.of(cut.line()).inside(f.region(), 0).shifted(cut.from()).contains(place);
    }

    /** What each piece covers past a turn, by the distance from it. */
    private Map<Integer, Intervals> leg(Turn turn, boolean atHigh) {
        return turn.opening().isPresent() ? onReveal(turn.opening().get(), turn.side()) : pastEnd(atHigh);
    }

    private Map<Integer, Intervals> onReveal(Opening o, Side side) {
        Map<Integer, Intervals> out = new LinkedHashMap<>();
        if (o.reveal() == 0) {
            return out;
        }
        long u = side.isJamb() ? cut.across() - o.rect().minY() : cut.across() - o.rect().minX();
        Segment inwards = new Segment(new Point(u, 0), new Point(u, o.reveal()));
        EdgeFrame e = EdgeFrame.of(inwards);
        for (Face f : evidence.stack().meeting(new Surface(o.id(), side), inwards.box())) {
            out.merge(f.number(), e.inside(f.region(), 0), Intervals::union);
        }
        return out;
    }

    private Map<Integer, Intervals> pastEnd(boolean atHigh) {
        long edge = Math.round(atHigh || threshold ? frameTo : frameFrom);
        long far = atHigh ? cut.to() : cut.from();
        Point a = cut.plumb() ? new Point(cut.across(), edge) : new Point(edge, cut.across());
        Point b = cut.plumb() ? new Point(cut.across(), far) : new Point(far, cut.across());
        Map<Integer, Intervals> out = new LinkedHashMap<>();
        if (a.equals(b)) {
            return out;
        }
        EdgeFrame e = EdgeFrame.of(new Segment(a, b));
        for (Face f : evidence.stack().meeting(Surface.WALL, new Segment(a, b).box())) {
            if (goesRound(f.piece()) && (atHigh || !hangs(f)) || withFace && atHigh && caps(f.piece())) {
                out.merge(f.number(), e.inside(f.region(), 0), Intervals::union);
            }
        }
        return out;
    }
}
