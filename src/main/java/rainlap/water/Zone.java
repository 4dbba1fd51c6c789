package rainlap.water;

import java.util.List;

/** Where a walk from the bottom of a slab upwards has got to: what pieces lie there, and whether there is a frame behind them. */
final class Zone {
    private final Pile.Source piles;
    private Pile pile;
    private boolean inside;
    private int pipes;
    private int pipe = -1;
    private int opening = -1;

    Zone(Pile.Source piles) {
        this.piles = piles;
        this.pile = piles.empty();
    }

    void cross(Border b) {
        if (b.owner() >= 0) {
            pile = b.above(pile, piles);
        } else if (b.owner() == Border.OUTLINE) {
            inside = b.enters();
        } else if (b.pipe() >= 0) {
            pipes += b.enters() ? 1 : -1;
            pipe = b.enters() ? b.pipe() : pipe;
        } else if (b.enters()) {
            opening = b.opening();
        } else if (opening == b.opening()) {
            opening = -1;
        }
    }

    boolean isInside() {
        return inside;
    }

    /** What lies here between two lines: a column of the slab before where it goes on. */
    Column column(Line lower, Line upper, List<Column> before, int start, long x) {
        int here = pipes > 0 ? pipe : -1;
        double low = lower.at(x);
        for (int k = start; k < before.size() && before.get(k).lower.at(x) <= low + 1; k++) {
            if (before.get(k).goesOnAs(pile, lower, upper, opening, here)) {
                return before.get(k);
            }
        }
        return new Column(pile, lower, upper, opening, here);
    }
}
