package rainlap.geom;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.UnaryOperator;

/**
 * A shell with holes. Edges are numbered through shell and holes and keep the interior on their left: the shell
 * counter-clockwise, holes clockwise.
 */
public final class Region {
    private static final long[] NONE = {};

    private final Ring shell;
    private final List<Ring> holes;
    /** The edges of the holes, four numbers each; those of the shell are read off its ring. */
    private final long[] holeEdges;
    private final boolean box;

    public Region(Ring shell, List<Ring> holes) {
        this.shell = shell;
        this.holes = List.copyOf(holes);
        this.box = holes.isEmpty() && shell.isBox();
        this.holeEdges = holes.isEmpty() ? NONE : clockwise(holes);
    }

    public static Region of(Box b) {
        return new Region(Ring.of(b), List.of());
    }

    public static Region of(List<Point> ring) {
        return new Region(Ring.of(ring), List.of());
    }

    private static long[] clockwise(List<Ring> holes) {
        long[] out = new long[4 * holes.stream().mapToInt(Ring::size).sum()];
        int at = 0;
        for (Ring r : holes) {
            for (int i = r.size(); i > 0; i--) {
                out[at++] = r.x(i - 1);
                out[at++] = r.y(i - 1);
                out[at++] = r.x(i == 1 ? r.size() - 1 : i - 2);
                out[at++] = r.y(i == 1 ? r.size() - 1 : i - 2);
            }
        }
        return out;
    }

    /** The region with each of its points moved, laid flat or turned over: by a move after which it is still one. */
    public Region mapped(UnaryOperator<Point> to) {
        return new Region(shell.mapped(to), holes.stream().map(h -> h.mapped(to)).toList());
    }

    public Ring shell() {
        return shell;
    }

    public List<Ring> holes() {
        return holes;
    }

    public Box box() {
        return shell.box();
    }

    /** Whether the region is a plain upright rectangle. */
    public boolean isBox() {
        return box;
    }

    /** Whether it has no holes and turns left at every point. */
    public boolean isConvex() {
        return holes.isEmpty() && shell.isConvex();
    }

    /** Whether every edge is level or plumb. */
    public boolean isUpright() {
        return shell.isUpright() && holes.stream().allMatch(Ring::isUpright);
    }

    /** Whether two regions share an area, whatever its size. */
    public boolean overlaps(Region o) {
        if (!box().overlaps(o.box())) {
            return false;
        }
        if (isUpright() && o.isUpright()) {
            List<Box> theirs = o.boxes();
            return boxes().stream().anyMatch(b -> theirs.stream().anyMatch(b::overlaps));
        }
        return !Overlay.intersection(List.of(this), List.of(o)).isEmpty();
    }

    /** An upright region as boxes side by side. */
    private List<Box> boxes() {
        if (box) {
            return List.of(box());
        }
        long[] x = java.util.stream.IntStream.range(0, edgeCount()).mapToLong(this::ax).sorted().distinct().toArray();
        List<Box> out = new ArrayList<>();
        for (int i = 0; i + 1 < x.length; i++) {
            long mid2 = x[i] + x[i + 1];
            long[] y = java.util.stream.IntStream.range(0, edgeCount())
                    .filter(k -> Math.min(ax(k), bx(k)) * 2 < mid2 && Math.max(ax(k), bx(k)) * 2 > mid2)
                    .mapToLong(this::ay).sorted().toArray();
            for (int k = 0; k + 1 < y.length; k += 2) {
                out.add(new Box(x[i], y[k], x[i + 1], y[k + 1]));
            }
        }
        return out;
    }

    public int edgeCount() {
        return shell.size() + holeEdges.length / 4;
    }

    /** Edge i from its first to its second end, interior on the left. */
    public Segment edge(int i) {
        return new Segment(new Point(ax(i), ay(i)), new Point(bx(i), by(i)));
    }

    public long ax(int i) {
        return i < shell.size() ? shell.x(i) : ofHole(i, 0);
    }

    public long ay(int i) {
        return i < shell.size() ? shell.y(i) : ofHole(i, 1);
    }

    public long bx(int i) {
        return i < shell.size() ? shell.x(i + 1) : ofHole(i, 2);
    }

    public long by(int i) {
        return i < shell.size() ? shell.y(i + 1) : ofHole(i, 3);
    }

    private long ofHole(int i, int which) {
        return holeEdges[4 * (i - shell.size()) + which];
    }

    /** All edges, made as they are asked for. */
    public List<Segment> edges() {
        return new Edges();
    }

    private final class Edges extends AbstractList<Segment> implements RandomAccess {
        @Override
        public Segment get(int i) {
            return edge(i);
        }

        @Override
        public int size() {
            return edgeCount();
        }
    }

    /** Whether a place given in grid units (not necessarily on the grid) lies inside; places on an edge may go either way. */
    public boolean covers(double px, double py) {
        Box b = box();
        if (px < b.minX() || px > b.maxX() || py < b.minY() || py > b.maxY()) {
            return false;
        }
        if (box) {
            return true;
        }
        boolean in = false;
        for (int i = 0; i < edgeCount(); i++) {
            double y0 = ay(i), y1 = by(i);
            if ((y0 > py) != (y1 > py) && px < ax(i) + (py - y0) * (bx(i) - ax(i)) / (y1 - y0)) {
                in = !in;
            }
        }
        return in;
    }

    /** Area in square millimetres. */
    public double areaMm2() {
        double a = shell.area2() - holes.stream().mapToDouble(Ring::area2).sum();
        return a / 2 / (Grid.MM * Grid.MM);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Region r && shell.equals(r.shell) && holes.equals(r.holes);
    }

    @Override
    public int hashCode() {
        return 31 * shell.hashCode() + holes.hashCode();
    }

    @Override
    public String toString() {
        return Wkt.of(this);
    }
}
