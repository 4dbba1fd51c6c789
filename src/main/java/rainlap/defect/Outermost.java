package rainlap.defect;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** What one sees of the wall from outside. */
final class Outermost {
    private final Stack stack;

    Outermost(Stack stack) {
        this.stack = stack;
    }

    /** The outermost face at the middle of a box of the wall; empty where the frame is bare. */
    Optional<Face> at(Box box) {
        double x = (box.minX() + box.maxX()) / 2.0, y = (box.minY() + box.maxY()) / 2.0;
        // half a unit aside, so that the place never lies on an edge
        return stack.meeting(Surface.WALL, box).stream().filter(f -> f.region().covers(x + 0.5, y + 0.5))
                .reduce((a, b) -> stack.isOutside(a, b) ? a : b);
    }

    /** Where along a line one sees a face. */
    Intervals shows(Face f, EdgeFrame line) {
        List<Intervals> over = stack.meeting(Surface.WALL, f.box()).stream().filter(o -> o != f && stack.isOutside(o, f))
                .map(o -> line.inside(o.region(), line.side())).toList();
        return line.inside(f.region(), line.side()).minus(Intervals.unionOf(over));
    }

    /** The middle of the box that a hole has, as a point. */
    static Point middle(Box b) {
        return new Point((b.minX() + b.maxX()) / 2, (b.minY() + b.maxY()) / 2);
    }
}
