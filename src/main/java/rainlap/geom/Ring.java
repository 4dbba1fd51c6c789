package rainlap.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed ring of at least three points, counter-clockwise, without repeated points and without points that lie straight
 * between or spike back over their neighbours. Whether it crosses itself is for the reader of a file to test
 * ({@link Overlay#flaw}).
 */
public final class Ring {
    private final long[] x;
    private final long[] y;
    private final Box box;

    private Ring(List<Point> points) {
        x = points.stream().mapToLong(Point::x).toArray();
        y = points.stream().mapToLong(Point::y).toArray();
        long minX = Long.MAX_VALUE, minY = Long.MAX_VALUE, maxX = Long.MIN_VALUE, maxY = Long.MIN_VALUE;
        for (int i = 0; i < x.length; i++) {
            minX = Math.min(minX, x[i]);
            maxX = Math.max(maxX, x[i]);
            minY = Math.min(minY, y[i]);
            maxY = Math.max(maxY, y[i]);
        }
        box = new Box(minX, minY, maxX, maxY);
    }

    /**
     * From points in either sense, first point repeated or not.
     *
     * @throws IllegalArgumentException when fewer than three points remain after tidying, or the ring encloses nothing
     */
    public static Ring of(List<Point> points) {
        List<Point> tidy = tidy(points);
        if (tidy.size() < 3) {
            throw new IllegalArgumentException("a ring needs three points that are not in one line");
        }
        Ring ring = new Ring(tidy);
        if (ring.area2() < 0) {
            List<Point> turned = new ArrayList<>(tidy);
            java.util.Collections.reverse(turned);
            ring = new Ring(turned);
        }
        return ring;
    }

    public static Ring of(Box b) {
        return new Ring(List.of(new Point(b.minX(), b.minY()), new Point(b.maxX(), b.minY()),
                new Point(b.maxX(), b.maxY()), new Point(b.minX(), b.maxY())));
    }

    private static List<Point> tidy(List<Point> points) {
        List<Point> out = new ArrayList<>(points);
        boolean changed = true;
        while (changed && out.size() >= 3) {
            changed = false;
            for (int i = 0; i < out.size() && out.size() >= 3; i++) {
                Point before = out.get((i + out.size() - 1) % out.size());
                Point after = out.get((i + 1) % out.size());
                if (out.get(i).side(before, after) == 0) {
                    out.remove(i--);
                    changed = true;
                }
            }
        }
        return out;
    }

    public int size() {
        return x.length;
    }

    public long x(int i) {
        return x[i];
    }

    public long y(int i) {
        return y[i];
    }

    public Point point(int i) {
        return new Point(x[i], y[i]);
    }

    public List<Point> points() {
        List<Point> out = new ArrayList<>(x.length);
        for (int i = 0; i < x.length; i++) {
            out.add(point(i));
        }
        return List.copyOf(out);
    }

    public Box box() {
        return box;
    }

    /** Whether the ring is its own box. */
    public boolean isBox() {
        if (x.length != 4) {
            return false;
        }
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            if (x[i] != x[j] && y[i] != y[j]) {
                return false;
            }
        }
        return true;
    }

    /** Whether it turns left at every point. */
    public boolean isConvex() {
        for (int i = 0; i < x.length; i++) {
            int j = (i + 1) % x.length, k = (i + 2) % x.length;
            if ((x[j] - x[i]) * (y[k] - y[j]) - (y[j] - y[i]) * (x[k] - x[j]) < 0) {
                return false;
            }
        }
        return true;
    }

    /** The least distance between two parallel lines that hold a convex ring between them, grid units. */
    public double leastWidth() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            int j = (i + 1) % x.length;
            double ux = x[j] - x[i], uy = y[j] - y[i], furthest = 0;
            for (int k = 0; k < x.length; k++) {
                furthest = Math.max(furthest, ux * (y[k] - y[i]) - uy * (x[k] - x[i]));
            }
            least = Math.min(least, furthest / Math.sqrt(ux * ux + uy * uy));
        }
        return least;
    }

    /** Twice the signed area in square grid units, as a double (exact sums would overflow on a 10 km ring). */
    public double area2() {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            int j = (i + 1) % x.length;
            sum += (double) (x[i] - x[0]) * (y[j] - y[0]) - (double) (x[j] - x[0]) * (y[i] - y[0]);
        }
        return sum;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Ring r && java.util.Arrays.equals(x, r.x) && java.util.Arrays.equals(y, r.y);
    }

    @Override
    public int hashCode() {
        return 31 * java.util.Arrays.hashCode(x) + java.util.Arrays.hashCode(y);
    }

    @Override
    public String toString() {
        return points().toString();
    }
}
