package rainlap.rule;

import java.util.List;
import rainlap.geom.Box;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.water.OnBatten;

/** Where water that comes down onto a batten stays on it: on the upper side of one that lies level or falls to no end, not on the end of one that stands, nor on one that other battens hold off the wrap. */
public final class LevelBattens {
    private LevelBattens() {}

    public static List<OnBatten> pools(Stack stack, List<OnBatten> all) {
        return all.stream().filter(o -> (o.level() || o.held()) && stack.meeting(o.surface(), Box.of(o.where())).stream()
                .anyMatch(f -> f.piece().id().equals(o.batten()) && f.box().width() > f.box().height() && !isPackedOff(stack, f))).toList();
    }

    /** Whether a batten lies on another one, and so with a gap behind it. */
    public static boolean isPackedOff(Stack stack, Face batten) {
        return stack.meeting(batten.surface(), batten.box()).stream().anyMatch(f -> f != batten && f.kind() == MaterialKind.BATTEN
                && stack.isOutside(batten, f) && f.region().overlaps(batten.region()));
    }
}
