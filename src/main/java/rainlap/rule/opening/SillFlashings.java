package rainlap.rule.opening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        Map<String, List<Face>> all = e.shared().of(SillFlashings.class, () -> byOpening(e));
        return all.getOrDefault(o.id(), List.of());
    }

    private static Map<String, List<Face>> byOpening(Evidence e) {
        Map<String, List<Face>> out = new HashMap<>();
        for (Face f : e.onWall(MaterialKind.FLASHING)) {
            for (Opening o : e.elevation().openingsMeeting(f.box().grow(NEAR_SILL))) {
                if (isBelow(f.box(), o.rect()) && HeadFlashings.findOpening(e.elevation(), f).isEmpty()) {
                    out.computeIfAbsent(o.id(), k -> new ArrayList<>(2)).add(f);
                }
            }
        }
        e.elevation().openings().forEach(o -> pans(e.stack(), o).forEach(f -> out.computeIfAbsent(o.id(), k -> new ArrayList<>(2)).add(f)));
        out.values().forEach(all -> all.sort(Comparator.comparingInt(Face::number)));
        return out;
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
