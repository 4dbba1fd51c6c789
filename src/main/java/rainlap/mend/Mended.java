package rainlap.mend;

import java.util.List;
import rainlap.rule.Evidence;

/**
 * The neighbourhood of a weak point, mended.
 *
 * @param what was changed, a sentence each
 * @param added ids of pieces that the wall as drawn does not have
 */
public record Mended(Evidence evidence, List<String> what, List<String> added) {
    public Mended {
        what = List.copyOf(what);
        added = List.copyOf(added);
    }
}
