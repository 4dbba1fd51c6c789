package rainlap.water;

import java.util.List;
import rainlap.geom.Point;
import rainlap.wall.Surface;

/**
 * One step of the water on its way to the frame.
 *
 * @param kind how the water moved
 * @param layer the piece it is on after the step, by id, or {@code frame}
 * @param piece the piece it got under, over the end of or past, by id; empty if none
 * @param failure whether something had to fail for this step: a bond, or a lap that is overrun
 * @param on the surface in whose own frame {@code where} is given
 * @param where the line it crossed or ran along: two points, which may be one
 * @param why in words
 */
public record Step(Kind kind, String layer, String piece, boolean failure, Surface on, List<Point> where, String why) {
    public static final String FRAME = "frame";

    /** How water moves, for those who must tell steps apart; {@code why} says the same in words. */
    public enum Kind {
        RAIN, DROP, RUN_BEHIND, LIFT_UNDER, LIFT_ON, PUSH_UNDER, PUSH_ON, OVERRUN, RUN_ALONG, OFF_A_LEDGE, SPREAD, SPREAD_UNDER, ALONG_A_PIPE
    }

    public Step {
        where = List.copyOf(where);
    }
}
