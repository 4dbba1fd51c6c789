package rainlap.geom;

/** A straight piece of line from a to b. */
public record Segment(Point a, Point b) {
    public double lengthMm() {
        return Math.hypot(b.x() - a.x(), b.y() - a.y()) / Grid.MM;
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
