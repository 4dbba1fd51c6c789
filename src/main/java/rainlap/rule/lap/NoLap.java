package rainlap.rule.lap;

import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.joint.Direction;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.LocalDefences;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;

/**
 * What butts and gaps share: edges that face each other with nothing beneath. Tape over them does not make a lap of them. The upper edge of
 * a head flashing, over which a flap is to lap, is left to the rules of openings; a butt at the fold of a building corner, where nothing
 * goes round, to the rules of corners.
 */
final class NoLap {
    private final RuleInfo info;
    private final JointKind kind;

    NoLap(RuleInfo info, JointKind kind) {
        this.info = info;
        this.kind = kind;
    }

    Stream<Outcome> check(Evidence e) {
        List<Joint> joints = e.joints().all().stream().filter(j -> j.outer().piece().material().kind() != MaterialKind.CLADDING)
                .filter(j -> e.isOnThisWall(j.surface(), j.line())).toList();
        if (joints.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no two sheets meet"));
        }
        return joints.stream().flatMap(j -> j.kind() == kind ? judge(e, j)
                : Stream.of(Outcome.Holds.of(j.outer().piece().id(), j.inner().piece().id())));
    }

    private Stream<Outcome> judge(Evidence e, Joint j) {
        boolean outer = HeadFlashings.findOpening(e.elevation(), j.outer()).isPresent();
        boolean inner = HeadFlashings.findOpening(e.elevation(), j.inner()).isPresent();
        return MembraneJoints.parts(e, j, r -> outer && r.faces().facesUp() || inner && r.faces().facesDown()
                || kind == JointKind.BUTT && isAtCorner(e, r) ? Intervals.NONE : Intervals.of(0, r.length()))
                .stream().map(s -> broken(e, j, s));
    }

    private static boolean isAtCorner(Evidence e, Run r) {
        EdgeFrame edge = EdgeFrame.of(r.line());
        return e.buildingCorners().stream().map(c -> c.edge().line())
                .anyMatch(c -> edge.t(c.a().x(), c.a().y()) == 0 && edge.t(c.b().x(), c.b().y()) == 0);
    }

    private Outcome broken(Evidence e, Joint j, Joint.Stretch s) {
        boolean taped = s.taped();
        LimitValue required = required(e.practice(), j, taped);
        String width = LengthText.mm(j.gap());
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        return Finding.of(info, where, List.of(j.outer().piece().id(), j.inner().piece().id())).asks(required).measures(j.gap())
                .reads((kind == JointKind.BUTT ? "edges meet" : "gap of " + width) + (taped ? ", taped" : ""),
                        "lap of " + required.number())
                .joint(j.id()).defences(LocalDefences.of(j, 0, taped, e.elevation().exposure(), e.practice()))
                .says(says(e.practice(), j, where, taped, required), remedy(j, required));
    }

    /** The lap asked along this edge; common practice's where the practice would be content with the tape that is there. */
    private static LimitValue required(Practice practice, Joint j, boolean taped) {
        LimitValue own = practice.get(limit(j));
        return own.orTaped() && taped ? Practices.common().get(limit(j)) : own;
    }

    private static Limit limit(Joint j) {
        Direction d = j.runs().get(0).faces();
        return Math.abs(d.down()) >= Math.abs(d.across()) ? Limit.COURSE_LAP : Limit.END_LAP;
    }

    private String says(Practice practice, Joint j, Place where, boolean taped, LimitValue required) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        String what = kind == JointKind.BUTT ? outer + " and " + inner + " meet edge to edge at "
                : outer + " and " + inner + " stand " + LengthText.mm(j.gap()) + " apart at ";
        String tape = taped ? "; only the tape over it keeps water out. " : ". Nothing lies beneath the joint. ";
        String content = practice.get(limit(j)).orTaped() && taped ? " " + practice.id() + " would be content with the tape." : "";
        return what + where.inWords() + tape + Asked.sentence(required, "a lap of " + required.number()) + content;
    }

    private static String remedy(Joint j, LimitValue required) {
        String strip = LengthText.mmUp(j.gap() + 2 * required.hundredths());
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Direction d = j.runs().get(0).faces();
        if (limit(j) == Limit.END_LAP) {
            return "Slip a strip " + strip + " wide in behind " + outer + " and over " + inner + ", so that it laps each by "
                    + required.number() + ", and tape its edges.";
        }
        String upper = d.down() > 0 ? outer : inner, lower = d.down() > 0 ? inner : outer;
        return "Slip a strip " + strip + " high in behind " + upper + " and over " + lower + ", so that it laps each by "
                + required.number() + ", and tape its edges.";
    }
}
