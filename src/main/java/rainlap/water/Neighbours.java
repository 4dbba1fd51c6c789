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
}
