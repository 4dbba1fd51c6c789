package rainlap.water;

import java.util.Arrays;

/** The borders that a slab meets, from the bottom up. */
final class Active {
    private Border[] borders = new Border[64];
    private double[] atLeft = new double[64];
    private double[] atRight = new double[64];
    private int size;
    private boolean anySloped;

    int size() {
        return size;
    }

    Border get(int i) {
        return borders[i];
    }

    Line line(int i) {
        Line best = borders[i].line();
        for (int k = i; k < endOfLine(i); k++) {
            best = borders[k].line().isLevel() ? borders[k].line() : best;
        }
        return best;
    }

    /** The height of border i in the middle of the slab. */
    double height(int i) {
        return (atLeft[i] + atRight[i]) / 2;
    }

    void add(Border b) {
        if (size == borders.length) {
            borders = Arrays.copyOf(borders, 2 * size);
            atLeft = Arrays.copyOf(atLeft, 2 * size);
            atRight = Arrays.copyOf(atRight, 2 * size);
        }
        borders[size++] = b;
    }

    void dropEndedAt(long x) {
        int n = 0;
        for (int i = 0; i < size; i++) {
            if (borders[i].line().bx() > x) {
                borders[n++] = borders[i];
            }
        }
        Arrays.fill(borders, n, size, null);
        size = n;
    }

    /** Puts the borders in order for a slab from x, which ends at {@code to} or at the first crossing before. */
    long arrange(long x, long to) {
        measure(x, to);
        sort();
        long end = anySloped ? firstCrossing(x, to) : to;
        if (end < to) {
            measure(x, end);
            sort();
        }
        return end;
    }

    private void measure(long x, long to) {
        anySloped = false;
        for (int i = 0; i < size; i++) {
            Line l = borders[i].line();
            anySloped |= !l.isLevel();
            atLeft[i] = l.at(x);
            atRight[i] = l.at(to);
        }
    }

    private void sort() {
        for (int i = 1; i < size; i++) {
            Border b = borders[i];
            double l = atLeft[i], r = atRight[i];
            int k = i;
            while (k > 0 && isAbove(k - 1, l, r, b)) {
                borders[k] = borders[k - 1];
                atLeft[k] = atLeft[k - 1];
                atRight[k] = atRight[k - 1];
                k--;
            }
            borders[k] = b;
            atLeft[k] = l;
            atRight[k] = r;
        }
    }

    /** By height at the left, then at the right, then by owner, so that nothing depends on the order of arrival. */
    private boolean isAbove(int i, double l, double r, Border b) {
        if (atLeft[i] != l) {
            return atLeft[i] > l;
        }
        return atRight[i] != r ? atRight[i] > r : borders[i].owner() > b.owner();
    }

    private long firstCrossing(long x, long to) {
        long first = to;
        for (int i = 0; i + 1 < size; i++) {
            double gap = atLeft[i + 1] - atLeft[i], over = atRight[i] - atRight[i + 1];
            if (over >= 1 && gap >= 0) {
                long at = x + Math.round((to - x) * gap / (gap + over));
                first = Math.min(first, Math.max(x + 1, at));
            }
        }
        return first;
    }

    /** The first border above the one on whose line border i lies. Lines nearer than a grid unit are one, if one of them slopes. */
    int endOfLine(int i) {
        int k = i + 1;
        while (k < size && isSameLine(i, k)) {
            k++;
        }
        return k;
    }

    private boolean isSameLine(int i, int k) {
        double apart = height(k) - height(i);
        return borders[i].line().isLevel() && borders[k].line().isLevel() ? apart == 0 : Math.abs(apart) < 1;
    }

    /** Crosses what lies at or below a height; says where the rest begins. */
    int skipTo(long y, double mid, Zone zone) {
        int i = 0;
        while (i < size && height(i) <= y) {
            zone.cross(borders[i++]);
        }
        return i;
    }
}
