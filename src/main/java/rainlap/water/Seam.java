package rainlap.water;

import rainlap.material.Edge;

/** A stretch of a cell's lower or upper line with what lies beyond it. */
sealed class Seam extends Crossing {
    /** Whether the other side lies above. */
    final boolean up;
    /** Whether a jamb stands on a sill here: then x does not carry over. From and to are the jamb's. */
    final boolean ontoSill;
    /** Ends, in the cell's own x. */
    final int from;
    int to;

    Seam(Column here, int gap, Column there, boolean up, long from, long to, boolean ontoSill, Pile inFront) {
        super(here, gap, there, facing(up), inFront);
        this.up = up;
        this.ontoSill = ontoSill;
        this.from = Math.toIntExact(from);
        this.to = Math.toIntExact(to);
    }

    /** Onto another surface. */
    static final class Moved extends Seam {
        private final int shift;

        /** @param shift what is added to x to get that of the other side */
        Moved(Column here, int gap, Column there, boolean up, long from, long to, long shift, Pile inFront) {
            super(here, gap, there, up, from, to, false, inFront);
            this.shift = Math.toIntExact(shift);
        }

        @Override
        long shift() {
            return shift;
        }
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
        return shift() == 0 && !ontoSill;
    }

    /** The line, in the frame of the cell; where a jamb stands on a sill, in the jamb's. */
    Line line() {
        return !up ? cell.lower : ontoSill ? to(0).lower : cell.upper;
    }
}
