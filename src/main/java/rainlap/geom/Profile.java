package rainlap.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A length that varies along an edge: straight from one end of each stretch to the other, in grid units. A length that nothing bounds is
 * {@link Double#POSITIVE_INFINITY} at both ends of its stretch. Stretches ascend and do not overlap; there may be breaks between them.
 */
public final class Profile {
    /** Shorter than this in grid units is no length at all. */
    static final double NOTHING = 1e-6;
    /** No stretch at all. */
    public static final Profile NONE = new Profile(new double[0]);

    /** Four numbers a stretch: its two places, then the lengths there. A wall holds many profiles. */
    private final double[] at;

    /** One stretch: from place {@code s0} to {@code s1} the length goes from {@code v0} to {@code v1}. */
    public record Stretch(double s0, double s1, double v0, double v1) {}

    private Profile(double[] at) {
        this.at = at;
    }

    public static Profile constant(double s0, double s1, double v) {
        return new Profile(new double[] {s0, s1, v, v});
    }

    /** Puts a profile together from stretches that ascend; those that meet at the same unchanging length become one. */
    public static final class Builder {
        private double[] at = NONE.at;
        private int n;

        public Builder add(double s0, double s1, double v0, double v1) {
            if (n > 0 && at[n - 3] == s0 && v0 == v1 && at[n - 1] == v0 && at[n - 2] == v0) {
                at[n - 3] = s1;
                return this;
            }
            if (n == at.length) {
                at = Arrays.copyOf(at, Math.max(4, 2 * n));
            }
            at[n++] = s0;
            at[n++] = s1;
            at[n++] = v0;
            at[n++] = v1;
            return this;
        }

        public Builder add(Profile p) {
            for (int i = 0; i < p.count(); i++) {
                add(p.from(i), p.to(i), p.first(i), p.last(i));
            }
            return this;
        }

        /** Begins anew after that. */
        public Profile build() {
            Profile p = n == 0 ? NONE : new Profile(n == at.length ? at : Arrays.copyOf(at, n));
            at = NONE.at;
            n = 0;
            return p;
        }
    }

    /** How many stretches there are. */
    public int count() {
        return at.length / 4;
    }

    public double from(int i) {
        return at[4 * i];
    }

    public double to(int i) {
        return at[4 * i + 1];
    }

    /** The length at the first end of stretch i. */
    public double first(int i) {
        return at[4 * i + 2];
    }

    /** The length at the last end of stretch i. */
    public double last(int i) {
        return at[4 * i + 3];
    }

    public List<Stretch> stretches() {
        List<Stretch> out = new ArrayList<>(count());
        for (int i = 0; i < count(); i++) {
            out.add(new Stretch(from(i), to(i), first(i), last(i)));
        }
        return List.copyOf(out);
    }

    private double at(int i, double s) {
        return first(i) == last(i) ? first(i) : first(i) + (s - from(i)) / (to(i) - from(i)) * (last(i) - first(i));
    }

    /** The least length, infinite when there is no stretch. */
    public double least() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count(); i++) {
            least = Math.min(least, Math.min(first(i), last(i)));
        }
        return least;
    }

    public double greatest() {
        double most = count() == 0 ? 0 : Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count(); i++) {
            most = Math.max(most, Math.max(first(i), last(i)));
        }
        return most;
    }

    /** The least length within a part of the line. A stretch that only touches the part's end is not within it; a single place may be. */
    public double leastWithin(double from, double to) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count(); i++) {
            double a = Math.max(from, from(i)), b = Math.min(to, to(i));
            if (b - a > NOTHING || from == to && a == b) {
                least = Math.min(least, Math.min(at(i, a), at(i, b)));
            }
        }
        return least;
    }

    /** Where the length is below a limit; compared to within a hundredth of a grid unit, so that "exactly on" is enough. */
    public Intervals below(double limit) {
        double bar = limit - 0.01;
        Intervals out = Intervals.NONE;
        for (int i = 0; i < count(); i++) {
            double v0 = first(i), v1 = last(i);
            if (v0 < bar && v1 < bar) {
                out = out.union(Intervals.of(from(i), to(i)));
            } else if (v0 < bar || v1 < bar) {
                double cross = from(i) + (bar - v0) / (v1 - v0) * (to(i) - from(i));
                out = out.union(v0 < bar ? Intervals.of(from(i), cross) : Intervals.of(cross, to(i)));
            }
        }
        return out;
    }

    /** The same lengths walked from the other end of an edge of the given length. */
    public Profile turned(double length) {
        double[] out = new double[at.length];
        for (int i = 0, k = at.length - 4; k >= 0; i += 4, k -= 4) {
            out[i] = length - at[k + 1];
            out[i + 1] = length - at[k];
            out[i + 2] = at[k + 3];
            out[i + 3] = at[k + 2];
        }
        return new Profile(out);
    }

    /** The same lengths with every place moved by {@code by}. */
    public Profile shifted(double by) {
        if (by == 0) {
            return this;
        }
        double[] out = at.clone();
        for (int i = 0; i < out.length; i += 4) {
            out[i] += by;
            out[i + 1] += by;
        }
        return new Profile(out);
    }

    /** The lengths within a part of the line. */
    public Profile part(double from, double to) {
        if (count() > 0 && from <= at[0] && to >= at[at.length - 3]) {
            return this;
        }
        Builder out = new Builder();
        for (int i = 0; i < count(); i++) {
            double a = Math.max(from, from(i)), b = Math.min(to, to(i));
            if (a < b) {
                out.add(a, b, at(i, a), at(i, b));
            }
        }
        return out.build();
    }

    /** The lengths with slight negative ones (a coincident sloped edge after snapping) taken as nothing. */
    public Profile atLeastZero() {
        return least() >= 0 ? this : capped(0, Double.POSITIVE_INFINITY);
    }

    /** The lengths with those above a limit taken as the limit. */
    public Profile atMost(double most) {
        return greatest() <= most ? this : capped(Double.NEGATIVE_INFINITY, most);
    }

    private Profile capped(double least, double most) {
        Builder out = new Builder();
        for (int i = 0; i < count(); i++) {
            out.add(from(i), to(i), Math.min(most, Math.max(least, first(i))), Math.min(most, Math.max(least, last(i))));
        }
        return out.build();
    }

    /** The lengths less those of another profile that spans the same places; stretches are cut where either changes. */
    public Profile minus(Profile o) {
        Builder out = new Builder();
        for (int i = 0; i < count(); i++) {
            Profile r = o.part(from(i), to(i));
            for (int k = 0; k < r.count(); k++) {
                out.add(r.from(k), r.to(k), at(i, r.from(k)) - r.first(k), at(i, r.to(k)) - r.last(k));
            }
        }
        return out.build();
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Profile p && Arrays.equals(at, p.at);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(at);
    }
}
