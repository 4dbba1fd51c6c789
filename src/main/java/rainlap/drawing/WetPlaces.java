package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.rule.water.LeaksAsDrawn;
import rainlap.wall.Surface;
import rainlap.water.Arrival;
import rainlap.water.Step;

/**
 * The frame that water reaches as drawn, told apart: what a weak point without defences explains, which is painted as wet, and what the rules
 * count as nothing, which is only told. That is bare frame deep in a reveal, where the window's own frame is taken to stand, and strips within
 * the tolerance of the drawing. To paint it would say that the wall leaks while the table says that it does not.
 *
 * <p>Nothing that may be a leak is left out: a part is painted when any way comes to it that the rules count, when a weak point without
 * defences lies at it, when it touches such a part, or when water comes to it from one.
 */
final class WetPlaces {
    private static final long NEAR = Grid.MM;
    private final Evidence evidence;
    private final List<Wet> painted = new ArrayList<>();
    private final List<Wet> leftOut = new ArrayList<>();

    /** A part of one surface, laid flat in wall coordinates. */
    private record Wet(Surface on, Region flat) {
        boolean touches(Box b) {
            return flat.box().grow(NEAR).meets(b)
                    && (flat.covers((b.minX() + b.maxX()) / 2.0, (b.minY() + b.maxY()) / 2.0) || flat.edges().stream().anyMatch(e -> near(e).meets(b)));
        }

        boolean isAt(Place p) {
            return p.surface().equals(on) && touches(p.box());
        }

        boolean touches(Wet o) {
            return flat.box().grow(NEAR).meets(o.flat.box()) && flat.edges().stream().anyMatch(e -> o.flat.edges().stream().anyMatch(f -> near(e).meets(box(f))));
        }

        private static Box near(Segment s) {
            return box(s).grow(NEAR);
        }

        private static Box box(Segment s) {
            return Box.of(List.of(s.a(), s.b()));
        }
    }

    private WetPlaces(Evidence evidence) {
        this.evidence = evidence;
    }

    static WetPlaces of(CheckResult result) {
        WetPlaces all = new WetPlaces(result.evidence());
        all.evidence.trace().reachAsDrawn()
                .forEach(r -> all.flat(r.surface(), r.where()).forEach(f -> all.leftOut.add(new Wet(r.surface(), f))));
        List<Place> causes = Stream.concat(all.arrivals(), result.weakPoints().stream().flatMap(all::places)).toList();
        all.paint(all.leftOut.stream().filter(w -> causes.stream().anyMatch(c -> w.isAt(c))).toList());
        all.followOn();
        return all;
    }

    boolean any() {
        return !painted.isEmpty();
    }

    /** The surfaces that something is to be painted of. */
    List<Surface> surfaces() {
        return painted.stream().map(Wet::on).distinct().sorted().toList();
    }

    /** What is to be painted of a surface, laid flat. */
    List<Region> painted(Surface s) {
        return painted.stream().filter(w -> w.on().equals(s)).map(Wet::flat).toList();
    }

    /** Where the frame is wet but no rule counts it, laid flat. */
    List<Place> leftOut() {
        return leftOut.stream().map(w -> new Place(w.on(), List.of(), List.of(w.flat()))).toList();
    }

    private List<Region> flat(Surface s, List<Region> where) {
        return where.isEmpty() ? List.of() : Place.area(evidence.elevation(), s, where).area();
    }

    private Stream<Place> arrivals() {
        return evidence.trace().arrivals().stream().filter(LeaksAsDrawn::counts).map(a -> line(a.surface(), a.where()));
    }

    /** Where a weak point without defences is, and where its water is on the frame. */
    private Stream<Place> places(WeakPoint p) {
        if (p.finding().defences() > 0) {
            return Stream.empty();
        }
        return Stream.concat(Stream.of(p.finding().where()), p.finding().path().stream().filter(s -> s.layer().equals(Step.FRAME))
                .map(s -> line(s.on(), s.where())));
    }

    /** What has left painted frame and gets onto other frame further down: off a ledge, or from a reveal. */
    private void followOn() {
        List<Arrival> from = evidence.trace().arrivals().stream().filter(a -> a.defences() == 0 && a.comesFromTheFrame()).toList();
        List<Wet> next = List.of();
        do {
            paint(next);
            next = leftOut.stream().filter(w -> from.stream().filter(a -> w.isAt(line(a.surface(), a.where()))).anyMatch(this::leavesPainted)).toList();
        } while (!next.isEmpty());
    }

    private boolean leavesPainted(Arrival a) {
        return a.path().stream().filter(s -> s.layer().equals(Step.FRAME)).map(s -> line(s.on(), s.where())).anyMatch(p -> painted.stream().anyMatch(w -> w.isAt(p)));
    }

    private Place line(Surface on, List<Point> where) {
        return Place.line(evidence.elevation(), on, where);
    }

    /** Water runs on over bare frame, also round the edges of an opening, which lie side by side when it is laid flat. */
    private void paint(List<Wet> from) {
        painted.addAll(from);
        leftOut.removeAll(from);
        for (int i = 0; i < painted.size(); i++) {
            Wet wet = painted.get(i);
            List<Wet> touched = leftOut.stream().filter(wet::touches).toList();
            painted.addAll(touched);
            leftOut.removeAll(touched);
        }
    }
}
