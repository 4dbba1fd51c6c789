package rainlap.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
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
        Map<String, List<Face>> all = e.shared().of(HeadFlashings.class, () -> byOpening(e.elevation(), e.onWall(MaterialKind.FLASHING)));
        return all.getOrDefault(o.id(), List.of());
    }

    /** Asked of the flashings, by the openings they lie near: much else lies near an opening. */
    static Map<String, List<Face>> byOpening(Elevation e, List<Face> flashings) {
        Map<String, List<Face>> out = new HashMap<>();
        for (Face f : flashings) {
            near(e, f).forEach(o -> out.computeIfAbsent(o.id(), k -> new ArrayList<>(2)).add(f));
        }
        return out;
    }

    /** The first opening in the file that this face is a head flashing of. */
    public static Optional<Opening> findOpening(Elevation e, Face f) {
        return f.kind() != MaterialKind.FLASHING ? Optional.empty() : near(e, f).findFirst();
    }

    private static Stream<Opening> near(Elevation e, Face f) {
        return e.openingsMeeting(f.box().grow(NEAR_HEAD)).stream().filter(o -> isAbove(f, o));
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
