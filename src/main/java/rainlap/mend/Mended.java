package rainlap.mend;

import java.util.List;
import java.util.stream.Stream;
import rainlap.rule.Evidence;

/**
 * The neighbourhood of a weak point, mended.
 *
 * @param what was changed, a sentence each, none twice
 * @param added ids of pieces that the wall as drawn does not have
 */
public record Mended(Evidence evidence, List<String> what, List<String> added) {
    public Mended {
        what = List.copyOf(what);
        added = List.copyOf(added);
    }

    /** With more of it changed. */
    Mended with(Edited e) {
        return new Mended(Evidence.of(evidence.elevation().withPieces(e.pieces()), evidence.stage(), evidence.practice()),
                Stream.concat(what.stream(), e.what().stream()).distinct().toList(), Stream.concat(added.stream(), e.added().stream()).toList());
    }
}
