package rainlap.check;

import java.util.List;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.rule.Place;

/** Whether a line lies near a place, both laid flat; in grid units. */
final class Distance {
    private Distance() {}

    static boolean isWithin(double far, Segment line, Place place) {
        List<Point> along = place.line();
        for (int i = 0; i + 1 < along.size(); i++) {
            if (isWithin(far, line.a(), line.b(), along.get(i), along.get(i + 1))) {
                return true;
            }
        }
        for (Region r : place.area()) {
            if (r.covers(line.a().x(), line.a().y()) || r.edges().stream().anyMatch(s -> isWithin(far, line.a(), line.b(), s.a(), s.b()))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWithin(double far, Point a, Point b, Point c, Point d) {
        return !isApart(far, a.x(), b.x(), c.x(), d.x()) && !isApart(far, a.y(), b.y(), c.y(), d.y())
                && (cross(a, b, c, d) || isWithin(far, a, c, d) || isWithin(far, b, c, d) || isWithin(far, c, a, b) || isWithin(far, d, a, b));
    }

    private static boolean isApart(double far, long a, long b, long c, long d) {
        return Math.max(a, b) + far < Math.min(c, d) || Math.max(c, d) + far < Math.min(a, b);
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point p) {
        return Math.signum((double) (b.x() - a.x()) * (p.y() - a.y()) - (double) (b.y() - a.y()) * (p.x() - a.x()));
    }

    private static boolean isWithin(double far, Point p, Point a, Point b) {
        double dx = b.x() - a.x(), dy = b.y() - a.y(), length2 = dx * dx + dy * dy;
        double t = length2 == 0 ? 0 : Math.max(0, Math.min(1, ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / length2));
        double x = p.x() - a.x() - t * dx, y = p.y() - a.y() - t * dy;
        return x * x + y * y <= far * far;
    }
}
