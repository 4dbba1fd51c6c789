package rainlap.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * A shell with holes. Edges are numbered through shell and holes and keep the interior on their left: the shell
 * counter-clockwise, holes clockwise.
 */
public final class Region {
    private final Ring shell;
    private final List<Ring> holes;
    private final long[] edges;
    private final boolean box;

    public Region(Ring shell, List<Ring> holes) {
        this.shell = shell;
        this.holes = List.copyOf(holes);
        this.box = holes.isEmpty() && shell.isBox();
        int count = shell.size() + holes.stream().mapToInt(Ring::size).sum();
        edges = new long[4 * count];
        int at = put(shell, false, 0);
        for (Ring h : holes) {
            at = put(h, true, at);
        }
    }

    public static Region of(Box b) {
        return new Region(Ring.of(b), List.of());
    }

    public static Region of(List<Point> ring) {
        return new Region(Ring.of(ring), List.of());
    }

    private int put(Ring r, boolean reversed, int at) {
        int n = r.size();
        for (int k = 0; k < n; k++) {
            int i = reversed ? n - 1 - k : k;
            int j = reversed ? (i + n - 1) % n : (i + 1) % n;
            edges[at++] = r.x(i);
            edges[at++] = r.y(i);
            edges[at++] = r.x(j);
            edges[at++] = r.y(j);
        }
        return at;
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
        for (int k = 0; k < edges.length; k += 4) {
            if (edges[k] != edges[k + 2] && edges[k + 1] != edges[k + 3]) {
                return false;
            }
        }
        return true;
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
        return edges.length / 4;
    }

    /** Edge i from its first to its second end, interior on the left. */
    public Segment edge(int i) {
        return new Segment(new Point(edges[4 * i], edges[4 * i + 1]), new Point(edges[4 * i + 2], edges[4 * i + 3]));
    }

    public long ax(int i) {
        return edges[4 * i];
    }

    public long ay(int i) {
        return edges[4 * i + 1];
    }

    public long bx(int i) {
        return edges[4 * i + 2];
    }

    public long by(int i) {
        return edges[4 * i + 3];
    }

    public List<Segment> edges() {
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i < edgeCount(); i++) {
            out.add(edge(i));
        }
        return out;
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
        for (int k = 0; k < edges.length; k += 4) {
            double y0 = edges[k + 1], y1 = edges[k + 3];
            if ((y0 > py) != (y1 > py) && px < edges[k] + (py - y0) * (edges[k + 2] - edges[k]) / (y1 - y0)) {
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
