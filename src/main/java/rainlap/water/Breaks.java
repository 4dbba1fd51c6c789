package rainlap.water;

import java.util.Arrays;

/** Where slabs begin and end, in any order and as often as they are told. */
final class Breaks {
    private long[] all = new long[256];
    private int count;

    void add(long x) {
        if (count == all.length) {
            all = Arrays.copyOf(all, 2 * count);
        }
        all[count++] = x;
    }

    /** Each of them once, ascending, within from..to. */
    long[] within(long from, long to) {
        Arrays.sort(all, 0, count);
        long[] out = new long[count];
        int n = 0;
        for (int i = 0; i < count; i++) {
            if (all[i] >= from && all[i] <= to && (n == 0 || out[n - 1] != all[i])) {
                out[n++] = all[i];
            }
        }
        return Arrays.copyOf(out, n);
    }
}
