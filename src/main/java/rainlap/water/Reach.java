package rainlap.water;

import java.util.List;
import rainlap.geom.Region;
import rainlap.wall.Surface;

/**
 * The part of the frame of one surface that is wet when at most so many things fail, in the surface's own frame.
 *
 * @param defences 0: as drawn
 */
public record Reach(int defences, Surface surface, List<Region> where) {
    public Reach {
        where = List.copyOf(where);
    }

    /** In square millimetres. */
    public double areaMm2() {
        return where.stream().mapToDouble(Region::areaMm2).sum();
    }
}
