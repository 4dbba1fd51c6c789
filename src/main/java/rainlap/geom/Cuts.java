package rainlap.geom;

import java.util.Arrays;

/** Collects the places at which a line is to be cut. */
public final class Cuts {
    private double[] at = new double[8];
    private int count;

    public void add(double s) {
        if (count == at.length) {
            at = Arrays.copyOf(at, 2 * count);
        }
        at[count++] = s;
    }

    /** Adds both ends of every stretch of a profile. */
    public void addEnds(Profile p) {
        for (int i = 0; i < p.count(); i++) {
            add(p.from(i));
            add(p.to(i));
        }
    }

    /** All places, each once, in ascending order. */
    public double[] sorted() {
        Arrays.sort(at, 0, count);
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (kept == 0 || at[i] != at[kept - 1]) {
                at[kept++] = at[i];
            }
        }
        count = kept;
        return Arrays.copyOf(at, kept);
    }
}
