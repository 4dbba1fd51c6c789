package rainlap.geom;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/** Segments kept as bare numbers and made as they are asked for: a wall holds many. */
public final class Edges extends AbstractList<Segment> implements RandomAccess {
    private final int[] ends;

    private Edges(int[] ends) {
        this.ends = ends;
    }

    public static Edges copyOf(List<Segment> segments) {
        int[] ends = new int[4 * segments.size()];
        int n = 0;
        for (Segment s : segments) {
            ends[n++] = s.ax();
            ends[n++] = s.ay();
            ends[n++] = s.bx();
            ends[n++] = s.by();
        }
        return new Edges(ends);
    }

    /** One of the four numbers of a segment: x and y of its first end, then of its second. */
    int at(int i, int which) {
        return ends[4 * i + which];
    }

    @Override
    public Segment get(int i) {
        return new Segment(at(i, 0), at(i, 1), at(i, 2), at(i, 3));
    }

    @Override
    public int size() {
        return ends.length / 4;
    }
}
