package rainlap.rule.tape;

import java.util.List;
import java.util.function.Consumer;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.JointRule;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;

/** A joint is taped, but the tape leaves a stretch of it uncovered. */
public final class TapeMissed implements JointRule {
    static final RuleInfo INFO = RuleInfo.of("tape-missed", "stretch without tape", RuleInfo.Theme.TAPE, Limit.TAPE_FREE_LAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public String none() {
        return "no joint is taped";
    }

    @Override
    public void judge(Evidence e, Joint j, Consumer<Outcome> tell) {
        if (j.kind() == JointKind.REVERSE_LAP || !j.tapedAlong() || !MembraneJoints.is(j)) {
            return;
        }
        List<Joint.Stretch> missed =
                MembraneJoints.parts(e, j, r -> MembraneJoints.tapeAsked(j, r, e.practice()).minus(r.cover().taped()));
        if (missed.isEmpty()) {
            tell.accept(Outcome.Holds.of(j));
        }
        missed.forEach(s -> tell.accept(broken(e, j, s)));
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s) {
        LimitValue free = e.practice().get(Limit.TAPE_FREE_LAP);
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        long length = Math.round(s.lengthMm() * 100);
        String asks = free.isNever() ? "Common practice asks for tape on the whole of every joint."
                : Asked.sentence(free, "tape on the whole of a joint lapped by less than " + free.number());
        return Finding.of(INFO, where, List.of(outer, inner)).saidBy(free).measures(length)
                .reads(LengthText.mm(length) + " missed", "taped from end to end").joint(j.id())
                .says("The tape on the " + j.kind().inWords() + " of " + outer + " and " + inner + " leaves "
                        + LengthText.mm(length) + " uncovered at " + where.inWords() + ". " + asks,
                        TapeWords.cover(e.practice(), "that stretch", j.gap()));
    }
}
