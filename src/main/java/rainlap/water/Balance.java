package rainlap.water;

import java.util.List;

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
    /**
     * Where some of the rain goes.
     *
     * @param name in a word or two: "base"
     * @param says "leaves at the base"
     */
    public record Share(String name, String says, double litresPerHour) {}

    /** Where all that fell goes, by what is best known first, also where nothing goes. */
    public List<Share> shares() {
        return List.of(new Share("base", "leaves at the base", foot), new Share("drips", "drips off clear of the wall", drips),
                new Share("openings", "runs off into openings", openings), new Share("corners", "leaves round a corner of the building", corners),
                new Share("frame", "comes onto the frame", frame), new Share("trapped", "stands trapped", trapped));
    }

    /** All that left or stayed; equal to what fell but for rounding. */
    public double accounted() {
        return foot + drips + openings + corners + frame + trapped;
    }
}
