package rainlap.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rainlap.geom.Box;
import rainlap.geom.Grid;
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

    /** The head flashings of one opening of the wall, in laying order. */
    public static List<Face> of(Evidence e, Opening o) {
        Map<String, List<Face>> all = e.shared().of(HeadFlashings.class,
                () -> e.elevation().openings().stream().collect(Collectors.toMap(Opening::id, p -> of(e.stack(), p))));
        return all.get(o.id());
    }

    static List<Face> of(Stack stack, Opening o) {
        Box r = o.rect();
        Box around = new Box(r.minX(), r.maxY() - NEAR_HEAD, r.maxX(), r.maxY() + NEAR_HEAD);
        return stack.meeting(Surface.WALL, around).stream().filter(f -> isAbove(f, o)).toList();
    }

    /** The first opening in the file that this face is a head flashing of. */
    public static Optional<Opening> findOpening(Elevation e, Face f) {
        return f.kind() != MaterialKind.FLASHING ? Optional.empty()
                : e.openingsMeeting(f.box().grow(NEAR_HEAD)).stream().filter(o -> isAbove(f, o)).findFirst();
    }

    /** Membranes that run on over an end of a flashing, which must be slit where that is turned up; outermost last. */
    public static List<String> overEnd(Evidence e, String flashing, long tip) {
        return e.onWall(flashing).stream().findFirst().map(own -> {
            long level = (own.box().minY() + own.box().maxY()) / 2;
            return e.stack().meeting(Surface.WALL, new Box(tip, level, tip, level)).stream().filter(f -> f.kind() == MaterialKind.MEMBRANE && e.stack().isOutside(f, own))
                    .filter(f -> f.region().covers(tip - (double) Grid.MM, level) && f.region().covers(tip + (double) Grid.MM, level)).map(f -> f.piece().id()).distinct().toList();
        }).orElse(List.of());
    }

    /** What must be done besides where an end is turned up: {@code ; slit M3 where it stands}, or nothing. */
    public static String slit(Evidence e, String flashing, long tip) {
        List<String> over = overEnd(e, flashing, tip);
        return over.isEmpty() ? "" : "; slit " + PieceWords.list(over) + " where it stands";
    }

    private static boolean isAbove(Face f, Opening o) {
        Box b = f.box(), r = o.rect();
        return f.kind() == MaterialKind.FLASHING && f.surface().isWall()
                && b.minX() < r.maxX() && r.minX() < b.maxX() && Math.abs(b.minY() - r.maxY()) <= NEAR_HEAD;
    }
}
