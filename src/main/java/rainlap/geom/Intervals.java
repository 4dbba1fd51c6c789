package rainlap.geom;

import java.util.Arrays;

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
        double[] out = new double[count + 1];
        int n = 0;
        for (int i = 0; i + 1 < count; i += 2) {
            double a = Math.max(from, crossings[i]), b = Math.min(to, crossings[i + 1]);
            if (b - a >= LEAST) {
                if (n > 0 && a - out[n - 1] < LEAST) {
                    out[n - 1] = b;
                } else {
                    out[n++] = a;
                    out[n++] = b;
                }
            }
        }
        return n == 0 ? NONE : new Intervals(Arrays.copyOf(out, n));
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
        return combine(o, true, true);
    }

    public Intervals minus(Intervals o) {
        return combine(o, true, false);
    }

    public Intervals union(Intervals o) {
        if (isEmpty()) {
            return o;
        }
        return o.isEmpty() ? this : combine(o, false, true);
    }

    /** The union of many sets at once. */
    public static Intervals unionOf(java.util.List<Intervals> sets) {
        double[][] all = sets.stream().flatMap(i -> java.util.stream.IntStream.range(0, i.count())
                .mapToObj(k -> new double[] {i.from(k), i.to(k)})).toArray(double[][]::new);
        Arrays.sort(all, java.util.Comparator.comparingDouble(a -> a[0]));
        double[] out = new double[2 * all.length];
        int n = 0;
        for (double[] a : all) {
            if (n > 0 && a[0] - out[n - 1] < LEAST) {
                out[n - 1] = Math.max(out[n - 1], a[1]);
            } else {
                out[n++] = a[0];
                out[n++] = a[1];
            }
        }
        return n == 0 ? NONE : new Intervals(Arrays.copyOf(out, n));
    }

    /** Sweeps both sets; with {@code both}: inside this and (inside or outside) the other; else inside either. */
    private Intervals combine(Intervals o, boolean both, boolean otherIn) {
        double[] cuts = new double[at.length + o.at.length];
        System.arraycopy(at, 0, cuts, 0, at.length);
        System.arraycopy(o.at, 0, cuts, at.length, o.at.length);
        Arrays.sort(cuts);
        double[] out = new double[cuts.length];
        int n = 0;
        for (int i = 0; i + 1 < cuts.length; i++) {
            double mid = (cuts[i] + cuts[i + 1]) / 2;
            boolean in = both ? contains(mid) && o.contains(mid) == otherIn : contains(mid) || o.contains(mid);
            if (in && cuts[i + 1] - cuts[i] > 0) {
                if (n > 0 && cuts[i] - out[n - 1] < LEAST) {
                    out[n - 1] = cuts[i + 1];
                } else {
                    out[n++] = cuts[i];
                    out[n++] = cuts[i + 1];
                }
            }
        }
        return drop(out, n);
    }

    private static Intervals drop(double[] raw, int n) {
        double[] out = new double[n];
        int k = 0;
        for (int i = 0; i < n; i += 2) {
            if (raw[i + 1] - raw[i] >= LEAST) {
                out[k++] = raw[i];
                out[k++] = raw[i + 1];
            }
        }
        return k == 0 ? NONE : new Intervals(Arrays.copyOf(out, k));
    }

    /** Every place moved by {@code by}. */
    public Intervals shifted(double by) {
        return isEmpty() || by == 0 ? this : new Intervals(Arrays.stream(at).map(a -> a + by).toArray());
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
