package rainlap.water;

import rainlap.material.Edge;

/** A stretch of a cell's left or right side with what lies beyond it. */
sealed class Flank extends Crossing {
    /** Whether it is the cell's right side, and whether it is the right side of what lies beyond. */
    final boolean right;
    final boolean beyondRight;
    /** Ends, in the cell's own y. */
    final double from;
    double to;

    Flank(Column here, int gap, Column there, boolean right, boolean beyondRight, double from, double to, Pile inFront) {
        super(here, gap, there, facing(beyondRight), inFront);
        this.right = right;
        this.beyondRight = beyondRight;
        this.from = from;
        this.to = to;
    }

    /** Onto another surface. */
    static final class Moved extends Flank {
        private final int shift;

        /** @param shift what is added to y to get that of the other side */
        Moved(Column here, int gap, Column there, boolean right, boolean beyondRight, double from, double to, long shift, Pile inFront) {
            super(here, gap, there, right, beyondRight, from, to, inFront);
            this.shift = Math.toIntExact(shift);
        }

        @Override
        long shift() {
            return shift;
        }
    }

    /** Lets the cells beyond know that this side of theirs is not told from here. */
    void tellOdd() {
        for (int i = 0; i < count(); i++) {
            to(i).hasOddSide = true;
        }
    }

    @Override
    Edge facing() {
        return facing(beyondRight);
    }

    private static Edge facing(boolean beyondRight) {
        return beyondRight ? Edge.RIGHT : Edge.LEFT;
    }

    /** Where it is, in the cell's x. */
    long x() {
        return right ? cell.x1 : cell.x0;
    }

    /** Where it is, in the x of what lies beyond. */
    long beyondX() {
        return beyondRight ? to(0).x1 : to(0).x0;
    }
}
