package rainlap.rule.lap;

import java.util.List;
import java.util.function.Consumer;
import rainlap.geom.Intervals;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.JointRule;
import rainlap.rule.MembraneJoints;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.stack.Face;

/** The upper edge of an outer piece lies open on an inner one: water that runs down the inner one goes in behind the edge. */
public final class ReverseLap implements JointRule {
    static final RuleInfo INFO = RuleInfo.of("reverse-lap", "reverse lap", RuleInfo.Theme.LAPS);
    private static final Source SOURCE = new Source("FEMA P-499, Fact Sheet 1.9", "12/10", "page 2", Known.PUBLISHED);
    private static final String WHY = "Laps must never turn an open seam towards water that runs down ("
            + "FEMA P-499, Fact Sheet 1.9, page 2).";

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public String none() {
        return "no piece laps another up or down the wall";
    }

    @Override
    public void judge(Evidence e, Joint j, Consumer<Outcome> tell) {
        boolean upper = j.kind() == JointKind.REVERSE_LAP && !isHeadFlashing(e, j) && !isCladding(j) && !isOnBattens(e, j);
        List<Outcome> open = upper ? open(e, j) : List.of();
        open.forEach(tell);
        if (upper && open.isEmpty() || j.kind() == JointKind.COURSE_LAP && MembraneJoints.is(j)) {
            tell.accept(Outcome.Holds.of(j));
        }
    }

    /** A head flashing in front of the membrane is the business of the rules of openings. */
    private static boolean isHeadFlashing(Evidence e, Joint j) {
        return HeadFlashings.findOpening(e.elevation(), j.outer()).isPresent();
    }

    private static boolean isCladding(Joint j) {
        return j.outer().kind() == MaterialKind.CLADDING;
    }

    /** A flashing on the battens stands off the wrap, and what runs down the wrap goes on behind it. */
    private static boolean isOnBattens(Evidence e, Joint j) {
        return j.outer().kind() == MaterialKind.FLASHING && Cladding.isOnBatten(e, j.outer());
    }

    private static List<Outcome> open(Evidence e, Joint j) {
        boolean membrane = MembraneJoints.isMembrane(j.outer());
        return MembraneJoints.parts(e, j, r -> membrane ? exposed(r) : r.uncovered()).stream()
                .map(s -> membrane ? membrane(e, j, s) : openTop(e, j, s)).toList();
    }

    /** What lies beneath a further sheet meets no water that runs down. */
    private static Intervals exposed(Run r) {
        return Intervals.of(0, r.length()).minus(r.hidden());
    }

    private static Outcome membrane(Evidence e, Joint j, Joint.Stretch s) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id(), lap = LengthText.mm(s.least());
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        String tape = s.taped() ? " Only the tape over it keeps water out." : isTaped(j, s) ? " Tape over most of it keeps water out there alone." : "";
        String what = isPatch(j) ? "The upper edge of " + outer + " lies on " + inner
                : outer + " lies over the foot of " + inner + " by " + lap;
        return start(e, j, s, where, s.taped()).reads(lap + " reversed" + (s.taped() ? ", taped" : isTaped(j, s) ? ", mostly taped" : ""), "upper over lower")
                .says(what + " at " + where.inWords() + ": water that runs down " + inner + " goes in behind " + outer + "." + tape + " "
                        + WHY, isPatch(j) ? patchRemedy(e, j, s) : footRemedy(e, j, s));
    }

    /** Whether tape was laid over it or over most of it; what only crosses it covers less. */
    private static boolean isTaped(Joint j, Joint.Stretch s) {
        double taped = j.runs().stream().mapToDouble(r -> r.cover().taped().total()).sum() / 100;
        return s.taped() || 2 * taped >= j.lengthMm();
    }

    private static Finding.Builder start(Evidence e, Joint j, Joint.Stretch s, Place where, boolean taped) {
        return Finding.of(INFO, where, List.of(j.outer().piece().id(), j.inner().piece().id())).source(SOURCE).measures(s.least())
                .joint(j.id());
    }

    /** Whether the inner piece has no foot beneath the outer one: it runs on below it. */
    private static boolean isPatch(Joint j) {
        return foot(j.inner()) <= foot(j.outer());
    }

    /** How low a face reaches on its surface: a jamb's u runs upwards, everywhere else y or v does. */
    private static long foot(Face f) {
        return f.surface().side().isJamb() ? f.box().minX() : f.box().minY();
    }

    private static String footRemedy(Evidence e, Joint j, Joint.Stretch s) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        long required = e.practice().get(Limit.COURSE_LAP).hundredths();
        long mended = MendSizes.lap(e, j, required, true);
        TapeOver tape = TapeOver.of(e, j, s);
        String draw = tape.before("draw") + " the foot of " + inner + " out over " + outer + tape.under();
        return s.least() >= mended ? draw + "; it then laps " + LengthText.mm(s.least()) + ", "
                + LengthText.mm(required) + " is asked for." + (isTapeAsked(e, s.least()) ? tape.tapeJoint() : "")
                : draw + ". It then laps only " + LengthText.mmBeside(s.least(), mended) + ": slip a strip in behind it and over "
                        + outer + " that laps each by " + LengthText.mm(mended) + "." + (isTapeAsked(e, mended) ? tape.tapeJoint() : "");
    }

    private static boolean isTapeAsked(Evidence e, long lap) {
        return lap < e.practice().get(Limit.TAPE_FREE_LAP).hundredths();
    }

    /** A patch is cut in: it goes up behind the sheet by one lap, and covers what lies below the cut by another. */
    private static String patchRemedy(Evidence e, Joint j, Joint.Stretch s) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        long required = e.practice().get(Limit.COURSE_LAP).hundredths();
        return Patch.of(j, required).larger() + TapeOver.of(e, j, s).before("cut") + " " + inner + " level, " + LengthText.mm(required) + " below the upper edge of " + outer
                + ", and tuck that edge in behind it; tape the cut and its ends.";
    }

    /** The upper edge of a collar, a loose strip or a flashing that no tape covers. */
    private static Outcome openTop(Evidence e, Joint j, Joint.Stretch s) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        String cover = e.practice().get(Limit.TAPE_COVER).number();
        boolean strip = j.outer().kind() == MaterialKind.TAPE;
        String mend = strip ? "Stick " + outer + " down over its whole face, or cover its upper edge with a tape "
                : "Tuck the upper edge of " + outer + " in behind " + inner + " by "
                        + e.practice().get(Limit.COURSE_LAP).number() + ", or cover the whole of it with a tape ";
        return start(e, j, s, where, false).reads("upper edge open", "tucked in or taped")
                .says("The upper edge of " + outer + " lies open on " + inner + " at " + where.inWords() + ": water that runs down "
                        + inner + " goes in behind it. " + WHY, mend + "that runs on by " + cover + " above and below the edge.");
    }
}
