package rainlap.rule;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/**
 * Which flashings are head flashings: those on the wall that reach across part of an opening's width and whose lower edge lies within
 * {@link #NEAR_HEAD} of its head line, above or below. A file does not say what a flashing is for, so its place does.
 */
public final class HeadFlashings {
    /** 100 mm. Our own choice: common practice, no source. */
    public static final long NEAR_HEAD = 10_000;

    private HeadFlashings() {}

    /** The head flashings of one opening, in laying order. */
    public static List<Face> of(Stack stack, Opening o) {
        Box r = o.rect();
        Box around = new Box(r.minX(), r.maxY() - NEAR_HEAD, r.maxX(), r.maxY() + NEAR_HEAD);
        return stack.meeting(Surface.WALL, around).stream().filter(f -> isAbove(f, o)).toList();
    }

    /** The first opening in the file that this face is a head flashing of. */
    public static Optional<Opening> findOpening(Elevation e, Face f) {
        return f.piece().material().kind() != MaterialKind.FLASHING ? Optional.empty()
                : e.openings().stream().filter(o -> isAbove(f, o)).findFirst();
    }

    private static boolean isAbove(Face f, Opening o) {
        Box b = f.box(), r = o.rect();
        return f.piece().material().kind() == MaterialKind.FLASHING && f.surface().isWall()
                && b.minX() < r.maxX() && r.minX() < b.maxX() && Math.abs(b.minY() - r.maxY()) <= NEAR_HEAD;
    }
}
