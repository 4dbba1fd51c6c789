package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import rainlap.wall.Elevation;

/**
 * What becomes of the rain on an elevation as drawn, in litres per hour. Only what runs is counted, not what wind drives.
 *
 * @param fallen on the wall and its openings
 * @param foot leaves at the base
 * @param drips thrown clear by a drip, or past an opening in front of it
 * @param openings runs off the wall into an opening: off its head, or where it has no reveal
 * @param sides leaves round a corner of the building, or past a side of the wall
 * @param onOpenings falls on an opening and stays there: where it has no reveal, or its sill is bare
 * @param frame runs onto the frame
 * @param trapped stands where it cannot get out
 */
public record Balance(double fallen, double foot, double drips, double openings, double sides, double onOpenings, double frame, double trapped) {
    /**
     * Where some of the rain goes.
     *
     * @param name in a word or two: "base"
     * @param says "leaves at the base"
     * @param besides what water goes there that is not counted; empty if none
     */
    public record Share(String name, String says, double litresPerHour, String besides) {
        private Share(String name, String says, double litresPerHour) {
            this(name, says, litresPerHour, "");
        }

        /** What else goes there, with a blank before it; nothing if nothing does. */
        public String inBrackets() {
            return besides.isEmpty() ? "" : " (" + besides + ")";
        }
    }

    /**
     * Where all that fell goes, also where nothing goes, but not where nothing can go on this elevation.
     *
     * @param besides by what means water reaches the frame that is not counted
     */
    List<Share> shares(Elevation e, List<String> besides) {
        List<Share> out = new ArrayList<>(List.of(new Share("base", "leaves at the base", foot), new Share("drips", "drips off clear of the wall", drips)));
        if (!e.openings().isEmpty()) {
            out.add(new Share("openings", "runs off the wall into openings", openings));
            out.add(new Share("on_openings", "falls on openings: bare sill or no reveal", onOpenings));
        }
        out.add(new Share("sides", pastSides(e), sides));
        out.add(new Share("frame", "comes onto the frame", frame, besides.isEmpty() ? ""
                : "running rain alone; water that is not counted comes there besides: " + String.join(", ", besides)));
        out.add(new Share("trapped", "stands trapped", trapped));
        return out;
    }

    private static String pastSides(Elevation e) {
        boolean corners = e.outline().edges().stream().anyMatch(s -> s.role().isCorner());
        boolean others = e.outline().edges().stream().anyMatch(s -> s.line().a().y() != s.line().b().y() && !s.role().isCorner());
        return !corners ? "leaves past a side of the wall" : others ? "leaves round a corner or past a side" : "leaves round a corner of the building";
    }

    /** All that left or stayed; equal to what fell but for rounding. */
    public double accounted() {
        return foot + drips + openings + sides + onOpenings + frame + trapped;
    }
}
