package rainlap.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A box cut into upright slabs in which no edge of a few regions ends or crosses another; each slab is a pile of covered and uncovered
 * trapezoids. For the few pieces on a small surface; quadratic in their edges. Of many, unite them first ({@link Overlay#union}).
 */
public final class Slabs {
    private static final double HAIR = 1e-6;
    private final Box box;
    private final List<double[]> edges = new ArrayList<>();
    private final double[] cuts;

    /** Edges are kept as {x0, y0, x1, y1, sense}: left to right, sense +1 where the region lies above the edge. */
    public Slabs(Box box, List<Region> regions) {
        this.box = box;
        for (Region r : regions) {
            for (int i = 0; i < r.edgeCount(); i++) {
                keep(r.ax(i), r.ay(i), r.bx(i), r.by(i));
            }
        }
        this.cuts = cuts();
    }

    private void keep(double ax, double ay, double bx, double by) {
        if (ax != bx && Math.max(ax, bx) > box.minX() && Math.min(ax, bx) < box.maxX()) {
            edges.add(ax < bx ? new double[] {ax, ay, bx, by, 1} : new double[] {bx, by, ax, ay, -1});
        }
    }

    private double[] cuts() {
        Cuts at = new Cuts();
        at.add(box.minX());
        at.add(box.maxX());
        for (int i = 0; i < edges.size(); i++) {
            double[] e = edges.get(i);
            add(at, e[0]);
            add(at, e[2]);
            add(at, crossing(e, box.minY()));
            add(at, crossing(e, box.maxY()));
            for (int j = 0; j < i; j++) {
                add(at, crossing(e, edges.get(j)));
            }
        }
        return at.sorted();
    }

    private void add(Cuts at, double x) {
        if (x > box.minX() && x < box.maxX()) {
            at.add(x);
        }
    }

    private static double crossing(double[] e, double[] f) {
        double a = Math.max(e[0], f[0]), b = Math.min(e[2], f[2]);
        double da = y(e, a) - y(f, a), db = y(e, b) - y(f, b);
        return a >= b || da * db >= 0 ? Double.NEGATIVE_INFINITY : a + da / (da - db) * (b - a);
    }

    /** Where an edge crosses a level line. */
    private static double crossing(double[] e, double level) {
        double da = e[1] - level, db = e[3] - level;
        return da * db >= 0 ? Double.NEGATIVE_INFINITY : e[0] + da / (da - db) * (e[2] - e[0]);
    }

    private static double y(double[] e, double x) {
        return e[1] == e[3] ? e[1] : e[1] + (x - e[0]) / (e[2] - e[0]) * (e[3] - e[1]);
    }

    /** A trapezoid: from x0 to x1, between its lower and upper line. */
    private record Band(double x0, double x1, double low0, double low1, double high0, double high1) {
        boolean isEmpty() {
            return high0 - low0 < 0.5 && high1 - low1 < 0.5;
        }

        private static Point point(double x, double y) {
            return new Point(Math.round(x), Math.round(y));
        }
    }

    /** What of the box no region covers: its trapezoids, those that meet along a whole side joined. */
    public List<Region> uncovered() {
        List<Patch> patches = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.length; i++) {
            if (cuts[i + 1] - cuts[i] > HAIR) {
                for (Band b : gaps(cuts[i], cuts[i + 1])) {
                    Patch before = patches.stream().filter(p -> p.goesOnAs(b)).findFirst().orElse(null);
                    if (before != null) {
                        before.bands.add(b);
                    } else {
                        patches.add(new Patch(b));
                    }
                }
            }
        }
        return patches.stream().flatMap(p -> p.region().stream()).toList();
    }

    /** Trapezoids side by side. */
    private static final class Patch {
        private final List<Band> bands = new ArrayList<>();

        Patch(Band first) {
            bands.add(first);
        }

        boolean goesOnAs(Band b) {
            Band last = bands.get(bands.size() - 1);
            return last.x1 == b.x0 && Math.abs(last.low1 - b.low0) < HAIR && Math.abs(last.high1 - b.high0) < HAIR
                    && b.high0 - b.low0 > 0.5;
        }

        Optional<Region> region() {
            List<Point> out = new ArrayList<>();
            for (Band b : bands) {
                out.add(Band.point(b.x0, b.low0));
                out.add(Band.point(b.x1, b.low1));
            }
            for (int i = bands.size() - 1; i >= 0; i--) {
                out.add(Band.point(bands.get(i).x1, bands.get(i).high1));
                out.add(Band.point(bands.get(i).x0, bands.get(i).high0));
            }
            try {
                return Optional.of(Region.of(out));
            } catch (IllegalArgumentException hair) {
                return Optional.empty(); // thinner than the grid
            }
        }
    }

    /** How far up from the bottom of the box it is covered without a break, at each place along it (from the box's left end). */
    public Profile coveredFromBelow() {
        Profile.Builder out = new Profile.Builder();
        for (int i = 0; i + 1 < cuts.length; i++) {
            double a = cuts[i], b = cuts[i + 1];
            if (b - a > HAIR) {
                List<Band> gaps = gaps(a, b);
                double full = box.height();
                double v0 = gaps.isEmpty() ? full : gaps.get(0).low0 - box.minY(), v1 = gaps.isEmpty() ? full : gaps.get(0).low1 - box.minY();
                out.add(a - box.minX(), b - box.minX(), v0, v1);
            }
        }
        return out.build();
    }

    /** The uncovered trapezoids of one slab, lowest first. */
    private List<Band> gaps(double a, double b) {
        double mid = (a + b) / 2;
        List<double[]> over = new ArrayList<>(edges.size());
        for (double[] e : edges) {
            if (e[0] < mid && e[2] > mid) {
                over.add(e);
            }
        }
        over.sort((e, f) -> {
            int c = Double.compare(y(e, mid), y(f, mid));
            return c != 0 ? c : Double.compare(f[4], e[4]); // where one ends and one begins, they touch: no gap
        });
        List<Band> out = new ArrayList<>();
        double low0 = box.minY(), low1 = box.minY();
        int depth = 0;
        for (double[] e : over) {
            double y0 = y(e, a), y1 = y(e, b);
            if (depth == 0) {
                addGap(out, new Band(a, b, low0, low1, clamp(y0), clamp(y1)));
            }
            depth += (int) e[4];
            if (depth == 0) {
                low0 = clamp(y0);
                low1 = clamp(y1);
            }
        }
        if (depth == 0) {
            addGap(out, new Band(a, b, low0, low1, box.maxY(), box.maxY()));
        }
        return out;
    }

    private double clamp(double y) {
        return Math.max(box.minY(), Math.min(box.maxY(), y));
    }

    private static void addGap(List<Band> out, Band b) {
        if (!b.isEmpty()) {
            out.add(b);
        }
    }
}
