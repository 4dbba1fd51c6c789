package rainlap.wall;

import java.util.List;
import java.util.OptionalLong;
import rainlap.geom.Box;
import rainlap.geom.Region;

/**
 * The wall's outline.
 *
 * @param ground level of the ground or road under the wall, grid units
 */
public record Outline(Region region, List<OutlineEdge> edges, OptionalLong ground) {
    public Outline {
        edges = List.copyOf(edges);
    }

    public Box box() {
        return region.box();
    }
}
