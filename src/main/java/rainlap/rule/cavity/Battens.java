package rainlap.rule.cavity;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rainlap.geom.Box;
import rainlap.material.MaterialKind;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.stack.Face;

/** What keeps the cladding off the wrap. */
final class Battens {
    private Battens() {}

    /** Those that a sheet rests on: of battens that cross behind it, the outermost. */
    static List<Face> under(Evidence e, Face sheet) {
        List<Face> behind = Cladding.behind(e, sheet, MaterialKind.BATTEN);
        return behind.stream().filter(b -> behind.stream()
                .noneMatch(o -> o != b && e.stack().isOutside(o, b) && o.region().overlaps(b.region()))).toList();
    }

    /** How far the front of a batten stands off the wrap, mm; empty where a depth is not stated. */
    static OptionalDouble standOff(Evidence e, Face batten) {
        return standOff(e, batten, new HashSet<>());
    }

    private static OptionalDouble standOff(Evidence e, Face batten, Set<Face> above) {
        above.add(batten); // battens may lie over one another in a ring
        OptionalDouble own = batten.piece().material().profile().depthMm();
        double most = 0;
        for (Face b : Cladding.behind(e, batten, MaterialKind.BATTEN)) {
            OptionalDouble below = above.contains(b) ? OptionalDouble.of(0) : standOff(e, b, new HashSet<>(above));
            if (below.isEmpty()) {
                return below;
            }
            most = Math.max(most, below.getAsDouble());
        }
        return own.isEmpty() ? own : OptionalDouble.of(own.getAsDouble() + most);
    }

    /** Whether it stands rather than lies. */
    static boolean isUpright(Face batten) {
        Box b = batten.box();
        return b.height() > b.width();
    }

    /** Whether water and air pass through it: a strip of mesh or one that is perforated. */
    static boolean isMesh(Face f) {
        return f.piece().material().durability().mesh().orElse(false);
    }
}
