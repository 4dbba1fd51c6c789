package rainlap.water;

/**
 * What becomes of the rain on an elevation as drawn, in litres per hour.
 *
 * @param fallen on the wall and its openings
 * @param foot leaves at the base
 * @param drips thrown clear by a drip, or past an opening in front of it
 * @param openings leaves into an opening: off its head, or where it has no reveal
 * @param corners leaves round a corner of the building
 * @param frame comes onto the frame
 * @param trapped stands where it cannot get out
 */
public record Balance(double fallen, double foot, double drips, double openings, double corners, double frame, double trapped) {
    /** All that left or stayed; equal to what fell but for rounding. */
    public double accounted() {
        return foot + drips + openings + corners + frame + trapped;
    }
}
