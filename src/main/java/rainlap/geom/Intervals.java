package rainlap.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** A set of disjoint, ascending, closed stretches of a line, in grid units along it. Stretches shorter than half a unit vanish. */
public final class Intervals {
    public static final Intervals NONE = new Intervals(new double[0]);
    private static final double LEAST = 0.5;

    private final double[] at;

    private Intervals(double[] at) {
        this.at = at;
    }

    public static Intervals of(double from, double to) {
        return to - from < LEAST ? NONE : new Intervals(new double[] {from, to});
    }

    /** From the places where a line crosses a closed boundary, in any order: inside between the first two, and so on. */
    static Intervals ofCrossings(double[] crossings, int count, double from, double to) {
        Arrays.sort(crossings, 0, count);
        Sum out = new Sum(count);
        for (int i = 0; i + 1 < count; i += 2) {
            double a = Math.max(from, crossings[i]), b = Math.min(to, crossings[i + 1]);
            if (b - a >= LEAST) {
                out.add(a, b);
            }
        }
        return out.all();
    }

    /** Gathers stretches that ascend; those with next to nothing between them become one. */
    private static final class Sum {
        private final double[] at;
        private int n;

        Sum(int ends) {
            at = new double[ends + 1];
        }

        void add(double from, double to) {
            if (n > 0 && from - at[n - 1] < LEAST) {
                at[n - 1] = Math.max(at[n - 1], to);
            } else {
                at[n++] = from;
                at[n++] = to;
            }
        }

        /** All that are long enough. */
        Intervals all() {
            int kept = 0;
            for (int i = 0; i < n; i += 2) {
                if (at[i + 1] - at[i] >= LEAST) {
                    at[kept++] = at[i];
                    at[kept++] = at[i + 1];
                }
            }
            return kept == 0 ? NONE : new Intervals(Arrays.copyOf(at, kept));
        }
    }

    public int count() {
        return at.length / 2;
    }

    public boolean isEmpty() {
        return at.length == 0;
    }

    public double from(int i) {
        return at[2 * i];
    }

    public double to(int i) {
        return at[2 * i + 1];
    }

    public double total() {
        double sum = 0;
        for (int i = 0; i < count(); i++) {
            sum += to(i) - from(i);
        }
        return sum;
    }

    public boolean contains(double s) {
        for (int i = 0; i < count(); i++) {
            if (from(i) <= s && s <= to(i)) {
                return true;
            }
        }
        return false;
    }

    public Intervals intersect(Intervals o) {
        if (isEmpty() || o.spans(this)) {
            return this;
        }
        return o.isEmpty() || spans(o) ? o : combine(o, true, true);
    }

    /** Whether one stretch of this holds all of the other. */
    private boolean spans(Intervals o) {
        return at.length == 2 && o.at.length > 0 && at[0] <= o.at[0] && at[1] >= o.at[o.at.length - 1];
    }

    public Intervals minus(Intervals o) {
        if (isEmpty() || o.isEmpty()) {
            return this;
        }
        return o.spans(this) ? NONE : combine(o, true, false);
    }

    public Intervals union(Intervals o) {
        if (isEmpty()) {
            return o;
        }
        return o.isEmpty() ? this : combine(o, false, true);
    }

    /** The union of many sets at once. */
    public static Intervals unionOf(List<Intervals> sets) {
        if (sets.size() < 2) {
            return sets.isEmpty() ? NONE : sets.get(0);
        }
        List<double[]> all = new ArrayList<>();
        for (Intervals i : sets) {
            for (int k = 0; k < i.count(); k++) {
                all.add(new double[] {i.from(k), i.to(k)});
            }
        }
        all.sort(Comparator.comparingDouble(a -> a[0]));
        Sum out = new Sum(2 * all.size());
        all.forEach(a -> out.add(a[0], a[1]));
        return out.all();
    }

    /** Sweeps both sets; with {@code both}: inside this and (inside or outside) the other; else inside either. */
    private Intervals combine(Intervals o, boolean both, boolean otherIn) {
        Sum out = new Sum(at.length + o.at.length);
        int i = 0, k = 0;
        double last = Double.NEGATIVE_INFINITY;
        while (i < at.length || k < o.at.length) {
            double next = Math.min(i < at.length ? at[i] : Double.POSITIVE_INFINITY, k < o.at.length ? o.at[k] : Double.POSITIVE_INFINITY);
            boolean inThis = i % 2 == 1, inOther = k % 2 == 1;
            if (next > last && (both ? inThis && inOther == otherIn : inThis || inOther)) {
                out.add(last, next);
            }
            i += i < at.length && at[i] == next ? 1 : 0;
            k += k < o.at.length && o.at[k] == next ? 1 : 0;
            last = next;
        }
        return out.all();
    }

    /** Every place moved by {@code by}. */
    public Intervals shifted(double by) {
        if (isEmpty() || by == 0) {
            return this;
        }
        double[] out = at.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] += by;
        }
        return new Intervals(out);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Intervals i && Arrays.equals(at, i.at);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(at);
    }

    @Override
    public String toString() {
        return Arrays.toString(at);
    }
}
