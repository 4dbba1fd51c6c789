package rainlap.water;

/**
 * The stretch of a line along which one cell lies over another.
 *
 * @param from left end, in the upper cell's x
 * @param shift what is added to get the lower cell's x
 * @param inFront pieces that go on in front of an opening below the line: they carry water past it
 * @param ontoSill whether the lower cell is a sill that the upper one, a jamb, stands on: then x does not carry over
 */
record Seam(Cell upper, Cell lower, long from, long to, long shift, Pile inFront, boolean ontoSill) {
    static Seam plain(Cell upper, Cell lower, long from, long to) {
        return new Seam(upper, lower, from, to, 0, null, false);
    }

    /** Whether x is the same on both sides. */
    boolean carriesOver() {
        return shift == 0 && !ontoSill;
    }

    Seam to(long further) {
        return new Seam(upper, lower, from, further, shift, inFront, ontoSill);
    }

    /** The line, in the upper cell's frame. */
    Line line() {
        return upper.lower;
    }
}
