package rainlap.wall;

import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;

/**
 * Where a piece lies on one surface.
 *
 * @param run the polyline a {@code line} shape follows, empty for other shapes
 */
public record Shape(Surface on, List<Region> regions, List<Point> run) {
    public Shape {
        regions = List.copyOf(regions);
        run = List.copyOf(run);
        if (regions.isEmpty()) {
            throw new IllegalArgumentException("a shape without area");
        }
    }

    public Shape(Surface on, List<Region> regions) {
        this(on, regions, List.of());
    }

    public Box box() {
        return regions.size() == 1 ? regions.get(0).box() : regions.stream().map(Region::box).reduce(Box::join).orElseThrow();
    }
}
