package rainlap.drawing;

import java.util.Optional;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.mend.Answer;
import rainlap.rule.Evidence;

/** What a page shows of weak points beside their places: a cut or a close view as drawn, and the same as it should be. */
public final class PageSections {
    private final Evidence evidence;

    public PageSections(CheckResult result) {
        this.evidence = result.evidence();
    }

    /**
     * A weak point's place as it should be.
     *
     * @param picture empty where there is none to show
     * @param words what was changed, or why there is none
     */
    public record Should(Optional<SectionPicture> picture, String words) {}

    /** A section where it meets the water best, or a place seen close to. */
    SectionPicture drawn(WeakPoint p) {
        return CloseUp.of(p, evidence).map(c -> cell(c).picture()).orElseGet(() -> SectionView.picture(plan(p), evidence));
    }

    private static CloseUpCell cell(CloseUp view) {
        return new CloseUpCell(view, "", Optional.empty());
    }

    private SectionPlan plan(WeakPoint p) {
        return new SectionPlanner(evidence).plans(p, SectionPlanes.SHARES).get(0);
    }

    /** Whether it is shown as it should be: with few defences. */
    static boolean isMended(WeakPoint p) {
        return MendedCuts.isAsked(p);
    }

    /** The same as it should be, checked again; it takes time. Empty where nothing is shown as drawn, or nothing is to be mended. */
    public Optional<Should> should(WeakPoint p) {
        Optional<CloseUp> closeUp = CloseUp.of(p, evidence);
        if (closeUp.isPresent()) {
            return closeUp.get().answer().map(a -> should(a, a.mended().map(m -> cell(closeUp.get()).picture(m))));
        }
        SectionPlan plan = plan(p);
        return MendedCuts.of(p, plan.cut(), evidence).map(a -> should(a, a.mended().map(m -> SectionView.picture(plan, m))));
    }

    private static Should should(Answer answer, Optional<SectionPicture> picture) {
        return new Should(picture, answer.sentence().orElseGet(() -> String.join(" ", answer.mended().orElseThrow().what())));
    }
}
