package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.RuleInfo;

/** What each practice asks of the limits that a rule judges by. */
public final class LimitLines {
    private LimitLines() {}

    /** A block of lines for each limit; none for a rule without limits. */
    public static List<String> of(RuleInfo rule, int width) {
        List<String> out = new ArrayList<>();
        for (Limit limit : rule.limits()) {
            if (!out.isEmpty()) {
                out.add("");
            }
            out.add(limit.plainName() + " (" + limit.id() + ")");
            for (Practice practice : Practices.all()) {
                LimitValue value = practice.get(limit);
                String who = practice.isSilentOn(limit) ? "silent, so " + value.spokenBy() + " speaks: " : "";
                String leadIn = "  " + practice.id() + " ".repeat(Math.max(1, 15 - practice.id().length()));
                out.addAll(Columns.hanging(leadIn, who + value.text() + "; " + value.source().text(), width));
            }
        }
        return List.copyOf(out);
    }
}
