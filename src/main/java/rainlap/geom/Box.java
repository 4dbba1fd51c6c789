package rainlap.geom;

import java.util.List;
import java.util.Objects;

/**
 * An upright box on the grid; a box may be flat. Places are within {@link Grid#LIMIT_MM}, so an int holds them: a wall has several of these a piece. A box that is
 * grown further than an int holds ends there, for nothing lies beyond.
 */
public final class Box {
    private final int minX;
    private final int minY;
    private final int maxX;
    private final int maxY;

    public Box(long minX, long minY, long maxX, long maxY) {
        if (minX > maxX || minY > maxY) {
            throw new IllegalArgumentException("box turned inside out: " + minX + " " + minY + " " + maxX + " " + maxY);
        }
        this.minX = held(minX);
        this.minY = held(minY);
        this.maxX = held(maxX);
        this.maxY = held(maxY);
    }

    private static int held(long place) {
        return (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, place));
    }

    public long minX() {
        return minX;
    }

    public long minY() {
        return minY;
    }

    public long maxX() {
        return maxX;
    }

    public long maxY() {
        return maxY;
    }

    /** Lower left corner, width and height in millimetres, as files give a {@code rect}. */
    public static Box ofMm(double x, double y, double width, double height) {
        return new Box(Grid.of(x), Grid.of(y), Grid.of(x + width), Grid.of(y + height));
    }

    /**
     * The least box that holds some points.
     *
     * @throws IllegalArgumentException when there are none
     */
    public static Box of(List<Point> points) {
        long minX = Long.MAX_VALUE, minY = Long.MAX_VALUE, maxX = Long.MIN_VALUE, maxY = Long.MIN_VALUE;
        for (Point p : points) {
            minX = Math.min(minX, p.x());
            minY = Math.min(minY, p.y());
            maxX = Math.max(maxX, p.x());
            maxY = Math.max(maxY, p.y());
        }
        return new Box(minX, minY, maxX, maxY);
    }

    public long width() {
        return (long) maxX - minX;
    }

    public long height() {
        return (long) maxY - minY;
    }

    /** Whether the two share at least a point. */
    public boolean meets(Box o) {
        return minX <= o.maxX && o.minX <= maxX && minY <= o.maxY && o.minY <= maxY;
    }

    /** Whether the two share an area. */
    public boolean overlaps(Box o) {
        return minX < o.maxX && o.minX < maxX && minY < o.maxY && o.minY < maxY;
    }

    public boolean contains(Point p) {
        return minX <= p.x() && p.x() <= maxX && minY <= p.y() && p.y() <= maxY;
    }

    public boolean contains(Box o) {
        return minX <= o.minX && o.maxX <= maxX && minY <= o.minY && o.maxY <= maxY;
    }

    public Box grow(long by) {
        return new Box(minX - by, minY - by, maxX + by, maxY + by);
    }

    public Box join(Box o) {
        return new Box(Math.min(minX, o.minX), Math.min(minY, o.minY), Math.max(maxX, o.maxX), Math.max(maxY, o.maxY));
    }

    /** How far we reach beyond another box at most, level or plumb; 0 where we lie within it. */
    public long beyond(Box o) {
        return Math.max(0, Math.max(Math.max((long) o.minX - minX, (long) maxX - o.maxX), Math.max((long) o.minY - minY, (long) maxY - o.maxY)));
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Box b && minX == b.minX && minY == b.minY && maxX == b.maxX && maxY == b.maxY;
    }

    @Override
    public int hashCode() {
        return Objects.hash(minX, minY, maxX, maxY);
    }

    @Override
    public String toString() {
        return "Box[minX=" + minX + ", minY=" + minY + ", maxX=" + maxX + ", maxY=" + maxY + "]";
    }
}
