package rainlap.drawing;

import java.util.Optional;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.joint.OpeningCorner;
import rainlap.mend.Answer;
import rainlap.rule.Evidence;

/** What a page shows of weak points beside their places: a cut or a corner as drawn, and the same as it should be. */
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

    /** A section where it meets the water best, or a corner in oblique view; empty where a cut shows nothing. */
    Optional<SectionPicture> drawn(WeakPoint p) {
        return CornerView.corner(p, evidence).map(c -> new CornerCell(p, "", evidence, c).picture()).or(() -> plan(p).map(plan -> SectionView.picture(plan, evidence)));
    }

    private Optional<SectionPlan> plan(WeakPoint p) {
        return new SectionPlanner(evidence).plans(p, SectionPlanes.SHARES).stream().findFirst();
    }

    /** Whether it is shown as it should be: with a section, and few defences. */
    static boolean isMended(WeakPoint p, Optional<SectionPicture> drawn) {
        return drawn.isPresent() && MendedCuts.isAsked(p);
    }

    /** The same as it should be, checked again; it takes time. Empty where nothing is shown as drawn, or nothing is to be mended. */
    public Optional<Should> should(WeakPoint p) {
        Optional<OpeningCorner> corner = CornerView.corner(p, evidence);
        if (corner.isPresent()) {
            return MendedCuts.ofCorner(p, evidence).map(a -> should(a, a.mended().map(m -> new CornerCell(p, "", evidence, corner.get()).picture(m))));
        }
        return plan(p).flatMap(plan -> MendedCuts.of(p, plan.cut(), evidence).map(a -> should(a, a.mended().map(m -> SectionView.picture(plan, m)))));
    }

    private static Should should(Answer answer, Optional<SectionPicture> picture) {
        return new Should(picture, answer.sentence().orElseGet(() -> String.join(" ", answer.mended().orElseThrow().what())));
    }
}
