package rainlap.rule.lap;

import java.util.List;
import java.util.function.Consumer;
import rainlap.geom.Box;
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
import rainlap.practice.Practices;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.JointRule;
import rainlap.rule.MembraneJoints;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;

/**
 * What butts and gaps share: edges that face each other with nothing beneath. Tape over them does not make a lap of them. The upper edge of
 * a head flashing, over which a flap is to lap, is left to the rules of openings; a butt at the fold of a building corner, where nothing
 * goes round, to the rules of corners.
 */
abstract class NoLap implements JointRule {
    private final RuleInfo info;
    private final JointKind kind;

    NoLap(RuleInfo info, JointKind kind) {
        this.info = info;
        this.kind = kind;
    }

    @Override
    public RuleInfo info() {
        return info;
    }

    @Override
    public String none() {
        return "no two sheets meet, or only where other rules judge them";
    }

    @Override
    public void judge(Evidence e, Joint j, Consumer<Outcome> tell) {
        if (j.kind() == kind && j.outer().kind() != MaterialKind.CLADDING) {
            open(e, j, tell);
        } else if (j.outer().kind() != MaterialKind.CLADDING) {
            tell.accept(Outcome.Holds.of(j));
        }
    }

    /** A joint that turns a corner is judged side by side: each asks for its own lap and is mended in its own way. */
    private void open(Evidence e, Joint j, Consumer<Outcome> tell) {
        boolean outer = HeadFlashings.findOpening(e.elevation(), j.outer()).isPresent();
        boolean inner = HeadFlashings.findOpening(e.elevation(), j.inner()).isPresent();
        for (Facing facing : Facing.values()) {
            MembraneJoints.parts(e, j, r -> facing != Facing.of(r) || outer && r.faces().facesUp() || inner && r.faces().facesDown()
                    || kind == JointKind.BUTT && isAtCorner(e, r) ? Intervals.NONE : Intervals.of(0, r.length()))
                    .forEach(s -> tell.accept(broken(e, j, facing, s)));
        }
    }

    /** Which way the outer piece's edge mostly faces. */
    private enum Facing {
        DOWN(Limit.COURSE_LAP), UP(Limit.COURSE_LAP), SIDEWAYS(Limit.END_LAP);

        private final Limit limit;

        Facing(Limit limit) {
            this.limit = limit;
        }

        static Facing of(Run r) {
            Direction d = r.faces();
            return Math.abs(d.down()) < Math.abs(d.across()) ? SIDEWAYS : d.down() > 0 ? DOWN : UP;
        }
    }

    private static boolean isAtCorner(Evidence e, Run r) {
        EdgeFrame edge = EdgeFrame.of(r.line());
        return e.buildingCorners().stream().map(c -> c.edge().line())
                .anyMatch(c -> edge.t(c.a().x(), c.a().y()) == 0 && edge.t(c.b().x(), c.b().y()) == 0);
    }

    private Outcome broken(Evidence e, Joint j, Facing facing, Joint.Stretch s) {
        boolean taped = s.taped();
        LimitValue own = e.practice().get(facing.limit), required = required(own, taped);
        long gap = gap(j, facing, s);
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        return Finding.of(info, where, List.of(j.outer().piece().id(), j.inner().piece().id())).asks(required).measures(gap)
                .reads((kind == JointKind.BUTT ? "edges meet" : "gap of " + LengthText.mm(gap)) + (taped ? ", taped" : ""),
                        "lap of " + required.number())
                .joint(j.id())
                .says(says(j, gap, where, taped, required)
                        + (own.orTaped() && taped ? " " + e.practice().id() + " would be content with the tape." : ""),
                        remedy(j, facing, gap, MendSizes.lap(e, j, required.hundredths(), facing != Facing.SIDEWAYS)));
    }

    /** The lap asked along this edge; common practice's where the practice would be content with the tape that is there. */
    private static LimitValue required(LimitValue own, boolean taped) {
        return own.orTaped() && taped ? Practices.common().get(own.limit()) : own;
    }

    /** The greatest width of the strip of nothing along a stretch, grid units. */
    private static long gap(Joint j, Facing facing, Joint.Stretch s) {
        Box box = Box.of(s.line());
        return Math.round(j.runs().stream().filter(r -> Facing.of(r) == facing && r.line().box().meets(box))
                .mapToDouble(r -> r.lap().greatest()).max().orElse(0));
    }

    private String says(Joint j, long gap, Place where, boolean taped, LimitValue required) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        String what = kind == JointKind.BUTT ? outer + " and " + inner + " meet edge to edge at "
                : outer + " and " + inner + " stand " + LengthText.mm(gap) + " apart at ";
        String tape = taped ? "; only the tape over it keeps water out. " : ". Nothing lies beneath the joint. ";
        return what + where.inWords() + tape + Asked.sentence(required, "a lap of " + required.number());
    }

    private static String remedy(Joint j, Facing facing, long gap, long lap) {
        String strip = LengthText.mmUp(gap + 2 * lap);
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        String behind = facing == Facing.UP ? inner : outer, over = facing == Facing.UP ? outer : inner;
        return "Slip a strip " + strip + (facing == Facing.SIDEWAYS ? " wide" : " high") + " in behind " + behind + " and over " + over
                + ", so that it laps each by " + LengthText.mm(lap) + ", and tape its edges.";
    }
}
