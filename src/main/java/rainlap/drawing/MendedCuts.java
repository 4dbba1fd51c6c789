package rainlap.drawing;

import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.mend.Mending;
import rainlap.rule.Evidence;

/** Which cuts and corners are shown as they should be too, and why others are not. */
final class MendedCuts {
    /** With more defences a weak point is shown as drawn only. */
    private static final int MOST_DEFENCES = 1;
    /** As deep as any reveal, so that nothing is broken off, printed mm. */
    private static final double ALL = 500;

    private MendedCuts() {}

    static boolean isAsked(WeakPoint p) {
        return p.finding().defences() <= MOST_DEFENCES;
    }

    /** Empty where the weak point has defences enough. */
    static Optional<Answer> of(WeakPoint p, Cut cut, Evidence evidence) {
        return isAsked(p) ? Optional.of(shown(Mending.of(evidence, p.finding(), cut.at(), cut.plumb()), cut, evidence)) : Optional.empty();
    }

    static Optional<Answer> ofCorner(WeakPoint p, Evidence evidence) {
        return isAsked(p) ? Optional.of(Mending.ofCorner(evidence, p.finding())) : Optional.empty();
    }

    static Optional<Answer> ofView(WeakPoint p, Evidence evidence) {
        return isAsked(p) ? Optional.of(Mending.ofView(evidence, p.finding())) : Optional.empty();
    }

    /** A cut that looks the same as before shows nothing. */
    private static Answer shown(Answer answer, Cut cut, Evidence evidence) {
        boolean same = answer.mended().map(Mended::evidence).filter(e -> strips(e, cut).equals(strips(evidence, cut))).isPresent();
        return same ? new Answer(Optional.empty(), "what changes lies beside this cut. " + String.join(" ", answer.mended().get().what())) : answer;
    }

    private static String strips(Evidence e, Cut cut) {
        return new SectionStrands(CutStack.of(e, cut, true), new SectionGrid(cut.plumb(), 5, 0, 0, cut.centre()), ALL).marks().toString();
    }
}
