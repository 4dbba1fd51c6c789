package rainlap.water;

import java.util.List;
import rainlap.geom.Point;
import rainlap.wall.Surface;

/**
 * One step of the water on its way to the frame.
 *
 * @param layer the piece it is on after the step, by id, or {@code frame}
 * @param piece the piece it got under, over the end of or past, by id; empty if none
 * @param failure whether something had to fail for this step: a bond, or a lap that is overrun
 * @param on the surface in whose own frame {@code where} is given
 * @param where the line it crossed or ran along: two points, which may be one
 * @param why in words
 */
public record Step(String layer, String piece, boolean failure, Surface on, List<Point> where, String why) {
    public static final String FRAME = "frame";

    public Step {
        where = List.copyOf(where);
    }
}
