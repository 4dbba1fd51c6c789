package rainlap.geom;

import java.util.Arrays;
import java.util.List;

/** Collects the edges that may end something beside an edge, in that edge's frame. */
public final class Hits {
    private static final double NOTHING = Profile.NOTHING;
    private static final double[] NONE = {};

    private final EdgeFrame frame;
    private final double from;
    private final double to;
    private final double beyond;
    /** Of those that do not run level across the whole stretch. Four numbers a line, left to right along the edge: s0, t0, s1, t1. */
    private double[] lines = NONE;
    private int end;
    /** The nearest that does, the common case: no other such line is ever seen. */
    private double nearestLevel = Double.POSITIVE_INFINITY;

    /** Looks from the stretch from..to of a frame's edge to its left, at what lies further than {@code beyond} away. */
    public Hits(EdgeFrame frame, double from, double to, double beyond) {
        this.frame = frame;
        this.from = from;
        this.to = to;
        this.beyond = beyond;
    }

    public void add(Segment e) {
        add(e.ax(), e.ay(), e.bx(), e.by());
    }

    private void add(double ax, double ay, double bx, double by) {
        double s0 = frame.s(ax, ay), s1 = frame.s(bx, by);
        if (Math.max(s0, s1) <= from || Math.min(s0, s1) >= to || Math.abs(s1 - s0) < NOTHING) {
            return;
        }
        double t0 = frame.t(ax, ay), t1 = frame.t(bx, by);
        if (Math.max(t0, t1) > beyond) {
            if (s0 < s1) {
                keep(s0, t0, s1, t1);
            } else {
                keep(s1, t1, s0, t0);
            }
        }
    }

    private void keep(double s0, double t0, double s1, double t1) {
        if (s0 <= from && s1 >= to && t0 == t1) {
            nearestLevel = Math.min(nearestLevel, t0);
        } else {
            append(s0, t0, s1, t1);
        }
    }

    private void append(double s0, double t0, double s1, double t1) {
        if (end == lines.length) {
            lines = Arrays.copyOf(lines, Math.max(16, 2 * end));
        }
        lines[end++] = s0;
        lines[end++] = t0;
        lines[end++] = s1;
        lines[end++] = t1;
    }

    /** Whether anything of a box may lie before us. */
    public boolean mayMeet(Box b) {
        double s0 = frame.s(b.minX(), b.minY()), s1 = frame.s(b.maxX(), b.minY()), s2 = frame.s(b.maxX(), b.maxY()), s3 = frame.s(b.minX(), b.maxY());
        double t0 = frame.t(b.minX(), b.minY()), t1 = frame.t(b.maxX(), b.minY()), t2 = frame.t(b.maxX(), b.maxY()), t3 = frame.t(b.minX(), b.maxY());
        return Math.max(Math.max(s0, s1), Math.max(s2, s3)) > from && Math.min(Math.min(s0, s1), Math.min(s2, s3)) < to
                && Math.max(Math.max(t0, t1), Math.max(t2, t3)) > beyond;
    }

    /** Adds those of a region's edges that end it in our direction. */
    public void addEnds(Region r) {
        for (int i = 0; i < r.edgeCount(); i++) {
            addEnd(r.ax(i), r.ay(i), r.bx(i), r.by(i));
        }
    }

    public void addEnds(Edges edges) {
        for (int i = 0; i < edges.size(); i++) {
            addEnd(edges.at(i, 0), edges.at(i, 1), edges.at(i, 2), edges.at(i, 3));
        }
    }

    /** Adds those of another surface's edges that do so once they are laid flat. */
    public void addEnds(Edges edges, Isometry flat) {
        for (int i = 0; i < edges.size(); i++) {
            int ax = edges.at(i, 0), ay = edges.at(i, 1), bx = edges.at(i, 2), by = edges.at(i, 3);
            if (flat.isMirrored()) {
                addEnd(flat.x(bx, by), flat.y(bx, by), flat.x(ax, ay), flat.y(ax, ay));
            } else {
                addEnd(flat.x(ax, ay), flat.y(ax, ay), flat.x(bx, by), flat.y(bx, by));
            }
        }
    }

    /**
     * Adds an edge of a region (interior on its left) if it ends the region in our direction: if it stands square to it within 60
     * degrees. An edge that we merely slip past sideways ends nothing.
     */
    private void addEnd(double ax, double ay, double bx, double by) {
        double dx = bx - ax, dy = by - ay, along = dx * frame.ux() + dy * frame.uy();
        if (along < 0 && 4 * along * along >= dx * dx + dy * dy) {
            add(ax, ay, bx, by);
        }
    }

    /** How far one sees at each place before the nearest of the lines. */
    public Profile nearest() {
        if (end == 0) {
            return Profile.constant(from, to, nearestLevel);
        }
        if (nearestLevel < Double.POSITIVE_INFINITY) {
            append(from, nearestLevel, to, nearestLevel);
            nearestLevel = Double.POSITIVE_INFINITY;
        }
        double[] cuts = cuts();
        Profile.Builder out = new Profile.Builder();
        for (int i = 0; i + 1 < cuts.length; i++) {
            if (cuts[i + 1] - cuts[i] > NOTHING) {
                between(cuts[i], cuts[i + 1], out, 0);
            }
        }
        return out.build();
    }

    private double[] cuts() {
        Cuts cuts = new Cuts();
        cuts.add(from);
        cuts.add(to);
        for (int l = 0; l < end; l += 4) {
            addWithin(cuts, lines[l]);
            addWithin(cuts, lines[l + 2]);
            if ((lines[l + 1] > beyond) != (lines[l + 3] > beyond)) {
                addWithin(cuts, lines[l] + (beyond - lines[l + 1]) / (lines[l + 3] - lines[l + 1]) * (lines[l + 2] - lines[l]));
            }
        }
        return cuts.sorted();
    }

    private void addWithin(Cuts cuts, double s) {
        if (s > from && s < to) {
            cuts.add(s);
        }
    }

    private void between(double a, double b, Profile.Builder out, int depth) {
        int low0 = lowest(a, b, a), low1 = lowest(a, b, b);
        if (low0 < 0 || low1 < 0) {
            out.add(a, b, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
            return;
        }
        double cross = low0 == low1 || depth > 40 ? a : crossing(low0, low1, a, b);
        if (cross - a <= NOTHING || b - cross <= NOTHING) {
            int low = lowest(a, b, (a + b) / 2);
            out.add(a, b, value(low, a), value(low, b));
            return;
        }
        between(a, cross, out, depth + 1);
        between(cross, b, out, depth + 1);
    }

    /** The nearest line at s among those that span a..b and lie beyond the threshold there; -1 when none does. */
    private int lowest(double a, double b, double s) {
        int best = -1;
        double mid = (a + b) / 2;
        for (int l = 0; l < end; l += 4) {
            if (lines[l] <= mid && lines[l + 2] >= mid && value(l, mid) > beyond && (best < 0 || closer(l, best, s, mid))) {
                best = l;
            }
        }
        return best;
    }

    private boolean closer(int l, int best, double s, double mid) {
        double d = value(l, s) - value(best, s);
        return Math.abs(d) > NOTHING ? d < 0 : value(l, mid) < value(best, mid);
    }

    private double value(int l, double s) {
        return lines[l + 1] == lines[l + 3] ? lines[l + 1]
                : lines[l + 1] + (s - lines[l]) / (lines[l + 2] - lines[l]) * (lines[l + 3] - lines[l + 1]);
    }

    private double crossing(int p, int q, double a, double b) {
        double da = value(p, a) - value(q, a), db = value(p, b) - value(q, b);
        return da == db ? a : a + da / (da - db) * (b - a);
    }
}
