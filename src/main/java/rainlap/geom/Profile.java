package rainlap.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * A length that varies along an edge: straight from one end of each stretch to the other, in grid units. A length that nothing bounds is
 * {@link Double#POSITIVE_INFINITY} at both ends of its stretch. Stretches ascend and do not overlap; there may be breaks between them.
 */
public final class Profile {
    /** Shorter than this in grid units is no length at all. */
    private static final double NOTHING = 1e-6;
    private final List<Stretch> stretches;

    /** One stretch: from place {@code s0} to {@code s1} the length goes from {@code v0} to {@code v1}. */
    public record Stretch(double s0, double s1, double v0, double v1) {
        double at(double s) {
            return v0 == v1 ? v0 : v0 + (s - s0) / (s1 - s0) * (v1 - v0);
        }

        public double least() {
            return Math.min(v0, v1);
        }
    }

    private Profile(List<Stretch> stretches) {
        this.stretches = List.copyOf(stretches);
    }

    public static Profile of(List<Stretch> stretches) {
        List<Stretch> out = new ArrayList<>();
        for (Stretch s : stretches) {
            Stretch last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && last.s1 == s.s0 && last.v0 == last.v1 && s.v0 == s.v1 && last.v0 == s.v0) {
                out.set(out.size() - 1, new Stretch(last.s0, s.s1, s.v0, s.v1));
            } else {
                out.add(s);
            }
        }
        return new Profile(out);
    }

    public static Profile constant(double s0, double s1, double v) {
        return new Profile(List.of(new Stretch(s0, s1, v, v)));
    }

    public List<Stretch> stretches() {
        return stretches;
    }

    /** The least length, infinite when there is no stretch. */
    public double least() {
        return stretches.stream().mapToDouble(Stretch::least).min().orElse(Double.POSITIVE_INFINITY);
    }

    public double greatest() {
        return stretches.stream().mapToDouble(s -> Math.max(s.v0, s.v1)).max().orElse(0);
    }

    /** The least length within a part of the line. A stretch that only touches the part's end is not within it; a single place may be. */
    public double leastWithin(double from, double to) {
        double least = Double.POSITIVE_INFINITY;
        for (Stretch s : stretches) {
            double a = Math.max(from, s.s0), b = Math.min(to, s.s1);
            if (b - a > NOTHING || from == to && a == b) {
                least = Math.min(least, Math.min(s.at(a), s.at(b)));
            }
        }
        return least;
    }

    /** Where the length is below a limit; compared to within a hundredth of a grid unit, so that "exactly on" is enough. */
    public Intervals below(double limit) {
        double bar = limit - 0.01;
        Intervals out = Intervals.NONE;
        for (Stretch s : stretches) {
            if (s.v0 < bar && s.v1 < bar) {
                out = out.union(Intervals.of(s.s0, s.s1));
            } else if (s.v0 < bar || s.v1 < bar) {
                double cross = s.s0 + (bar - s.v0) / (s.v1 - s.v0) * (s.s1 - s.s0);
                out = out.union(s.v0 < bar ? Intervals.of(s.s0, cross) : Intervals.of(cross, s.s1));
            }
        }
        return out;
    }

    /** The same lengths walked from the other end of an edge of the given length. */
    public Profile turned(double length) {
        List<Stretch> out = new ArrayList<>();
        for (int i = stretches.size() - 1; i >= 0; i--) {
            Stretch s = stretches.get(i);
            out.add(new Stretch(length - s.s1, length - s.s0, s.v1, s.v0));
        }
        return new Profile(out);
    }

    /** The same lengths with every place moved by {@code by}. */
    public Profile shifted(double by) {
        return by == 0 ? this : new Profile(stretches.stream()
                .map(s -> new Stretch(s.s0 + by, s.s1 + by, s.v0, s.v1)).toList());
    }

    /** The lengths within a part of the line. */
    public Profile part(double from, double to) {
        List<Stretch> out = new ArrayList<>();
        for (Stretch s : stretches) {
            double a = Math.max(from, s.s0), b = Math.min(to, s.s1);
            if (a < b) {
                out.add(new Stretch(a, b, s.at(a), s.at(b)));
            }
        }
        return Profile.of(out);
    }

    /** The lengths with slight negative ones (a coincident sloped edge after snapping) taken as nothing. */
    public Profile atLeastZero() {
        return Profile.of(stretches.stream()
                .map(s -> new Stretch(s.s0, s.s1, Math.max(0, s.v0), Math.max(0, s.v1))).toList());
    }

    /** The lengths less those of another profile that spans the same places; stretches are cut where either changes. */
    public Profile minus(Profile o) {
        List<Stretch> out = new ArrayList<>();
        for (Stretch s : stretches) {
            for (Stretch r : o.part(s.s0, s.s1).stretches) {
                out.add(new Stretch(r.s0, r.s1, s.at(r.s0) - r.v0, s.at(r.s1) - r.v1));
            }
        }
        return Profile.of(out);
    }

    /** Collects the edges that may end something beside an edge, in that edge's frame. */
    public static final class Hits {
        private final EdgeFrame frame;
        private final double from;
        private final double to;
        private final double beyond;
        private final List<double[]> lines = new ArrayList<>();

        /** Looks from the stretch from..to of a frame's edge to its left, at what lies further than {@code beyond} away. */
        public Hits(EdgeFrame frame, double from, double to, double beyond) {
            this.frame = frame;
            this.from = from;
            this.to = to;
            this.beyond = beyond;
        }

        public void add(double ax, double ay, double bx, double by) {
            double s0 = frame.s(ax, ay), s1 = frame.s(bx, by);
            if (Math.max(s0, s1) <= from || Math.min(s0, s1) >= to || Math.abs(s1 - s0) < NOTHING) {
                return;
            }
            double t0 = frame.t(ax, ay), t1 = frame.t(bx, by);
            if (Math.max(t0, t1) > beyond) {
                lines.add(s0 < s1 ? new double[] {s0, t0, s1, t1} : new double[] {s1, t1, s0, t0});
            }
        }

        public void add(Segment e) {
            add(e.a().x(), e.a().y(), e.b().x(), e.b().y());
        }

        /**
         * Adds an edge of a region (interior on its left) if it ends the region in our direction: if it stands square to it within 60
         * degrees. An edge that we merely slip past sideways ends nothing.
         */
        public void addEnd(Segment e) {
            double along = (e.b().x() - e.a().x()) * frame.ux() + (e.b().y() - e.a().y()) * frame.uy();
            if (along <= -0.5 * e.lengthMm() * Grid.MM) {
                add(e);
            }
        }

        /** How far one sees at each place before the nearest of the lines. */
        public Profile nearest() {
            double level = nearestLevel();
            if (!Double.isNaN(level)) {
                return constant(from, to, level);
            }
            double[] cuts = cuts();
            List<Stretch> out = new ArrayList<>();
            for (int i = 0; i + 1 < cuts.length; i++) {
                if (cuts[i + 1] - cuts[i] > NOTHING) {
                    between(cuts[i], cuts[i + 1], out, 0);
                }
            }
            return Profile.of(out);
        }

        /** The common case: every line runs level across the whole stretch. Else NaN. */
        private double nearestLevel() {
            double least = Double.POSITIVE_INFINITY;
            for (double[] l : lines) {
                if (l[0] > from || l[2] < to || l[1] != l[3]) {
                    return Double.NaN;
                }
                least = Math.min(least, l[1]);
            }
            return least;
        }

        private double[] cuts() {
            java.util.TreeSet<Double> cuts = new java.util.TreeSet<>(List.of(from, to));
            for (double[] l : lines) {
                for (double s : new double[] {l[0], l[2], at(l, beyond)}) {
                    if (s > from && s < to) {
                        cuts.add(s);
                    }
                }
            }
            return cuts.stream().mapToDouble(Double::doubleValue).toArray();
        }

        /** Where a line passes the distance {@code t}, or outside the stretch when it does not. */
        private double at(double[] l, double t) {
            return (l[1] > t) == (l[3] > t) ? from : l[0] + (t - l[1]) / (l[3] - l[1]) * (l[2] - l[0]);
        }

        private void between(double a, double b, List<Stretch> out, int depth) {
            double[] low0 = lowest(a, b, a), low1 = lowest(a, b, b);
            if (low0 == null || low1 == null) {
                out.add(new Stretch(a, b, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
                return;
            }
            double cross = low0 == low1 || depth > 40 ? a : crossing(low0, low1, a, b);
            if (cross - a <= NOTHING || b - cross <= NOTHING) {
                double[] low = lowest(a, b, (a + b) / 2);
                out.add(new Stretch(a, b, value(low, a), value(low, b)));
                return;
            }
            between(a, cross, out, depth + 1);
            between(cross, b, out, depth + 1);
        }

        /** The nearest line at s among those that span a..b and lie beyond the threshold there. */
        private double[] lowest(double a, double b, double s) {
            double[] best = null;
            double mid = (a + b) / 2;
            for (double[] l : lines) {
                if (l[0] <= mid && l[2] >= mid && value(l, mid) > beyond
                        && (best == null || closer(l, best, s, mid))) {
                    best = l;
                }
            }
            return best;
        }

        private static boolean closer(double[] l, double[] best, double s, double mid) {
            double d = value(l, s) - value(best, s);
            return Math.abs(d) > NOTHING ? d < 0 : value(l, mid) < value(best, mid);
        }

        private static double value(double[] l, double s) {
            return l[1] == l[3] ? l[1] : l[1] + (s - l[0]) / (l[2] - l[0]) * (l[3] - l[1]);
        }

        private static double crossing(double[] p, double[] q, double a, double b) {
            double da = value(p, a) - value(q, a), db = value(p, b) - value(q, b);
            return da == db ? a : a + da / (da - db) * (b - a);
        }
    }
}
