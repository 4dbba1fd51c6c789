package rainlap.rule;

import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** Which membranes of the wall lie beside a line: the sheets to name where something is missing. */
public final class Beside {
    private Beside() {}

    /** Ids in laying order of the membranes that come within a distance (grid units) of a line, square to it. */
    public static List<String> membranes(Stack stack, Segment line, long within) {
        Box b = line.box();
        Box near = line.isLevel() ? new Box(b.minX(), b.minY() - within, b.maxX(), b.maxY() + within)
                : line.isPlumb() ? new Box(b.minX() - within, b.minY(), b.maxX() + within, b.maxY()) : b.grow(within);
        return stack.meeting(Surface.WALL, near).stream()
                .filter(f -> f.kind() == MaterialKind.MEMBRANE && reachesInto(f, near))
                .map(f -> f.piece().id()).distinct().toList();
    }

    private static boolean reachesInto(Face f, Box near) {
        return f.box().overlaps(near) && (f.region().isBox()
                || !Overlay.intersection(List.of(f.region()), List.of(Region.of(near))).isEmpty());
    }
}
