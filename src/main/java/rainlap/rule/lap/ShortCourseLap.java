package rainlap.rule.lap;

import rainlap.practice.Limit;
import rainlap.rule.RuleInfo;

/** An upper membrane laps the one below it by less than the practice asks. */
public final class ShortCourseLap extends ShortLap {
    static final RuleInfo INFO = RuleInfo.of("short-course-lap", "course lap too short", RuleInfo.Theme.LAPS, Limit.COURSE_LAP);

    public ShortCourseLap() {
        super(INFO, Limit.COURSE_LAP, (outer, inner, missing, required) -> "Slide " + outer + " down or " + inner
                + " up by at least " + missing + ", or slip a strip in behind " + outer + " and over " + inner + " that laps each by "
                + required);
    }
}
