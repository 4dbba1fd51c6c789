package rainlap.rule;

import java.util.List;
import rainlap.geom.Box;
import rainlap.stack.Stack;
import rainlap.water.OnBatten;

/** Where water that comes down onto a batten stays on it: on the upper side of one that lies level or falls to no end, not on the end of one that stands. */
public final class LevelBattens {
    private LevelBattens() {}

    public static List<OnBatten> pools(Stack stack, List<OnBatten> all) {
        return all.stream().filter(o -> (o.level() || o.held()) && stack.meeting(o.surface(), Box.of(o.where())).stream()
                .anyMatch(f -> f.piece().id().equals(o.batten()) && f.box().width() > f.box().height())).toList();
    }
}
