package rainlap.geom;

import java.util.Objects;

/** A straight piece of line from a to b. Places are within {@link Grid#LIMIT_MM}, so an int holds them: a wall has some three of these a piece, and points of their own would treble their room. */
public final class Segment {
    private final int ax;
    private final int ay;
    private final int bx;
    private final int by;

    public Segment(Point a, Point b) {
        this(Math.toIntExact(a.x()), Math.toIntExact(a.y()), Math.toIntExact(b.x()), Math.toIntExact(b.y()));
    }

    /** From place to place along a level line. */
    public static Segment level(long y, long from, long to) {
        int at = Math.toIntExact(y);
        return new Segment(Math.toIntExact(from), at, Math.toIntExact(to), at);
    }

    /** From place to place along a plumb line. */
    public static Segment plumb(long x, long from, long to) {
        int at = Math.toIntExact(x);
        return new Segment(at, Math.toIntExact(from), at, Math.toIntExact(to));
    }

    Segment(int ax, int ay, int bx, int by) {
        this.ax = ax;
        this.ay = ay;
        this.bx = bx;
        this.by = by;
    }

    public Point a() {
        return new Point(ax, ay);
    }

    public Point b() {
        return new Point(bx, by);
    }

    public int ax() {
        return ax;
    }

    public int ay() {
        return ay;
    }

    public int bx() {
        return bx;
    }

    public int by() {
        return by;
    }

    public double lengthMm() {
        long dx = (long) bx - ax, dy = (long) by - ay;
        return (dx == 0 || dy == 0 ? Math.abs(dx + dy) : Math.hypot(dx, dy)) / Grid.MM;
    }

    public boolean isLevel() {
        return ay == by;
    }

    public boolean isPlumb() {
        return ax == bx;
    }

    public Segment reversed() {
        return new Segment(bx, by, ax, ay);
    }

    public Box box() {
        return new Box(Math.min(ax, bx), Math.min(ay, by), Math.max(ax, bx), Math.max(ay, by));
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Segment s && ax == s.ax && ay == s.ay && bx == s.bx && by == s.by;
    }

    @Override
    public int hashCode() {
        return Objects.hash(ax, ay, bx, by);
    }

    @Override
    public String toString() {
        return a() + " to " + b();
    }
}
