package rainlap.water;

import rainlap.material.Edge;

/** A stretch of a cell's lower or upper line with what lies beyond it. */
final class Seam extends Crossing {
    /** Whether the other side lies above. */
    final boolean up;
    /** Ends, in the cell's own x. */
    final int from;
    int to;
    /** What is added to x to get that of the other side. */
    final int shift;
    /** Whether a jamb stands on a sill here: then x does not carry over. From and to are the jamb's. */
    final boolean ontoSill;

    Seam(Column here, int gap, Column there, boolean up, long from, long to, long shift, boolean ontoSill, Pile inFront) {
        super(here, gap, there, facing(up), inFront);
        this.up = up;
        this.from = Math.toIntExact(from);
        this.to = Math.toIntExact(to);
        this.shift = Math.toIntExact(shift);
        this.ontoSill = ontoSill;
    }

    @Override
    Edge facing() {
        return facing(up);
    }

    private static Edge facing(boolean up) {
        return up ? Edge.BOTTOM : Edge.TOP;
    }

    /** Draws it out. */
    void reach(long further) {
        to = Math.toIntExact(further);
    }

    /** Whether x is the same on both sides. */
    boolean carriesOver() {
        return shift == 0 && !ontoSill;
    }

    /** The line, in the frame of the cell; where a jamb stands on a sill, in the jamb's. */
    Line line() {
        return !up ? cell.lower : ontoSill ? to(0).lower : cell.upper;
    }
}
