package rainlap.water;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;

/**
 * What is to be seen on one wall of the water of several walls laid flat. Where a way comes from a neighbour it is told all the same: what lies in a
 * neighbour's reveal is laid flat onto the wall there, beyond the corner.
 */
final class OneWall {
    private final Elevation wall;
    private final Elevation flat;
    private final boolean leftJoined;

    OneWall(Elevation wall, Elevation flat, boolean leftJoined) {
        this.wall = wall;
        this.flat = flat;
        this.leftJoined = leftJoined;
    }

    List<Arrival> arrivals(List<Arrival> all) {
        return all.stream().flatMap(a -> arrival(a).stream()).toList();
    }

    List<Reach> reaches(List<Reach> all) {
        return all.stream().flatMap(r -> reach(r).stream()).toList();
    }

    private Optional<Arrival> arrival(Arrival a) {
        return within(a.surface(), a.where())
                .map(where -> new Arrival(a.defences(), a.first(), a.surface(), where, path(a.path()), a.litresPerHour()));
    }

    Optional<Standing> standing(Standing s) {
        return within(s.surface(), s.where()).map(where -> new Standing(s.over(), s.layer(), s.surface(), where, path(s.path())));
    }

    Optional<OnBatten> onBatten(OnBatten b) {
        return within(b.surface(), b.where()).map(where -> new OnBatten(b.batten(), b.surface(), where, b.level(), b.held()));
    }

    private Optional<Reach> reach(Reach r) {
        List<Region> here = r.surface().isWall() ? Overlay.intersection(r.where(), List.of(wall.outline().region())) : isHere(r.surface()) ? r.where() : List.of();
        return here.isEmpty() ? Optional.empty() : Optional.of(new Reach(r.defences(), r.surface(), here));
    }

    private boolean isHere(Surface s) {
        return s.isWall() || wall.findOpening(s.opening()).isPresent();
    }

    /** The part of a line that lies on this wall; a plumb one exactly at a joined corner belongs to the wall to the left of it. */
    private Optional<List<Point>> within(Surface on, List<Point> line) {
        if (!on.isWall()) {
            return isHere(on) ? Optional.of(line) : Optional.empty();
        }
        Box w = wall.outline().box(), b = Box.of(line);
        if (b.maxX() < w.minX() || b.minX() > w.maxX() || b.minX() == b.maxX() && leftJoined && b.minX() == w.minX()
                || b.minX() < b.maxX() && (b.maxX() == w.minX() || b.minX() == w.maxX())) {
            return Optional.empty();
        }
        return Optional.of(line.size() != 2 ? line : List.of(at(line, w, line.get(0)), at(line, w, line.get(1))));
    }

    /** The end of a straight line, brought onto the wall along the line. */
    private static Point at(List<Point> line, Box w, Point end) {
        long x = Math.max(w.minX(), Math.min(w.maxX(), end.x()));
        Point a = line.get(0), b = line.get(1);
        return x == end.x() ? end : new Point(x, Math.round(a.y() + (double) (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x())));
    }

    private List<Step> path(List<Step> path) {
        return path.stream().map(s -> isHere(s.on()) ? s : new Step(s.kind(), s.layer(), s.piece(), s.failure(), Surface.WALL, laidFlat(s))).toList();
    }

    private List<Point> laidFlat(Step s) {
        return s.where().stream().map(p -> flat.findOpening(s.on().opening()).orElseThrow().toWall(s.on().side(), p)).toList();
    }
}
