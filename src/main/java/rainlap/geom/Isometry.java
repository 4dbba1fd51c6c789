package rainlap.geom;

import java.util.function.UnaryOperator;

/**
 * A move of the grid onto itself that keeps lengths: shifted, turned by quarters, and perhaps turned over.
 *
 * @param x0 where the grid's origin comes to lie, x; {@code y0}: y
 * @param xx how far the new x runs with the old one, -1, 0 or 1; {@code xy}: with the old y
 * @param yx how far the new y runs with the old x, -1, 0 or 1; {@code yy}: with the old y
 */
public record Isometry(int x0, int y0, byte xx, byte xy, byte yx, byte yy) {
    /** The one that moves places as a function does, which has to be one. */
    public static Isometry of(UnaryOperator<Point> move) {
        Point o = move.apply(new Point(0, 0)), x = move.apply(new Point(1, 0)), y = move.apply(new Point(0, 1));
        return new Isometry(Math.toIntExact(o.x()), Math.toIntExact(o.y()), (byte) (x.x() - o.x()), (byte) (y.x() - o.x()), (byte) (x.y() - o.y()), (byte) (y.y() - o.y()));
    }

    /** Whether it turns the grid over, so that what lay to the left of a line lies to its right. */
    public boolean isMirrored() {
        return xx * yy - xy * yx < 0;
    }

    public long x(long x, long y) {
        return x0 + xx * x + xy * y;
    }

    public long y(long x, long y) {
        return y0 + yx * x + yy * y;
    }

    private Point of(Point p) {
        return new Point(x(p.x(), p.y()), y(p.x(), p.y()));
    }

    /** An edge of a region, interior still on the same side. */
    public Segment of(Segment e) {
        return isMirrored() ? new Segment(of(e.b()), of(e.a())) : new Segment(of(e.a()), of(e.b()));
    }

    public Box of(Box b) {
        return new Segment(of(new Point(b.minX(), b.minY())), of(new Point(b.maxX(), b.maxY()))).box();
    }
}
