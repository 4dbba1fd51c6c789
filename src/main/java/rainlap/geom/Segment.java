package rainlap.geom;

/** A straight piece of line from a to b. */
public record Segment(Point a, Point b) {
    public double lengthMm() {
        long dx = b.x() - a.x(), dy = b.y() - a.y();
        return (dx == 0 || dy == 0 ? Math.abs(dx + dy) : Math.hypot(dx, dy)) / Grid.MM;
    }

    public boolean isLevel() {
        return a.y() == b.y();
    }

    public boolean isPlumb() {
        return a.x() == b.x();
    }

    public Segment reversed() {
        return new Segment(b, a);
    }

    public Box box() {
        return new Box(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }
}
