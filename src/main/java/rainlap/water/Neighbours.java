package rainlap.water;

import java.util.ArrayList;
import java.util.List;

/** What a cell borders on, as it is found; the cell keeps it as arrays once all of it is known. */
final class Neighbours {
    static final Seam[] NO_SEAMS = {};
    static final Flank[] NO_FLANKS = {};

    final List<Seam> up = new ArrayList<>(2);
    final List<Seam> down = new ArrayList<>(2);
    final List<Seam> feet = new ArrayList<>(0);
    final List<Flank> flanks = new ArrayList<>(4);

    static Seam[] seams(List<Seam> all) {
        return all.isEmpty() ? NO_SEAMS : all.toArray(NO_SEAMS);
    }

    static Flank[] flanks(List<Flank> all) {
        return all.isEmpty() ? NO_FLANKS : all.toArray(NO_FLANKS);
    }

    /** Along the lower or upper line of a gap's cell; lengthens the last one where it tells the same. */
    static void seam(Column here, int gap, Column there, boolean up, long from, long to) {
        Neighbours n = here.cells()[gap].beside();
        List<Seam> known = up ? n.up : n.down;
        Seam last = known.isEmpty() ? null : known.get(known.size() - 1);
        if (last != null && last.to == from && last.isLike(here, there)) {
            last.to = to;
        } else {
            known.add(new Seam(here, gap, there, up, from, to, 0, false, null));
        }
    }

    /** Along a side of a gap's cell; lengthens the last one, which ends below, where it tells the same. */
    static void flank(Column here, int gap, Column there, boolean right, double from, double to) {
        List<Flank> known = here.cells()[gap].beside().flanks;
        Flank last = known.isEmpty() ? null : known.get(known.size() - 1);
        if (last != null && last.right == right && last.to == from && last.isLike(here, there)) {
            last.to = to;
        } else {
            Flank f = new Flank(here, gap, there, right, !right, from, to, 0, null);
            if (isBeside(f)) {
                known.add(f);
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
