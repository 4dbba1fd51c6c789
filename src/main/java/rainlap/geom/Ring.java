package rainlap.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A closed ring of at least three points, counter-clockwise, without repeated points and without points that lie straight
 * between or spike back over their neighbours. Whether it crosses itself is for the reader of a file to test
 * ({@link Overlay#flaw}).
 */
public final class Ring {
    /** x and y of each point by turns, which are within {@link Grid#LIMIT_MM}, so that an int holds them; the first point stands once more at the end, so that edge i ends at point i + 1. */
    private final int[] xy;
    private final Box box;

    private Ring(int[] xy) {
        this.xy = xy;
        long minX = Long.MAX_VALUE, minY = Long.MAX_VALUE, maxX = Long.MIN_VALUE, maxY = Long.MIN_VALUE;
        for (int i = 0; i < xy.length; i += 2) {
            minX = Math.min(minX, xy[i]);
            maxX = Math.max(maxX, xy[i]);
            minY = Math.min(minY, xy[i + 1]);
            maxY = Math.max(maxY, xy[i + 1]);
        }
        box = new Box(minX, minY, maxX, maxY);
    }

    private Ring(Box b) {
        int minX = Math.toIntExact(b.minX()), minY = Math.toIntExact(b.minY()), maxX = Math.toIntExact(b.maxX()), maxY = Math.toIntExact(b.maxY());
        xy = new int[] {minX, minY, maxX, minY, maxX, maxY, minX, maxY, minX, minY};
        box = b;
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
        Ring ring = new Ring(closed(tidy));
        if (ring.area2() < 0) {
            Collections.reverse(tidy);
            ring = new Ring(closed(tidy));
        }
        return ring;
    }

    public static Ring of(Box b) {
        return new Ring(b);
    }

    private static int[] closed(List<Point> points) {
        int n = points.size();
        int[] xy = new int[2 * n + 2];
        for (int i = 0; i <= n; i++) {
            xy[2 * i] = Math.toIntExact(points.get(i % n).x());
            xy[2 * i + 1] = Math.toIntExact(points.get(i % n).y());
        }
        return xy;
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
        return xy.length / 2 - 1;
    }

    /** Of point i; point {@link #size()} is the first again. */
    public long x(int i) {
        return xy[2 * i];
    }

    public long y(int i) {
        return xy[2 * i + 1];
    }

    public Point point(int i) {
        return new Point(x(i), y(i));
    }

    public List<Point> points() {
        List<Point> out = new ArrayList<>(size());
        for (int i = 0; i < size(); i++) {
            out.add(point(i));
        }
        return List.copyOf(out);
    }

    /** Itself with each point moved, by a move that keeps it a ring; see {@link #of(List)}. */
    Ring mapped(UnaryOperator<Point> to) {
        List<Point> out = new ArrayList<>(size());
        for (int i = 0; i < size(); i++) {
            out.add(to.apply(point(i)));
        }
        return of(out);
    }

    public Box box() {
        return box;
    }

    /** Whether the ring is its own box. */
    public boolean isBox() {
        return size() == 4 && isUpright();
    }

    /** Whether every edge is level or plumb. */
    boolean isUpright() {
        for (int i = 0; i < size(); i++) {
            if (x(i) != x(i + 1) && y(i) != y(i + 1)) {
                return false;
            }
        }
        return true;
    }

    /** Whether it turns left at every point. */
    public boolean isConvex() {
        for (int i = 0, n = size(); i < n; i++) {
            int j = i + 1, k = i + 2 > n ? 1 : i + 2;
            if ((x(j) - x(i)) * (y(k) - y(j)) - (y(j) - y(i)) * (x(k) - x(j)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** The least distance between two parallel lines that hold a convex ring between them, grid units. */
    public double leastWidth() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < size(); i++) {
            double ux = x(i + 1) - x(i), uy = y(i + 1) - y(i), furthest = 0;
            for (int k = 0; k < size(); k++) {
                furthest = Math.max(furthest, ux * (y(k) - y(i)) - uy * (x(k) - x(i)));
            }
            least = Math.min(least, furthest / Math.sqrt(ux * ux + uy * uy));
        }
        return least;
    }

    /** Twice the signed area in square grid units, as a double (exact sums would overflow on a 10 km ring). */
    public double area2() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            sum += (double) (x(i) - x(0)) * (y(i + 1) - y(0)) - (double) (x(i + 1) - x(0)) * (y(i) - y(0));
        }
        return sum;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Ring r && Arrays.equals(xy, r.xy);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(xy);
    }

    @Override
    public String toString() {
        return points().toString();
    }
}
