package rainlap.rule.face;

import java.util.Optional;
import java.util.stream.Stream;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** A sheet laps the one that goes on from its end by less than the practice asks. */
public final class ShortSheetEndLap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-sheet-end-lap", "end lap of sheets too short", RuleInfo.Theme.FACE, Limit.SHEET_END_LAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return new ShortSheetLap(INFO, false).check(e, (j, run) -> Optional.of(e.practice().get(Limit.SHEET_END_LAP)));
    }
}
