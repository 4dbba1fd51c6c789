package rainlap.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Exact cuts with boxes, without an overlay: what most sheets and openings need. */
public final class BoxCut {
    private BoxCut() {}

    /** What is left of box a without box b, which must share an area with it: as few regions as there are separate parts. */
    public static List<Region> minus(Box a, Box b) {
        boolean left = b.minX() <= a.minX(), right = b.maxX() >= a.maxX(), low = b.minY() <= a.minY(), high = b.maxY() >= a.maxY();
        if (!left && !right && !low && !high) {
            return List.of(new Region(Ring.of(a), List.of(Ring.of(b))));
        }
        if (left && right) {
            return strips(low ? null : new Box(a.minX(), a.minY(), a.maxX(), b.minY()),
                    high ? null : new Box(a.minX(), b.maxY(), a.maxX(), a.maxY()));
        }
        if (low && high) {
            return strips(left ? null : new Box(a.minX(), a.minY(), b.minX(), a.maxY()),
                    right ? null : new Box(b.maxX(), a.minY(), a.maxX(), a.maxY()));
        }
        return List.of(notched(a, b, left, right, low, high));
    }

    /** What is left of a box without others that cut notches into its lower and upper side; empty where one of them does anything else, or two touch. */
    public static Optional<Region> notched(Box a, List<Box> others) {
        List<Box> fromLeft = others.stream().sorted(Comparator.comparingLong(Box::minX)).toList();
        List<Point> up = new ArrayList<>(List.of(new Point(a.minX(), a.minY()))), back = new ArrayList<>(List.of(new Point(a.minX(), a.maxY())));
        long end = a.minX();
        for (Box b : fromLeft) {
            boolean low = b.minY() <= a.minY() && b.maxY() < a.maxY(), high = b.maxY() >= a.maxY() && b.minY() > a.minY();
            if (b.minX() <= end || b.maxX() >= a.maxX() || !low && !high) {
                return Optional.empty();
            }
            if (low) {
                up.addAll(List.of(new Point(b.minX(), a.minY()), new Point(b.minX(), b.maxY()), new Point(b.maxX(), b.maxY()), new Point(b.maxX(), a.minY())));
            } else {
                back.addAll(List.of(new Point(b.minX(), a.maxY()), new Point(b.minX(), b.minY()), new Point(b.maxX(), b.minY()), new Point(b.maxX(), a.maxY())));
            }
            end = b.maxX();
        }
        up.add(new Point(a.maxX(), a.minY()));
        back.add(new Point(a.maxX(), a.maxY()));
        Collections.reverse(back);
        up.addAll(back);
        return Optional.of(Region.of(up));
    }

    private static List<Region> strips(Box one, Box two) {
        List<Region> out = new ArrayList<>();
        for (Box b : new Box[] {one, two}) {
            if (b != null) {
                out.add(Region.of(b));
            }
        }
        return out;
    }

    /** One side or one corner is cut out: walk round a, stepping in along b where b reaches a's side. */
    private static Region notched(Box a, Box b, boolean left, boolean right, boolean low, boolean high) {
        long x0 = Math.max(a.minX(), b.minX()), x1 = Math.min(a.maxX(), b.maxX());
        long y0 = Math.max(a.minY(), b.minY()), y1 = Math.min(a.maxY(), b.maxY());
        List<Point> p = new ArrayList<>();
        corner(p, low && left, new Point(a.minX(), a.minY()), new Point(a.minX(), y1), new Point(x1, y1), new Point(x1, a.minY()));
        side(p, low && !left && !right, new Point(x0, a.minY()), new Point(x0, y1), new Point(x1, y1), new Point(x1, a.minY()));
        corner(p, low && right, new Point(a.maxX(), a.minY()), new Point(x0, a.minY()), new Point(x0, y1), new Point(a.maxX(), y1));
        side(p, right && !low && !high, new Point(a.maxX(), y0), new Point(x0, y0), new Point(x0, y1), new Point(a.maxX(), y1));
        corner(p, high && right, new Point(a.maxX(), a.maxY()), new Point(a.maxX(), y0), new Point(x0, y0), new Point(x0, a.maxY()));
        side(p, high && !left && !right, new Point(x1, a.maxY()), new Point(x1, y0), new Point(x0, y0), new Point(x0, a.maxY()));
        corner(p, high && left, new Point(a.minX(), a.maxY()), new Point(x1, a.maxY()), new Point(x1, y0), new Point(a.minX(), y0));
        side(p, left && !low && !high, new Point(a.minX(), y1), new Point(x1, y1), new Point(x1, y0), new Point(a.minX(), y0));
        return Region.of(p);
    }

    private static void corner(List<Point> p, boolean cut, Point whole, Point... instead) {
        p.addAll(cut ? List.of(instead) : List.of(whole));
    }

    private static void side(List<Point> p, boolean cut, Point... step) {
        if (cut) {
            p.addAll(List.of(step));
        }
    }

    /**
     * What two convex rings share (Sutherland and Hodgman, Communications of the ACM 17, 1974). Exact where the edges that cut are level
     * or plumb and those cut level, plumb or at 45 degrees; else rounded to the grid. Empty when no area is left.
     */
    public static List<Region> within(Ring convex, Ring clip) {
        List<Point> left = convex.points();
        for (int i = 0; i < clip.size() && !left.isEmpty(); i++) {
            left = leftOf(left, clip.point(i), clip.point((i + 1) % clip.size()));
        }
        try {
            return left.size() < 3 ? List.of() : List.of(Region.of(left));
        } catch (IllegalArgumentException nothingLeft) {
            return List.of(); // only an edge or a corner touches
        }
    }

    private static List<Point> leftOf(List<Point> in, Point a, Point b) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < in.size(); i++) {
            Point p = in.get(i), q = in.get((i + 1) % in.size());
            long sideP = p.side(a, b), sideQ = q.side(a, b);
            if (sideP >= 0) {
                out.add(p);
            }
            if (sideP > 0 && sideQ < 0 || sideP < 0 && sideQ > 0) {
                double f = sideP / ((double) sideP - sideQ);
                out.add(new Point(Math.round(p.x() + f * (q.x() - p.x())), Math.round(p.y() + f * (q.y() - p.y()))));
            }
        }
        return out;
    }
}
