package rainlap.rule.water;

import java.util.List;
import java.util.stream.Collectors;
import rainlap.water.Step;

/** A way in one sentence. */
public final class Steps {
    /** Ways of more steps are told by their first and last. */
    private static final int TOLD = 6;

    private Steps() {}

    /** {@code rain wets M2; runs in behind M1; drops onto the frame}. */
    public static String told(List<Step> path) {
        if (path.size() <= TOLD) {
            return path.stream().map(Step::why).collect(Collectors.joining("; "));
        }
        return path.stream().limit(2).map(Step::why).collect(Collectors.joining("; ")) + "; and so on, until it "
                + path.stream().skip(path.size() - 3).map(Steps::ofIt).collect(Collectors.joining("; "));
    }

    /** A reason with the water as what is spoken of: {@code is lifted by wind under M1}. */
    private static String ofIt(Step s) {
        return switch (s.kind()) {
            case LIFT_UNDER, LIFT_ON -> s.why().replaceFirst("^wind lifts it", "is lifted by wind");
            case PUSH_UNDER, PUSH_ON -> s.why().replaceFirst("^wind pushes it", "is pushed by wind");
            default -> s.why();
        };
    }
}
