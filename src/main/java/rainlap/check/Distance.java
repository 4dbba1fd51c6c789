package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.rule.Place;

/** How far a line lies from a place, both laid flat; in grid units. */
final class Distance {
    private Distance() {}

    static double between(Segment line, Place place) {
        if (place.area().stream().anyMatch(r -> r.covers(line.a().x(), line.a().y()))) {
            return 0;
        }
        return sides(place).stream().mapToDouble(s -> between(line, s)).min().orElse(Double.POSITIVE_INFINITY);
    }

    private static List<Segment> sides(Place place) {
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i + 1 < place.line().size(); i++) {
            out.add(new Segment(place.line().get(i), place.line().get(i + 1)));
        }
        for (Region r : place.area()) {
            out.addAll(r.edges());
        }
        return out;
    }

    private static double between(Segment s, Segment t) {
        return cross(s, t) ? 0 : Math.min(Math.min(from(s.a(), t), from(s.b(), t)), Math.min(from(t.a(), s), from(t.b(), s)));
    }

    private static boolean cross(Segment s, Segment t) {
        return side(s, t.a()) * side(s, t.b()) < 0 && side(t, s.a()) * side(t, s.b()) < 0;
    }

    private static double side(Segment s, Point p) {
        return Math.signum((double) (s.b().x() - s.a().x()) * (p.y() - s.a().y()) - (double) (s.b().y() - s.a().y()) * (p.x() - s.a().x()));
    }

    private static double from(Point p, Segment s) {
        double dx = s.b().x() - s.a().x(), dy = s.b().y() - s.a().y(), length2 = dx * dx + dy * dy;
        double t = length2 == 0 ? 0 : Math.max(0, Math.min(1, ((p.x() - s.a().x()) * dx + (p.y() - s.a().y()) * dy) / length2));
        return Math.hypot(p.x() - s.a().x() - t * dx, p.y() - s.a().y() - t * dy);
    }
}
