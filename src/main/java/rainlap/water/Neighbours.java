package rainlap.water;

import java.util.Arrays;

/** What a cell borders on, as it is found; the cell keeps it as arrays without room to spare once all of it is known. */
final class Neighbours {
    static final Seam[] NO_SEAMS = {};
    static final Flank[] NO_FLANKS = {};

    private Seam[] up = NO_SEAMS;
    private Seam[] down = NO_SEAMS;
    private Seam[] feet = NO_SEAMS;
    private Flank[] flanks = NO_FLANKS;
    private int ups;
    private int downs;
    private int flankCount;
    private boolean hasDrives;

    Seam[] up() {
        return ups == up.length ? up : Arrays.copyOf(up, ups);
    }

    Seam[] down() {
        return downs == down.length ? down : Arrays.copyOf(down, downs);
    }

    Seam[] feet() {
        return feet;
    }

    Flank[] flanks() {
        return flankCount == flanks.length ? flanks : Arrays.copyOf(flanks, flankCount);
    }

    /** Whether anything begins there under which its water can be driven: a level line below is passed downwards only. */
    boolean hasDrives() {
        return hasDrives;
    }

    void add(Crossing c) {
        if (c instanceof Seam s) {
            add(s);
        } else if (c instanceof Flank f) {
            add(f);
        }
    }

    private void add(Seam s) {
        hasDrives |= s.begins(0) && (s.up || !s.cell.lower.isLevel());
        if (s.up && s.ontoSill) {
            feet = Arrays.copyOf(feet, feet.length + 1);
            feet[feet.length - 1] = s;
        } else if (s.up) {
            up = ups < up.length ? up : Arrays.copyOf(up, Math.max(1, 2 * ups));
            up[ups++] = s;
        } else {
            down = downs < down.length ? down : Arrays.copyOf(down, Math.max(1, 2 * downs));
            down[downs++] = s;
        }
    }

    private void add(Flank f) {
        hasDrives |= f.begins(0);
        flanks = flankCount < flanks.length ? flanks : Arrays.copyOf(flanks, Math.max(2, 2 * flankCount));
        flanks[flankCount++] = f;
    }

    /** Along the lower or upper line of a gap's cell; lengthens the last one where it tells the same. */
    static void seam(Column here, int gap, Column there, boolean up, long from, long to) {
        Neighbours n = here.cells()[gap].beside();
        int count = up ? n.ups : n.downs;
        Seam last = count == 0 ? null : (up ? n.up : n.down)[count - 1];
        if (last != null && last.to == from && last.isLike(here, there)) {
            last.reach(to);
        } else {
            n.add(new Seam(here, gap, there, up, from, to, false, null));
        }
    }

    /** Along a side of a gap's cell; lengthens the last one, which ends below, where it tells the same. */
    static void flank(Column here, int gap, Column there, boolean right, double from, double to) {
        Neighbours n = here.cells()[gap].beside();
        Flank last = n.flankCount == 0 ? null : n.flanks[n.flankCount - 1];
        if (last != null && last.right == right && last.to == from && last.isLike(here, there)) {
            last.to = to;
        } else {
            Flank f = new Flank(here, gap, there, right, !right, from, to, null);
            if (isBeside(f)) {
                n.add(f);
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
