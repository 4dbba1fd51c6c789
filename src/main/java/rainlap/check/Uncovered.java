package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.BoxCover;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;
import rainlap.water.Step;

/** Whether the frame lies bare at a place, so that rain wets it. */
final class Uncovered {
    /** To each side of a line on the wall: 10 mm. */
    private static final long BESIDE = 1_000;
    /** Less than this, and than half of what is looked at, is left by rounding: a square millimetre. */
    private static final double LEAST_MM2 = 1;
    private static final List<Side> AROUND = List.of(Side.HEAD, Side.LEFT, Side.RIGHT, Side.SILL);

    private Uncovered() {}

    static Optional<Step> at(Evidence e, Place place) {
        Surface on = place.surface();
        Optional<Step> there = isCovered(e, place) ? Optional.empty() : bare(e, on, on.isWall() ? onWall(e, place) : onReveal(e, place));
        return there.isPresent() || !on.isWall() || !place.isLine() ? there : beyondEdges(e, place);
    }

    /** A line along an edge of an opening lies beside the reveal, too, and at a corner of the opening beside the surface that meets it there. */
    private static Optional<Step> beyondEdges(Evidence e, Place place) {
        Box line = place.box();
        return e.elevation().openingsMeeting(line).stream().filter(o -> o.reveal() > 0)
                .filter(o -> AROUND.stream().anyMatch(s -> isAlong(line, o.edge(s))))
                .flatMap(o -> AROUND.stream().flatMap(s -> bare(e, new Surface(o.id(), s), behind(o, s, line)).stream())).findFirst();
    }

    private static boolean isAlong(Box line, Segment edge) {
        Box b = Box.of(List.of(edge.a(), edge.b()));
        long x = Math.min(line.maxX(), b.maxX()) - Math.max(line.minX(), b.minX()), y = Math.min(line.maxY(), b.maxY()) - Math.max(line.minY(), b.minY());
        return b.width() == 0 ? line.width() == 0 && x == 0 && y > 0 : line.height() == 0 && y == 0 && x > 0;
    }

    /** What of a reveal's surface, laid flat, comes as near to a line as {@link #BESIDE}, and lies no deeper in it. */
    private static List<Region> behind(Opening o, Side side, Box line) {
        Box near = line.grow(BESIDE);
        Point a = o.toSurface(side, new Point(near.minX(), near.minY())), b = o.toSurface(side, new Point(near.maxX(), near.maxY()));
        long u0 = Math.max(0, Math.min(a.x(), b.x())), u1 = Math.min(o.along(side), Math.max(a.x(), b.x()));
        long v0 = Math.max(0, Math.min(a.y(), b.y())), v1 = Math.min(Math.min(BESIDE, o.reveal()), Math.max(a.y(), b.y()));
        return u0 >= u1 || v0 >= v1 ? List.of() : List.of(Region.of(new Box(u0, v0, u1, v1)));
    }

    /** Rain on as much as lies bare of what is looked at. */
    private static Optional<Step> bare(Evidence e, Surface on, List<Region> look) {
        List<Region> bare = notCovered(e, on, look);
        return bare.isEmpty() || areaMm2(bare) < Math.min(LEAST_MM2, areaMm2(look) / 2) ? Optional.empty() : Optional.of(rain(on, bare));
    }

    /** What of an area lies bare: on the wall inside its outline and outside openings and penetrations, on a reveal as deep as that goes. Empty if no more than rounding leaves. */
    static List<Region> of(Evidence e, Surface on, List<Region> area) {
        List<Region> bare = on.isWall() ? onWall(e, notCovered(e, on, area))
                : Overlay.intersection(notCovered(e, on, area), List.of(Region.of(e.elevation().findOpening(on.opening()).orElseThrow().surface(on.side()))));
        return areaMm2(bare) < LEAST_MM2 ? List.of() : bare;
    }

    private static List<Region> notCovered(Evidence e, Surface on, List<Region> area) {
        List<Region> over = new ArrayList<>();
        area.stream().map(Region::box).reduce(Box::join).ifPresent(b -> e.stack().meeting(on, b, f -> over.add(f.region())));
        return area.size() == 1 && area.get(0).isBox() && BoxCover.isSure(area.get(0).box(), over) ? List.of() : Overlay.difference(area, over);
    }

    private static double areaMm2(List<Region> of) {
        return of.stream().mapToDouble(Region::areaMm2).sum();
    }

    /** Whether what lies on the wall there, with the openings, covers it all: so it mostly is, and no overlay is needed to tell. */
    private static boolean isCovered(Evidence e, Place place) {
        if (!place.surface().isWall()) {
            return false;
        }
        Box box = place.isLine() ? place.box().grow(BESIDE) : place.box();
        List<Region> over = new ArrayList<>();
        e.stack().meeting(place.surface(), box, f -> over.add(f.region()));
        e.elevation().openingsMeeting(box).forEach(o -> over.add(Region.of(o.rect())));
        return BoxCover.isSure(box, over);
    }

    static Step rain(Surface on, List<Region> bare) {
        Box b = bare.stream().map(Region::box).reduce(Box::join).orElseThrow();
        return new Step(Step.Kind.RAIN, Step.FRAME, "", false, on, List.of(new Point(b.minX(), b.maxY()), new Point(b.maxX(), b.maxY())));
    }

    private static List<Region> onWall(Evidence e, Place place) {
        return onWall(e, place.isLine() ? beside(place.line()) : place.area());
    }

    private static List<Region> onWall(Evidence e, List<Region> near) {
        if (near.isEmpty()) {
            return near;
        }
        Box box = near.stream().map(Region::box).reduce(Box::join).orElseThrow();
        List<Region> holes = new ArrayList<>();
        e.elevation().openingsMeeting(box).forEach(o -> holes.add(Region.of(o.rect())));
        e.elevation().penetrationsMeeting(box).forEach(p -> holes.add(p.region()));
        return Overlay.difference(Overlay.intersection(near, List.of(e.elevation().outline().region())), holes);
    }

    private static List<Region> beside(List<Point> line) {
        Point a = line.get(0), b = line.get(line.size() - 1);
        return line.size() != 2 || a.x() != b.x() && a.y() != b.y() ? Overlay.run(line, 2 * BESIDE)
                : List.of(Region.of(a.x() == b.x() ? new Box(a.x() - BESIDE, Math.min(a.y(), b.y()), a.x() + BESIDE, Math.max(a.y(), b.y()))
                        : new Box(Math.min(a.x(), b.x()), a.y() - BESIDE, Math.max(a.x(), b.x()), a.y() + BESIDE)));
    }

    /** As deep as the reveal goes, in its own frame. */
    private static List<Region> onReveal(Evidence e, Place place) {
        Surface on = place.surface();
        Opening o = e.elevation().findOpening(on.opening()).orElseThrow();
        Box flat = place.box();
        Point a = o.toSurface(on.side(), new Point(flat.minX(), flat.minY())), b = o.toSurface(on.side(), new Point(flat.maxX(), flat.maxY()));
        Box all = o.surface(on.side());
        long from = Math.max(all.minX(), Math.min(a.x(), b.x())), to = Math.min(all.maxX(), Math.max(a.x(), b.x()));
        return from >= to ? List.of() : List.of(Region.of(new Box(from, all.minY(), to, all.maxY())));
    }
}
