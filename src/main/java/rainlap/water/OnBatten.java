package rainlap.water;

import java.util.List;
import rainlap.geom.Point;
import rainlap.wall.Surface;

/**
 * Water that comes down to an edge of a batten that faces up.
 *
 * @param batten its id
 * @param where the stretch of that edge, two points in the surface's own frame
 * @param level whether that edge lies level, within {@value #LEVEL_MM_PER_M} mm in a metre
 * @param held whether it falls to no end by which water leaves sideways
 */
public record OnBatten(String batten, Surface surface, List<Point> where, boolean level, boolean held) {
    /** A fall of no more than this counts as level. */
    public static final int LEVEL_MM_PER_M = 5;

    public OnBatten {
        where = List.copyOf(where);
    }
}
