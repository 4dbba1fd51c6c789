package rainlap.water;

import java.util.List;
import rainlap.geom.Ends;
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
 */
public record Step(Kind kind, String layer, String piece, boolean failure, Surface on, List<Point> where) {
    public static final String FRAME = "frame";

    /** How water moves, for those who must tell steps apart; {@link #why} says the same in words. */
    public enum Kind {
        RAIN, DROP, RUN_BEHIND, LIFT_UNDER, LIFT_ON, PUSH_UNDER, PUSH_ON, OVERRUN, RUN_ALONG, OFF_A_LEDGE, SPREAD, SPREAD_UNDER, ALONG_A_PIPE
    }

    public Step {
        where = Ends.copyOf(where);
    }

    /** Whether it gets further in by it: under, behind or round the end of a piece. */
    public boolean entersBehind() {
        return switch (kind) {
            case RUN_BEHIND, LIFT_UNDER, PUSH_UNDER, OVERRUN, SPREAD_UNDER, OFF_A_LEDGE, ALONG_A_PIPE -> true;
            case RAIN, DROP, LIFT_ON, PUSH_ON, RUN_ALONG, SPREAD -> false;
        };
    }

    /** In words, but for where. */
    public String why() {
        String onto = layer.equals(FRAME) ? "the frame" : layer;
        String bond = failure ? ", whose bond has failed" : "";
        return switch (kind) {
            case RAIN -> "rain wets " + onto;
            case DROP -> "drops onto " + onto;
            case RUN_BEHIND -> "runs in behind " + piece + bond;
            case LIFT_UNDER -> "wind lifts it under " + piece + bond;
            case LIFT_ON -> "wind lifts it on, onto " + onto;
            case PUSH_UNDER -> "wind pushes it sideways under " + piece + bond;
            case PUSH_ON -> "wind pushes it on, onto " + onto;
            case OVERRUN -> (failure ? "overruns the lap under " + piece : "runs on in under " + piece) + ", onto " + onto;
            case RUN_ALONG -> piece.isEmpty() ? "runs along to where it can fall" : "runs along under " + piece + " to where it can fall";
            case OFF_A_LEDGE -> "runs off the end of " + piece;
            case SPREAD -> "spreads over " + onto;
            case SPREAD_UNDER -> "spreads in under " + piece + bond;
            case ALONG_A_PIPE -> "runs along the pipe in behind " + piece + (failure ? ", whose seal has opened" : "");
        };
    }
}
