package rainlap.rule.lap;

import java.util.List;
import java.util.function.Consumer;
import rainlap.geom.Intervals;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.JointRule;
import rainlap.rule.MembraneJoints;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;

/** What the two rules of short laps share: every stretch below the limit is a finding with its own ends and its own least lap. */
abstract class ShortLap implements JointRule {
    private final RuleInfo info;
    private final Limit limit;
    private final Remedy remedy;

    /** How to mend a lap of one piece over another that is short by so much. */
    interface Remedy {
        String of(String outer, String inner, String missing, String required);
    }

    ShortLap(RuleInfo info, Limit limit, Remedy remedy) {
        this.info = info;
        this.limit = limit;
        this.remedy = remedy;
    }

    @Override
    public RuleInfo info() {
        return info;
    }

    @Override
    public String none() {
        return "no membrane has " + (limit == Limit.COURSE_LAP ? "a course lap" : "an end lap") + " over another";
    }

    @Override
    public void judge(Evidence e, Joint j, Consumer<Outcome> tell) {
        if (!MembraneJoints.isLap(j) || !isAsked(j)) {
            return;
        }
        LimitValue required = e.practice().get(limit);
        boolean tapeInstead = required.orTaped() && (j.sealed() || j.tapedAlong());
        List<Joint.Stretch> low = tapeInstead ? List.of() : MembraneJoints.parts(e, j, r -> below(r, required));
        if (low.isEmpty()) {
            tell.accept(Outcome.Holds.of(j));
        }
        low.forEach(s -> tell.accept(broken(e, j, s, required)));
    }

    private boolean isAsked(Joint j) {
        for (Run r : j.runs()) {
            if (limit == Limit.COURSE_LAP ? r.faces().facesDown() : r.faces().facesSideways()) {
                return true;
            }
        }
        return false;
    }

    private static Intervals below(Run r, LimitValue required) {
        Intervals low = MembraneJoints.below(r, required);
        return required.orTaped() ? low.minus(r.cover().taped()) : low;
    }

    private Outcome broken(Evidence e, Joint j, Joint.Stretch s, LimitValue required) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        String lap = LengthText.mmBeside(s.least(), required.hundredths());
        long mended = MendSizes.lap(e, j, required.hundredths(), limit == Limit.COURSE_LAP);
        String missing = LengthText.mmUp(mended - s.least());
        String orTape = required.orTaped() ? ", or tape the joint" : "";
        return Finding.of(info, where, List.of(outer, inner)).asks(required).measures(s.least())
                .reads(lap, Asked.briefly(required)).joint(j.id())
                .says(outer + " laps " + inner + " by " + lap + (required.orTaped() ? ", without tape," : "") + " at " + where.inWords() + ". "
                        + Asked.sentence(required),
                        how(e, j, s, missing, LengthText.mm(mended) + (mended > MendSizes.up(required.hundredths()) ? " (wind drives water that far)" : "")) + orTape + ".");
    }

    /** A lap that must be turned round anyway is made longer then. */
    private String how(Evidence e, Joint j, Joint.Stretch s, String missing, String mended) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        return limit == Limit.END_LAP && LapTowardsTravel.isOpen(e, j)
                ? "Lay " + inner + " over " + outer + " instead, for it opens the way the building travels, and make the lap at least " + mended + " wide" + LapTowardsTravel.tape(e, s)
                : remedy.of(outer, inner, missing, mended);
    }
}
