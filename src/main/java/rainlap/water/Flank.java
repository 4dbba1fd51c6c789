package rainlap.water;

/**
 * The stretch of a plumb line on whose two sides cells lie.
 *
 * @param aRight whether it is the right border of a (else the left), and so for b
 * @param from lower end, in a's y
 * @param shift what is added to get b's y
 * @param inFront pieces that go on in front of an opening on b's side
 */
record Flank(Cell a, Cell b, boolean aRight, boolean bRight, double from, double to, long shift, Pile inFront) {
    Flank turned() {
        return new Flank(b, a, bRight, aRight, from + shift, to + shift, -shift, null);
    }

    /** Where it is, in a's x. */
    long x() {
        return aRight ? a.x1 : a.x0;
    }

    /** Where it is, in b's x. */
    long beyondX() {
        return bRight ? b.x1 : b.x0;
    }
}
