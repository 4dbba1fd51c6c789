package rainlap.wall;

import java.util.List;
import java.util.OptionalLong;
import rainlap.geom.Box;
import rainlap.geom.Region;

/**
 * The wall's outline, and what lies at its foot.
 *
 * @param ground level of the ground or road under the wall, grid units
 * @param groundCover what that ground is
 * @param abutting decks and roofs that meet the wall, as listed
 */
public record Outline(Region region, List<OutlineEdge> edges, OptionalLong ground, GroundCover groundCover, List<Abutment> abutting) {
    public Outline {
        edges = List.copyOf(edges);
        abutting = List.copyOf(abutting);
    }

    /** On plain ground, with nothing built against it. */
    public Outline(Region region, List<OutlineEdge> edges, OptionalLong ground) {
        this(region, edges, ground, GroundCover.SOIL, List.of());
    }

    public Box box() {
        return region.box();
    }
}
