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
    private static final int ID_COLUMNS = 15;

    private LimitLines() {}

    /** A block of lines for each limit; none for a rule without limits. */
    public static List<String> of(RuleInfo rule, int width) {
        List<String> out = new ArrayList<>();
        for (Limit limit : rule.limits()) {
            if (!out.isEmpty()) {
                out.add("");
            }
            out.add(limit.plainName() + " (" + limit.id() + ")");
            List<String> silent = new ArrayList<>();
            for (Practice practice : Practices.all()) {
                if (practice.isSilentOn(limit)) {
                    silent.add(practice.id());
                } else {
                    LimitValue value = practice.get(limit);
                    out.addAll(Columns.hanging(leadIn(practice.id()), value.text() + "; " + value.source().text(), width));
                }
            }
            if (!silent.isEmpty()) {
                out.addAll(Columns.hanging(leadIn("silent"), String.join(", ", silent) + ": there " + Practices.COMMON + " speaks", width));
            }
        }
        return List.copyOf(out);
    }

    private static String leadIn(String word) {
        return "  " + word + " ".repeat(Math.max(1, ID_COLUMNS - word.length()));
    }
}
