package rainlap.water;

import java.util.List;
import rainlap.geom.Point;
import rainlap.wall.Surface;

/**
 * Water that cannot get on: it stands along a closed edge.
 *
 * @param over the piece whose bond holds it, by id
 * @param layer the piece it stands on, or {@code frame}
 * @param where two points, in the surface's own frame
 * @param path the way it came
 */
public record Standing(String over, String layer, Surface surface, List<Point> where, List<Step> path) {
    public Standing {
        where = List.copyOf(where);
        path = List.copyOf(path);
    }
}
