package rainlap.water;

import java.util.List;
import rainlap.geom.Point;
import rainlap.wall.Surface;

/**
 * A line along which water first comes onto the frame.
 *
 * @param defences how many things had to fail
 * @param where a line in the surface's own frame, left or lower end first; round a pipe it bends
 * @param path the way it came, from the rain on; never empty
 */
public record Arrival(int defences, Surface surface, List<Point> where, List<Step> path) {
    public Arrival {
        where = List.copyOf(where);
        path = List.copyOf(path);
    }
}
