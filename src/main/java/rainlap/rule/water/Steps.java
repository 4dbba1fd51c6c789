package rainlap.rule.water;

import java.util.List;
import java.util.stream.Collectors;
import rainlap.water.Step;

/** What kind of step it is, as its reason tells, and a way in one sentence. */
public final class Steps {
    /** Ways of more steps are told by their first and last. */
    private static final int TOLD = 6;

    private Steps() {}

    static boolean isOffALedge(Step s) {
        return s.why().startsWith("runs off the end of ");
    }

    static boolean isOverrun(Step s) {
        return s.why().startsWith("overruns the lap ");
    }

    static boolean isAlongAPipe(Step s) {
        return s.why().startsWith("runs along the pipe ");
    }

    static boolean isLift(Step s) {
        return s.why().startsWith("wind lifts it under ");
    }

    static boolean isPush(Step s) {
        return s.why().startsWith("wind pushes it sideways under ");
    }

    /** {@code rain wets M2; runs in behind M1; drops onto the frame}. */
    public static String told(List<Step> path) {
        List<String> whys = path.stream().map(Step::why).toList();
        return whys.size() <= TOLD ? String.join("; ", whys) : whys.subList(0, 2).stream().collect(Collectors.joining("; ")) + "; and so on, until it "
                + whys.subList(whys.size() - 3, whys.size()).stream().map(w -> w.replaceFirst("^wind (lifts|pushes) it", "is $1 by wind").replace("is lifts", "is lifted").replace("is pushes", "is pushed"))
                        .collect(Collectors.joining("; "));
    }
}
