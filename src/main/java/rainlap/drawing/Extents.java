package rainlap.drawing;

import java.util.OptionalLong;
import rainlap.check.CheckResult;
import rainlap.geom.Box;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/**
 * What of the wall is to be shown.
 *
 * @param wall the outline's box
 * @param sheets the outline with all that is folded round it and every weak place
 * @param ground level of the ground
 */
record Extents(Box wall, Box sheets, OptionalLong ground) {

    static Extents of(CheckResult result) {
        return of(result, result.evidence().stack());
    }

    /** @param stack all pieces that are to be shown */
    static Extents of(CheckResult result, Stack stack) {
        Box wall = stack.elevation().outline().box();
        Box sheets = stack.on(Surface.WALL).stream().map(Face::box).reduce(wall, Box::join);
        sheets = result.weakPoints().stream().map(w -> w.finding().where().box()).reduce(sheets, Box::join);
        return new Extents(wall, sheets, stack.elevation().outline().ground());
    }

    /** The same wall, of which only the part between two places along it is shown. */
    Extents between(long minX, long maxX) {
        return new Extents(cut(wall, minX, maxX), cut(sheets, minX, maxX), ground);
    }

    private static Box cut(Box b, long minX, long maxX) {
        return new Box(Math.max(b.minX(), Math.min(minX, b.maxX())), b.minY(), Math.min(b.maxX(), Math.max(maxX, b.minX())), b.maxY());
    }
}
