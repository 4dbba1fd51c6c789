package rainlap.rule.lap;

import java.util.stream.Stream;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** An upper membrane laps the one below it by less than the practice asks. */
public final class ShortCourseLap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-course-lap", "course lap too short", RuleInfo.Theme.LAPS, Limit.COURSE_LAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return new ShortLap(INFO, Limit.COURSE_LAP, (outer, inner, missing, required) -> "Slide " + outer + " down or " + inner
                + " up by at least " + missing + ", or slip a strip in behind " + outer + " and over " + inner + " that laps each by "
                + required).check(e);
    }
}
