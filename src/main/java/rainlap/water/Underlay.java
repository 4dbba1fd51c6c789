package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rainlap.geom.Region;

/**
 * How far the lower sheet of a lap goes on under the upper one, straight on from where water comes in: upwards, or to one side. Of a cell the two layers next to its water are known,
 * but the lower sheet may lie further in, and end anywhere beneath them; so it is read off its outline. Works in (u, v): v straight on, u across.
 */
final class Underlay {
    private static final double SAME = 0.5, LEAST = 1e-6;

    private final Cell cell;
    private final List<double[]> edges = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    /** Where water comes in and where the cell ends, at either end of the stretch. */
    private final double from;
    private final double to;
    private final double[] entry;
    private final double[] far;

    /**
     * A part of the stretch along which water comes in.
     *
     * @param from between which x, or heights
     * @param isHeld whether the sheet is there at all
     * @param goesOn whether it goes on to the end of the cell
     * @param atFrom how high, or at which x, it ends
     * @param line along which it ends
     */
    record Part(double from, double to, boolean isHeld, boolean goesOn, double atFrom, double atTo, Line line) {}

    private Underlay(Cell cell, double from, double to, double[] entry, double[] far) {
        this.cell = cell;
        this.from = from;
        this.to = to;
        this.entry = entry;
        this.far = far;
    }

    /** Above the lower line of its cell. */
    static List<Part> above(Lifts.Overrun o) {
        Cell c = o.cell();
        Underlay u = new Underlay(c, o.from(), o.to(), new double[] {c.lower.at(o.from()), c.lower.at(o.to())}, new double[] {c.upper.at(o.from()), c.upper.at(o.to())});
        u.read(o.onto(), false, 1);
        return u.parts(false, 1);
    }

    /** To the side. */
    static List<Part> beside(Push p) {
        Cell c = p.cell();
        int sign = p.right() ? 1 : -1;
        double end = sign * (p.right() ? c.x1 : c.x0);
        Underlay u = new Underlay(c, p.low(), p.high(), new double[] {sign * p.lowAt(), sign * p.highAt()}, new double[] {end, end});
        u.read(p.onto(), true, sign);
        return u.parts(true, sign);
    }

    private void read(int sheet, boolean sideways, int sign) {
        for (Region r : cell.ground.regionsOf(sheet)) {
            for (int k = 0; k < r.edgeCount(); k++) {
                double[] e = sideways ? new double[] {r.ay(k), sign * r.ax(k), r.by(k), sign * r.bx(k)} : new double[] {r.ax(k), r.ay(k), r.bx(k), r.by(k)};
                if (Math.min(e[0], e[2]) < to && Math.max(e[0], e[2]) > from && e[0] != e[2]) {
                    edges.add(e);
                    boolean turned = r.ax(k) > r.bx(k);
                    lines.add(turned ? new Line(r.bx(k), r.by(k), r.ax(k), r.ay(k)) : new Line(r.ax(k), r.ay(k), r.bx(k), r.by(k)));
                }
            }
        }
    }

    private List<Part> parts(boolean sideways, int sign) {
        TreeSet<Double> ends = new TreeSet<>(List.of(from, to));
        for (double[] e : edges) {
            addWithin(ends, e[0]);
            addWithin(ends, e[2]);
            addWithin(ends, meets(e, entry));
            addWithin(ends, meets(e, far));
            if (sideways) {
                addWithin(ends, height(e, sign, cell.upper));
                addWithin(ends, height(e, sign, cell.lower));
            }
        }
        List<Part> out = new ArrayList<>(ends.size());
        double a = from;
        for (double b : ends.tailSet(from, false)) {
            if (b - a > LEAST) {
                out.add(part(a, b, sideways, sign));
            }
            a = b;
        }
        return out;
    }

    private void addWithin(TreeSet<Double> ends, double u) {
        if (u > from && u < to) {
            ends.add(u);
        }
    }

    /** Where an edge crosses a straight line over the stretch, on the grid. */
    private double meets(double[] e, double[] line) {
        double left = at(e, from) - line[0], right = at(e, to) - line[1];
        return left < 0 == right < 0 ? from : Math.rint(from + (to - from) * left / (left - right));
    }

    /** The height at which an edge that was read sideways crosses a sloped line of the cell; no height at all where they run alike. */
    private static double height(double[] e, int sign, Line line) {
        double a = e[0] - line.at(sign * e[1]), b = e[2] - line.at(sign * e[3]);
        return a == b ? Double.NaN : Math.rint(e[0] + (e[2] - e[0]) * a / (a - b));
    }

    /** Whether a place is none of a sloped line of the cell, or beyond. */
    private boolean isWithin(double x, double y) {
        return y < cell.upper.at(x) - near(cell.upper) && y > cell.lower.at(x) + near(cell.lower);
    }

    /** Lines are known to within a grid unit in x. */
    private static double near(Line line) {
        return SAME + Math.abs(line.slope());
    }

    private static double at(double[] e, double u) {
        return e[1] + (u - e[0]) * (e[3] - e[1]) / (e[2] - e[0]);
    }

    private double along(double[] line, double u) {
        return line[0] + (u - from) * (line[1] - line[0]) / (to - from);
    }

    /** Nothing of the outline begins, ends or crosses in between. */
    private Part part(double a, double b, boolean sideways, int sign) {
        double mid = (a + b) / 2, in = along(entry, mid);
        List<Integer> ahead = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            double[] e = edges.get(i);
            if (Math.min(e[0], e[2]) < mid && mid < Math.max(e[0], e[2]) && at(e, mid) > in + SAME) {
                ahead.add(i);
            }
        }
        if (ahead.size() % 2 == 0) {
            return new Part(a, b, false, false, 0, 0, null);
        }
        ahead.sort((i, k) -> Double.compare(at(edges.get(i), mid), at(edges.get(k), mid)));
        int end = 0;
        while (end + 1 < ahead.size() && at(edges.get(ahead.get(end + 1)), mid) - at(edges.get(ahead.get(end)), mid) < SAME) {
            end += 2;
        }
        double[] e = edges.get(ahead.get(end));
        boolean goesOn = at(e, mid) >= along(far, mid) - SAME || sideways && !isWithin(sign * at(e, mid), mid);
        Line line = lines.get(ahead.get(end));
        Line where = line.ax() == line.bx() ? new Line(line.ax(), Math.round(a), line.ax(), Math.round(b)) : line;
        return new Part(a, b, true, goesOn, sign * at(e, a), sign * at(e, b), where);
    }
}
