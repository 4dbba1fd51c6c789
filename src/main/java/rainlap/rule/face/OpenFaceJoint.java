package rainlap.rule.face;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** Cladding sheets meet edge to edge, or stand a little apart, with neither trim nor tape over or behind the joint. */
public final class OpenFaceJoint implements Rule {
    static final RuleInfo INFO = RuleInfo.of("open-face-joint", "open joint of cladding", RuleInfo.Theme.FACE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return SheetJoints.judge(e, SheetJoints.open(e).toList(), "no two sheets of cladding meet edge to edge or stand a little apart", j -> judge(e, j));
    }

    private static Stream<Outcome> judge(Evidence e, Joint j) {
        List<Joint.Stretch> open = MembraneJoints.parts(e, j, r -> Intervals.of(0, r.length()).minus(r.hidden()).minus(covered(e, r)));
        return open.isEmpty() ? Stream.of(SheetJoints.holds(j)) : open.stream().map(s -> broken(e, j, s));
    }

    /** Where something runs on past both edges of the joint. */
    private static Intervals covered(Evidence e, Run r) {
        EdgeFrame near = EdgeFrame.of(r.line());
        long gap = Math.round(r.lap().greatest());
        EdgeFrame far = gap == 0 ? near : EdgeFrame.of(new Segment(near.at(0, -gap), near.at(near.length(), -gap)));
        List<Intervals> out = new ArrayList<>();
        for (Face f : e.stack().meeting(Surface.WALL, r.line().box().grow(gap + 1))) {
            if (closes(e, f)) {
                out.add(f.across(near, 0, near.length()).intersect(f.across(far, 0, far.length())));
            }
        }
        return Intervals.unionOf(out);
    }

    /** A trim; or a tape or flashing that lies on a batten, not one of the wrap behind them. */
    private static boolean closes(Evidence e, Face f) {
        return Cladding.isOf(f, MaterialKind.TRIM) || (Cladding.isOf(f, MaterialKind.TAPE) || Cladding.isOf(f, MaterialKind.FLASHING))
                && Cladding.isOnBatten(e, f);
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        boolean butt = j.kind() == JointKind.BUTT;
        long gap = j.gap();
        String how = butt ? outer + " and " + inner + " meet edge to edge at " : outer + " and " + inner + " stand " + LengthText.mm(gap) + " apart at ";
        boolean plumb = where.box().height() > where.box().width();
        String length = LengthText.mmUp(Math.round(s.lengthMm() * 100));
        return Finding.of(INFO, where, List.of(outer, inner)).measures(gap).joint(j.id())
                .reads(butt ? "edges meet, open" : "gap of " + LengthText.mm(gap) + ", open", "trim or tape")
                .says(how + where.inWords() + " with neither trim nor tape over or behind the joint: rain is blown straight in. Common practice is a trim over the joint, or a tape"
                        + " or flashing on the battens behind it.",
                        (plumb ? "Fix a trim " + length + " long over the joint, or take one sheet off and stick a tape onto the batten behind it"
                                : "Slip a flashing " + length + " long in behind the foot of the upper sheet and over the top of the lower one, with a fall outwards")
                                + ", to 25 or more on each side of the joint. Sheet edges cut: wear gloves; work at height from a scaffold or platform.");
    }
}
