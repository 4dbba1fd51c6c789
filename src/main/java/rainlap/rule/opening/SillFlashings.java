package rainlap.rule.opening;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.rule.HeadFlashings;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * Which flashings belong to an opening's sill: those that lie on the sill itself, and those on the wall that reach across part of its width
 * and whose upper edge lies within {@link #NEAR_SILL} of the sill's line. What is a head flashing (of an opening below) is none.
 */
final class SillFlashings {
    /** 50 mm. Our own choice: common practice, no source. */
    static final long NEAR_SILL = 5_000;

    private SillFlashings() {}

    /** Their faces on the wall and on the sill, in laying order. */
    static List<Face> of(Evidence e, Opening o) {
        Map<String, List<Face>> all = e.shared().of(SillFlashings.class,
                () -> e.elevation().openings().stream().collect(Collectors.toMap(Opening::id, p -> of(e.stack(), p))));
        return all.get(o.id());
    }

    private static List<Face> of(Stack stack, Opening o) {
        Box r = o.rect();
        Box around = new Box(r.minX(), r.minY() - NEAR_SILL, r.maxX(), r.minY() + NEAR_SILL);
        Stream<Face> wall = stack.meeting(Surface.WALL, around).stream().filter(f -> isFlashing(f) && isBelow(f.box(), r)
                && HeadFlashings.findOpening(stack.elevation(), f).isEmpty());
        return Stream.concat(wall, pans(stack, o)).sorted(java.util.Comparator.comparingInt(Face::number)).toList();
    }

    /** Those that lie on the sill itself. */
    static List<Face> pans(Evidence e, Opening o) {
        return pans(e.stack(), o).toList();
    }

    private static Stream<Face> pans(Stack stack, Opening o) {
        return stack.on(new Surface(o.id(), Side.SILL)).stream().filter(SillFlashings::isFlashing);
    }

    private static boolean isFlashing(Face f) {
        return f.kind() == MaterialKind.FLASHING;
    }

    private static boolean isBelow(Box f, Box r) {
        return f.minX() < r.maxX() && r.minX() < f.maxX() && Math.abs(f.maxY() - r.minY()) <= NEAR_SILL;
    }
}
