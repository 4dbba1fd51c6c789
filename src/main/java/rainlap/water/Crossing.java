package rainlap.water;

import java.util.Arrays;
import java.util.function.Consumer;
import rainlap.material.Edge;

/**
 * Where water crosses a line out of a cell: which cells it may get into beyond, from the innermost outwards, and at what cost; "Crossing a line" of the package description.
 */
abstract sealed class Crossing permits Seam, Flank {
    private static final int PACKED = 8;

    final Cell cell;
    private final Pile here;
    private final Pile there;
    private final Cell innermost;
    /** All of the cells beyond; null where there is but one, which is so for most. */
    private final Cell[] several;
    /** What it costs to get into each of the first eight, two bits each: a wall has some hundred crossings a piece. */
    private final short costs;
    private final boolean isHeld;
    /** Whether what the water lies on, or something that lies further in, goes on in front of an opening here and carries it past. */
    final boolean carriesPast;

    /**
     * @param gap the one of the cell in the pile here
     * @param facing the edge, as drawn, by which a piece beyond the line faces the water
     * @param inFront pieces that go on in front of an opening here; null where none do
     */
    Crossing(Column from, int gap, Column to, Edge facing, Pile inFront) {
        this.cell = from.cells()[gap];
        this.here = from.pile;
        this.there = to.pile;
        int lo = here == there ? gap : through(gap), hi = here == there ? gap : Math.max(lo, outerThrough(gap));
        Cell[] all = to.cells();
        this.innermost = all[lo];
        this.several = hi == lo ? null : Arrays.copyOfRange(all, lo, hi + 1);
        this.costs = packed(facing);
        this.isHeld = !isFree() || beginsABatten();
        this.carriesPast = inFront != null && isCarriedPast(gap, inFront);
    }

    private boolean isCarriedPast(int gap, Pile inFront) {
        for (int k = 0; k < gap; k++) {
            if (inFront.holds(here.at(k))) {
                return true;
            }
        }
        return false;
    }

    private short packed(Edge facing) {
        int all = 0;
        for (int i = 0; i < Math.min(PACKED, count()); i++) {
            all |= cost(i, facing) << 2 * i;
        }
        return (short) all;
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

    private int outerThrough(int gap) {
        for (int k = gap; k < here.depth(); k++) {
            int at = there.find(here.at(k));
            if (at >= 0) {
                return at;
            }
        }
        return there.depth();
    }

    /** The edge, as drawn, by which a piece beyond the line faces the water. */
    abstract Edge facing();

    /** Whether it tells the same as a crossing out of the same cell from one pile to another. */
    boolean isLike(Column from, Column to) {
        if (here == from.pile && there == to.pile || several == null && !(cell.isOpen() && cell.ground.isFine())) {
            Cell[] all = to.cells();
            int lo = lo();
            for (int i = 0; i < count(); i++) {
                if (lo + i >= all.length || all[lo + i] != to(i)) {
                    return false;
                }
            }
            return true;
        }
        return false;
    }

    /** The gap of the first of the cells beyond, in the pile there. */
    private int lo() {
        return innermost.isOpen() ? there.depth() : there.find(innermost.over);
    }

    /** What is added to a place along the line to get that of the other side: nothing but where two surfaces meet. */
    long shift() {
        return 0;
    }

    Pile here() {
        return here;
    }

    Pile there() {
        return there;
    }

    /** How many cells it may get into. */
    int count() {
        return several == null ? 1 : several.length;
    }

    Cell to(int i) {
        return i == 0 ? innermost : several[i];
    }

    void eachBeyond(Consumer<Cell> each) {
        for (int i = 0; i < count(); i++) {
            each.accept(to(i));
        }
    }

    /** The outermost it may get into: where water comes from the open, it is in the open too. */
    Cell last() {
        return several == null ? innermost : several[several.length - 1];
    }

    /** What it costs to get into one of them. */
    int cost(int i) {
        return i < PACKED ? costs >> 2 * i & 3 : cost(i, facing());
    }

    /** What it would cost if pieces beyond the line faced the water by another edge. */
    int cost(int i, Edge facing) {
        int over = to(i).over;
        boolean same = over == cell.over;
        if (several == null && same) {
            return 0;
        }
        Coat coat = coat();
        int bond = over >= 0 && (coat.isAdhered(over) ? !same : begins(i) && coat.seals(over, facing)) ? 1 : 0;
        return bond + (isHeldBack(coat, facing) ? 1 : 0);
    }

    /** Whether the water lies under a piece whose edge, here, is sealed. */
    private boolean isHeldBack(Coat coat, Edge facing) {
        return !cell.isOpen() && !coat.isAdhered(cell.over) && coat.seals(cell.over, opposite(facing)) && !there.holds(cell.over);
    }

    Coat coat() {
        return cell.ground.coat();
    }

    /** Whether the piece over one of them begins at the line. */
    boolean begins(int i) {
        return i < count() - 1;
    }

    /** How water gets into one of them by a move: under what it has to get in behind. */
    How how(How.Move move, int i) {
        return coat().how(move, begins(i) || cost(i) > 0 ? to(i).over : -1);
    }

    boolean isFree() {
        for (int i = 0; i < count(); i++) {
            if (cost(i) == 0) {
                return true;
            }
        }
        return false;
    }

    private boolean beginsABatten() {
        for (int i = 0; begins(i); i++) {
            if (coat().isBatten(to(i).over)) {
                return true;
            }
        }
        return false;
    }

    /** Whether water runs along this line: because nothing lets it down for nothing, or because a batten begins there. */
    boolean isHeld() {
        return isHeld;
    }

    /** Whether, in one of them, it lies further in than the layer it came from. */
    boolean isFurtherIn(int i) {
        int on = innermost.on;
        return on != cell.on && (i == 0 || coat().isOutside(cell.on, to(i).on));
    }

    /** Whether cladding lies over the piece that covers one of them, which is none itself. */
    boolean isSheltered(int i) {
        return coat().isSheltered(there, lo() + i);
    }

    /** The sheet that the piece over one of them laps, if the two make a lap that can be overrun from here; or -1. */
    int lapped(int i) {
        if (coat().isStrip(to(i).over)) {
            return -1;
        }
        int k = lo() + i - 1;
        while (k >= 0 && coat().isStrip(there.at(k))) {
            k--;
        }
        return k >= 0 && here.holds(there.at(k)) ? there.at(k) : -1;
    }

    /** The cell right under a piece beyond the line; null if it does not go on there. */
    Cell under(int piece) {
        return last().over == piece ? last() : null;
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
