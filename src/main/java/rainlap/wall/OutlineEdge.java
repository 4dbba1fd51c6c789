package rainlap.wall;

import java.util.Optional;
import rainlap.geom.Segment;

/**
 * One side of the outline, in the outline's counter-clockwise sense.
 *
 * @param neighbour the elevation file that goes on round this corner, a name only
 */
public record OutlineEdge(Segment line, EdgeRole role, Optional<String> neighbour) {}
