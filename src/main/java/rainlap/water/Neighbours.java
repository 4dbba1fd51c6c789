package rainlap.water;

import java.util.Arrays;

/**
 * What a cell borders on, as it is found: arrays without room to spare, for most hold one or two. Only where there are many there is spare room, which is empty, until all of them
 * are known.
 */
final class Neighbours {
    static final Seam[] NO_SEAMS = {};
    static final Flank[] NO_FLANKS = {};
    private static final int MANY = 16;

    private Neighbours() {}

    static <T> T[] with(T[] all, T next) {
        int count = count(all);
        T[] more = count < all.length ? all : Arrays.copyOf(all, count < MANY ? count + 1 : 2 * count);
        more[count] = next;
        return more;
    }

    /** Without spare room. */
    static <T> T[] trimmed(T[] all) {
        int count = count(all);
        return count == all.length ? all : Arrays.copyOf(all, count);
    }

    private static <T> int count(T[] all) {
        if (all.length <= MANY || all[all.length - 1] != null) {
            return all.length;
        }
        int low = MANY, high = all.length - 1;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (all[mid] == null) {
                high = mid;
            } else {
                low = mid + 1;
            }
        }
        return low;
    }

    /** The one that was found last; null if none was. */
    private static <T> T last(T[] all) {
        int count = count(all);
        return count == 0 ? null : all[count - 1];
    }

    /** Along the lower or upper line of a gap's cell; lengthens the last one where it tells the same. */
    static void seam(Column here, int gap, Column there, boolean up, long from, long to) {
        Cell c = here.cells()[gap];
        Seam last = last(up ? c.up : c.down);
        if (last != null && last.to == from && last.isLike(here, there)) {
            last.reach(to);
        } else {
            c.add(new Seam(here, gap, there, up, from, to, false, null));
        }
    }

    /** Along a side of a gap's cell; lengthens the last one, which ends below, where it tells the same. */
    static void flank(Column here, int gap, Column there, boolean right, double from, double to) {
        Cell c = here.cells()[gap];
        Flank last = last(c.flanks);
        if (last != null && last.right == right && last.to == from && last.isLike(here, there)) {
            last.to = to;
        } else {
            Flank f = new Flank(here, gap, there, right, !right, from, to, null);
            if (isBeside(f)) {
                c.add(f);
            } else {
                f.tellOdd();
            }
        }
    }

    /** Where a steep edge crosses another one between two places of the grid, columns seem to overlap at their sides by what it rises from one place to the next. */
    private static boolean isBeside(Flank f) {
        for (int i = 0; i < f.count(); i++) {
            if ((f.right ? f.to(i).x0 : f.to(i).x1) != f.x()) {
                return false;
            }
        }
        return true;
    }
}
