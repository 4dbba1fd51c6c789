package rainlap.rule.opening;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.geom.Cuts;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Hits;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Profile;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Sheets;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.rule.HeadFlashings;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/**
 * One edge of a head flashing that faces up: the upper edge of its upstand. Places along it are grid units from the first end of
 * {@link #frame()}, which has the flashing on its left.
 */
final class HeadEdge {
    /** An edge is an upper one when it lies within 60 degrees of level; steeper ones are ends. */
    private static final double LEVEL_ENOUGH = 0.5;

    private final Opening opening;
    private final Face flashing;
    private final EdgeFrame frame;
    private final Intervals onWall;
    private final List<Face> over = new ArrayList<>();
    private final List<Face> behind = new ArrayList<>();
    private final List<Face> strips = new ArrayList<>();
    private final Intervals lapped;
    private final Intervals reachedBehind;
    private final Profile lap;

    private HeadEdge(Stack stack, Opening opening, List<Face> shapes, Segment edge) {
        this.opening = opening;
        this.flashing = shapes.get(0);
        this.frame = EdgeFrame.of(edge);
        this.onWall = frame.inside(stack.elevation().outline().region(), frame.side());
        for (Face f : stack.meeting(Surface.WALL, edge.box().grow(3))) {
            boolean outside = f.number() != flashing.number() && stack.isOutside(f, flashing);
            if (f.number() == flashing.number() || f.across(frame, 0, frame.length()).isEmpty()) {
                continue;
            }
            if (Sheets.isStrip(f) && outside) {
                strips.add(f);
            } else if (f.kind() == MaterialKind.MEMBRANE) {
                (outside ? over : behind).add(f);
            }
        }
        this.lapped = crossing(over);
        this.reachedBehind = crossing(behind);
        this.lap = lapOver(shapes);
    }

    /** The upper edges of every head flashing, each once, in the order of openings and of laying. */
    static List<HeadEdge> of(Evidence e) {
        return e.shared().of(HeadEdge.class, () -> all(e));
    }

    private static List<HeadEdge> all(Evidence e) {
        Map<Integer, List<Face>> shapes = e.onWall(MaterialKind.FLASHING).stream().collect(Collectors.groupingBy(Face::number));
        Set<Integer> found = new HashSet<>();
        return e.elevation().openings().stream().flatMap(o -> HeadFlashings.of(e, o).stream().filter(f -> found.add(f.number()))
                .flatMap(f -> of(e.stack(), o, shapes.get(f.number())))).toList();
    }

    private static Stream<HeadEdge> of(Stack stack, Opening o, List<Face> shapes) {
        return Overlay.union(shapes.stream().map(Face::region).toList()).stream().flatMap(r -> r.edges().stream())
                .filter(s -> EdgeFrame.of(s).ux() < -LEVEL_ENOUGH).map(s -> new HeadEdge(stack, o, shapes, s));
    }

    Opening opening() {
        return opening;
    }

    Face flashing() {
        return flashing;
    }

    EdgeFrame frame() {
        return frame;
    }

    /** How far, at each place where a membrane lies over the edge, it laps over the upstand. */
    Profile lap() {
        return lap;
    }

    /** Where a membrane that lies outside the flashing crosses the edge. */
    Intervals lapped() {
        return lapped;
    }

    /** Where none lies over the edge but one lies behind the flashing. */
    Intervals inFront() {
        return reachedBehind.minus(lapped);
    }

    /** Where no membrane crosses the edge. */
    Intervals withoutFlap() {
        return onWall.minus(lapped).minus(reachedBehind);
    }

    /** Whether adhered strips lie over all of a stretch. */
    boolean isTaped(double from, double to) {
        return Intervals.of(from, to).minus(crossing(strips)).isEmpty();
    }

    /** Ids of the membranes over, or else behind, a stretch, in laying order. */
    List<String> membranes(double from, double to) {
        List<String> above = ids(over, from, to);
        return above.isEmpty() ? ids(behind, from, to) : above;
    }

    private List<String> ids(List<Face> faces, double from, double to) {
        Intervals span = Intervals.of(from, to);
        return faces.stream().filter(f -> !across(f).intersect(span).isEmpty()).map(f -> f.piece().id()).distinct().toList();
    }

    private Intervals across(Face f) {
        return f.across(frame, 0, frame.length());
    }

    private Intervals crossing(List<Face> faces) {
        return Intervals.unionOf(faces.stream().map(this::across).toList()).intersect(onWall);
    }

    /**
     * The furthest lap at each place: no further than the membrane stays on the wall (what folds into the head leaves the flashing), than the
     * flashing's own foot, and than its upstand is stated to be high.
     */
    private Profile lapOver(List<Face> shapes) {
        List<Profile> laps = new ArrayList<>();
        List<Region> whole = Overlay.union(shapes.stream().map(Face::region).toList());
        for (Face f : over) {
            Intervals where = across(f);
            for (int i = 0; i < where.count(); i++) {
                Hits hits = new Hits(frame, where.from(i), where.to(i), frame.side());
                hits.addEnds(f.region());
                whole.forEach(hits::addEnds);
                laps.add(capped(hits.nearest()));
            }
        }
        return furthest(laps);
    }

    private Profile capped(Profile p) {
        OptionalDouble stated = flashing.piece().material().profile().upstandMm();
        return stated.isEmpty() ? p : p.atMost(stated.getAsDouble() * 100);
    }

    private static Profile furthest(List<Profile> laps) {
        if (laps.size() < 2) {
            return laps.isEmpty() ? Profile.NONE : laps.get(0);
        }
        Cuts places = new Cuts();
        laps.forEach(places::addEnds);
        double[] cuts = places.sorted();
        Profile.Builder out = new Profile.Builder();
        for (int i = 0; i + 1 < cuts.length; i++) {
            double a = cuts[i], b = cuts[i + 1], mid = (a + b) / 2;
            if (b - a > 1e-6) {
                laps.stream().filter(l -> Double.isFinite(l.leastWithin(mid, mid)))
                        .reduce((p, q) -> q.leastWithin(mid, mid) > p.leastWithin(mid, mid) ? q : p)
                        .ifPresent(l -> out.add(l.part(a, b)));
            }
        }
        return out.build();
    }
}
