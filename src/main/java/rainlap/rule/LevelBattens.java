package rainlap.rule;

import java.util.List;
import rainlap.geom.Box;
import rainlap.stack.Stack;
import rainlap.water.OnBatten;

/** Where water that comes down onto a batten stays on it: on the upper side of one that lies level, not on the end of one that stands. */
public final class LevelBattens {
    private LevelBattens() {}

    public static List<OnBatten> pools(Stack stack, List<OnBatten> all) {
        return all.stream().filter(o -> isLevel(o) && stack.meeting(o.surface(), Box.of(o.where())).stream()
                .anyMatch(f -> f.piece().id().equals(o.batten()) && f.box().width() > f.box().height())).toList();
    }

    /** Within 5 mm in a metre. */
    private static boolean isLevel(OnBatten o) {
        Box b = Box.of(o.where());
        return b.height() * 200 <= b.width();
    }
}
