package rainlap.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a box leaves of a convex ring out of which it cuts one piece at the border, without an overlay: as an opening does with a strip laid aslant over its corner. */
final class Bight {
    private final Ring ring;
    private final Box box;
    /** Corners of the ring and where it crosses the box, in its order; and which of them are crossings. */
    private final List<Point> walk = new ArrayList<>();
    private final List<Integer> crossings = new ArrayList<>(2);

    private Bight(Ring convex, Box box) {
        this.ring = convex;
        this.box = box;
    }

    /** Empty where the box does anything else, where a corner of either lies on a line of the other, and where a crossing may not lie on the grid: there an overlay rounds it. */
    static Optional<Region> cut(Ring convex, Box box) {
        Bight b = new Bight(convex, box);
        return b.walkRound() && b.crossings.size() == 2 ? b.left() : Optional.empty();
    }

    private boolean walkRound() {
        for (int i = 0; i < ring.size(); i++) {
            Point p = ring.point(i), q = ring.point(i + 1);
            if (p.x() == box.minX() || p.x() == box.maxX() || p.y() == box.minY() || p.y() == box.maxY()) {
                return false;
            }
            walk.add(p);
            List<Point> met = crossings(p, q);
            long dx = Math.abs(q.x() - p.x()), dy = Math.abs(q.y() - p.y());
            if (!met.isEmpty() && dx != 0 && dy != 0 && dx != dy) {
                return false;
            }
            met.forEach(this::cross);
        }
        return true;
    }

    private void cross(Point p) {
        crossings.add(walk.size());
        walk.add(p);
    }

    /** In the order from p to q; at a corner of the box two of them are one place. */
    private List<Point> crossings(Point p, Point q) {
        List<Point> out = new ArrayList<>(2);
        for (long x : new long[] {box.minX(), box.maxX()}) {
            long y = p.x() < x == q.x() < x ? 0 : p.y() + Math.round((double) (x - p.x()) * (q.y() - p.y()) / (q.x() - p.x()));
            if (p.x() < x != q.x() < x && box.minY() <= y && y <= box.maxY()) {
                out.add(new Point(x, y));
            }
        }
        for (long y : new long[] {box.minY(), box.maxY()}) {
            long x = p.y() < y == q.y() < y ? 0 : p.x() + Math.round((double) (y - p.y()) * (q.x() - p.x()) / (q.y() - p.y()));
            if (p.y() < y != q.y() < y && box.minX() <= x && x <= box.maxX()) {
                out.add(new Point(x, y));
            }
        }
        out.sort((a, b) -> Long.compare(Math.abs(a.x() - p.x()) + Math.abs(a.y() - p.y()), Math.abs(b.x() - p.x()) + Math.abs(b.y() - p.y())));
        return out;
    }

    /** From where the ring comes out of the box to where it goes in, and back along the box's border, which there lies inside the ring. */
    private Optional<Region> left() {
        int first = crossings.get(0), second = crossings.get(1);
        boolean startsInside = box.contains(walk.get(0));
        List<Point> out = new ArrayList<>(startsInside ? walk.subList(first, second + 1) : walk.subList(second, walk.size()));
        if (!startsInside) {
            out.addAll(walk.subList(0, first + 1));
        }
        List<Point> corners = List.of(new Point(box.minX(), box.maxY()), new Point(box.maxX(), box.maxY()), new Point(box.maxX(), box.minY()), new Point(box.minX(), box.minY()));
        Point in = out.get(out.size() - 1);
        int next = in.x() == box.minX() ? 0 : in.y() == box.maxY() ? 1 : in.x() == box.maxX() ? 2 : 3;
        for (int k = 0; k < 4; k++) {
            Point corner = corners.get((next + k) % 4);
            long least = leastSide(corner);
            if (least == 0) {
                return Optional.empty();
            }
            if (least < 0) {
                break;
            }
            out.add(corner);
        }
        return Optional.of(Region.of(out));
    }

    /** Positive inside the ring, 0 on its border. */
    private long leastSide(Point p) {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < ring.size(); i++) {
            least = Math.min(least, p.side(ring.point(i), ring.point(i + 1)));
        }
        return least;
    }
}
