package rainlap.geom;

import java.util.AbstractList;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/** The two ends of a straight line as a list that never changes, in half the room that points of their own take. */
public final class Ends extends AbstractList<Point> implements RandomAccess {
    private final int ax;
    private final int ay;
    private final int bx;
    private final int by;

    private Ends(Point a, Point b) {
        this.ax = Math.toIntExact(a.x());
        this.ay = Math.toIntExact(a.y());
        this.bx = Math.toIntExact(b.x());
        this.by = Math.toIntExact(b.y());
    }

    public static List<Point> of(Point a, Point b) {
        return new Ends(a, b);
    }

    /** An unchanging copy of a line, however many points it has. */
    public static List<Point> copyOf(List<Point> line) {
        return line instanceof Ends ? line : line.size() == 2 ? new Ends(line.get(0), line.get(1)) : List.copyOf(line);
    }

    @Override
    public Point get(int i) {
        return Objects.checkIndex(i, 2) == 0 ? new Point(ax, ay) : new Point(bx, by);
    }

    @Override
    public int size() {
        return 2;
    }
}
