package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** Which ways of the water pass a place: their arrival, or a line they cross, comes within {@link #NEAR} of it. */
final class Passing {
    /** 10 mm. */
    static final long NEAR = 1_000;

    private final Elevation elevation;
    private final List<Arrival> arrivals;
    private final List<Integer> owner = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final BoxTree tree;

    /** A line on a way, laid flat. */
    record Mark(Surface on, Segment line) {}

    Passing(Evidence e) {
        this.elevation = e.elevation();
        this.arrivals = e.trace().arrivals();
        for (int i = 0; i < arrivals.size(); i++) {
            Arrival a = arrivals.get(i);
            for (Mark m : marks(elevation, Place.line(elevation, a.surface(), a.where()), a.path())) {
                marks.add(m);
                owner.add(i);
            }
        }
        this.tree = new BoxTree(marks.stream().map(m -> m.line.box()).toList());
    }

    /** In the order of the trace's arrivals. */
    List<Arrival> by(Place place) {
        TreeSet<Integer> found = new TreeSet<>();
        long near = near(elevation, place);
        tree.query(place.box().grow(near), i -> {
            if (!found.contains(owner.get(i)) && isNear(elevation, marks.get(i), place, NEAR)) {
                found.add(owner.get(i));
            }
        });
        return found.stream().map(arrivals::get).toList();
    }

    /** How much of a place the lines of a way share, grid units: of one that only touches its end, next to nothing. */
    long shared(Arrival a, Place place) {
        Box box = place.box().grow(near(elevation, place));
        return marks(elevation, Place.line(elevation, a.surface(), a.where()), a.path()).stream()
                .filter(m -> isNear(elevation, m, place, NEAR)).mapToLong(m -> shared(m.line.box(), box)).max().orElse(0);
    }

    private static long shared(Box a, Box b) {
        long x = Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX()), y = Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY());
        return x < 0 || y < 0 ? 0 : Math.max(x, y);
    }

    static boolean names(Arrival a, List<String> pieces) {
        return a.path().stream().anyMatch(s -> pieces.contains(s.piece()) || pieces.contains(s.layer()));
    }

    /** Where rain falls is no mark: it falls everywhere. */
    static List<Mark> marks(Elevation e, Place arrival, List<Step> path) {
        List<Mark> out = new ArrayList<>();
        add(arrival.surface(), arrival.line(), out);
        path.stream().skip(path.size() > 1 ? 1 : 0).forEach(s -> add(s.on(), Place.line(e, s.on(), s.where()).line(), out));
        return out;
    }

    private static void add(Surface on, List<Point> line, List<Mark> out) {
        for (int i = 0; i + 1 < line.size(); i++) {
            out.add(new Mark(on, new Segment(line.get(i), line.get(i + 1))));
        }
    }

    static boolean isNear(Elevation e, Mark m, Place place, long near) {
        boolean sameOpening = !m.on.isWall() && m.on.opening().equals(place.surface().opening());
        boolean folded = m.on.isWall() != place.surface().isWall();
        return (m.on.equals(place.surface()) || sameOpening || folded)
                && Distance.between(m.line, place) <= (sameOpening ? near(e, place) : near);
    }

    /** In a reveal all that lies within its depth is one place. */
    static long near(Elevation e, Place place) {
        return place.surface().isWall() ? NEAR : Math.max(NEAR, e.findOpening(place.surface().opening()).orElseThrow().reveal());
    }
}
