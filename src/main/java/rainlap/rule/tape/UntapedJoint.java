package rainlap.rule.tape;

import java.util.List;
import java.util.function.Consumer;
import rainlap.geom.Intervals;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.JointRule;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;

/** A lap that is to be taped has no tape laid along it. */
public final class UntapedJoint implements JointRule {
    static final RuleInfo INFO = RuleInfo.of("untaped-joint", "joint without tape", RuleInfo.Theme.TAPE, Limit.TAPE_FREE_LAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public String none() {
        return "no lap that tape is asked for whatever its width";
    }

    @Override
    public void judge(Evidence e, Joint j, Consumer<Outcome> tell) {
        if (!MembraneJoints.isLap(j)) {
            return;
        }
        List<Joint.Stretch> bare = j.tapedAlong() ? List.of() : MembraneJoints.parts(e, j, r -> asked(e, j, r));
        bare.forEach(s -> tell.accept(broken(e, j, s)));
        // else too short for a practice that asks for lap or tape: the rule of the lap says so
        if (bare.isEmpty() && (j.tapedAlong() || j.runs().stream().allMatch(r -> MembraneJoints.tapeAsked(j, r, e.practice()).isEmpty()))) {
            tell.accept(Outcome.Holds.of(j));
        }
    }

    private static Intervals asked(Evidence e, Joint j, Run r) {
        return MembraneJoints.tapeAsked(j, r, e.practice()).minus(MembraneJoints.lapOrTape(r, e.practice()));
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s) {
        LimitValue free = e.practice().get(Limit.TAPE_FREE_LAP);
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        String asks = free.isNever() ? "Common practice asks for tape on every joint."
                : Asked.sentence(free, "tape on a lap below " + free.number());
        List<String> loose = MembraneJoints.looseTapes(e, j.outer(), s.line());
        String at = j.kind().inWords() + " of " + outer + " over " + inner + " at " + where.inWords();
        String says = loose.isEmpty() ? "No tape runs along the " + at + ". " : "No tape seals the " + at + ": " + PieceWords.does(loose, "over it is", "over it are") + " not stuck down. ";
        return Finding.of(INFO, where, List.of(outer, inner)).asks(free).measures(s.least())
                .reads(loose.isEmpty() ? "no tape" : "not stuck down", free.isNever() ? "tape" : "tape, or lap of " + free.number()).joint(j.id())
                .says(says + asks, TapeWords.cover(e.practice(), "the joint", 0));
    }
}
