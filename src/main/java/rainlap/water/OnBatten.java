package rainlap.water;

import java.util.List;
import rainlap.geom.Point;
import rainlap.wall.Surface;

/**
 * Water that comes down to an edge of a batten that faces up.
 *
 * @param batten its id
 * @param where the stretch of that edge, two points in the surface's own frame
 */
public record OnBatten(String batten, Surface surface, List<Point> where) {
    public OnBatten {
        where = List.copyOf(where);
    }
}
