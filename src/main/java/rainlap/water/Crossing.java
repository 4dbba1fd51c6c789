package rainlap.water;

import rainlap.material.Edge;

/**
 * Water that crosses from one pile to the next: which gaps it may get into, and at what cost; "Crossing a line" of the package description.
 */
final class Crossing {
    private final Coat coat;
    private final Pile here;
    private final int gap;
    private final Pile there;
    /** The first and last gap it may get into beyond the line. */
    final int lo;
    final int hi;
    private final Edge facing;
    private final int leaving;

    /**
     * @param facing the edge, as drawn, by which a piece beyond the line faces the water
     */
    Crossing(Coat coat, Pile here, int gap, Pile there, Edge facing) {
        this.coat = coat;
        this.here = here;
        this.gap = gap;
        this.there = there;
        this.facing = facing;
        this.lo = here == there ? gap : through(gap);
        this.hi = here == there ? gap : Math.max(lo, outerThrough());
        this.leaving = isHeldBack() ? 1 : 0;
    }

    private int through(int g) {
        for (int k = g; k > 0; k--) {
            int at = there.find(here.at(k - 1));
            if (at >= 0) {
                return at + 1;
            }
        }
        return 0;
    }

    private int outerThrough() {
        for (int k = gap; k < here.depth(); k++) {
            int at = there.find(here.at(k));
            if (at >= 0) {
                return at;
            }
        }
        return there.depth();
    }

    /** Whether the water lies under a piece whose edge, here, is sealed. */
    private boolean isHeldBack() {
        if (here == there || gap == here.depth()) {
            return false;
        }
        int over = here.at(gap);
        return !coat.isAdhered(over) && coat.seals(over, opposite(facing)) && !there.holds(over);
    }

    /** What it costs to get into gap j beyond the line. */
    int cost(int j) {
        return leaving + bond(j);
    }

    private int bond(int j) {
        if (j == there.depth()) {
            return 0;
        }
        int over = there.at(j);
        if (coat.isAdhered(over)) {
            return gap < here.depth() && here.at(gap) == over ? 0 : 1;
        }
        return begins(j) && coat.seals(over, facing) ? 1 : 0;
    }

    /** The piece over gap j beyond the line, or -1. */
    int overAt(int j) {
        return j < there.depth() ? there.at(j) : -1;
    }

    /** Whether the piece over gap j begins at the line. */
    boolean begins(int j) {
        return j < hi;
    }

    /** How water gets into gap j by a move: under what it has to get in behind. */
    How how(How.Move move, int j) {
        return coat.how(move, begins(j) || cost(j) > 0 ? overAt(j) : -1);
    }

    boolean isFree() {
        for (int j = lo; j <= hi; j++) {
            if (cost(j) == 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether the layer the water was on goes on beyond the line. */
    boolean isOnSame() {
        return gap == 0 || lo > 0 && there.at(lo - 1) == here.at(gap - 1);
    }

    /** Whether, in gap j, it lies further in than the layer it came from. */
    boolean isFurtherIn(int j) {
        return !isOnSame() && (j == lo || coat.isOutside(here.at(gap - 1), there.at(j - 1)));
    }

    static Edge opposite(Edge e) {
        return switch (e) {
            case TOP -> Edge.BOTTOM;
            case BOTTOM -> Edge.TOP;
            case LEFT -> Edge.RIGHT;
            case RIGHT -> Edge.LEFT;
        };
    }
}
