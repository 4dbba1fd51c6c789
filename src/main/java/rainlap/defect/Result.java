package rainlap.defect;

import java.util.List;
import java.util.Optional;
import rainlap.rule.Place;
import rainlap.water.Step;

/**
 * What the water does that comes in by one hole at one pressure.
 *
 * @param frame where it comes onto the frame; empty if it does not
 * @param path its way there from the hole on; empty where the hole itself lays the frame bare
 * @param pools the level battens it comes to lie on, by id
 * @param asDrawn whether the same is wet in rain without the hole: the frame where it comes onto it, else the batten, else the frame behind the hole
 */
public record Result(Pressure pressure, Optional<Place> frame, List<Step> path, List<String> pools, boolean asDrawn) {
    public Result {
        path = List.copyOf(path);
        pools = List.copyOf(pools);
    }

    /** Whether another pressure gives the same. */
    public boolean saysTheSame(Result o) {
        return frame.equals(o.frame) && path.equals(o.path) && pools.equals(o.pools) && asDrawn == o.asDrawn;
    }

    /** Whether it neither reaches the frame nor pools on a batten. */
    public boolean holds() {
        return frame.isEmpty() && pools.isEmpty();
    }
}
