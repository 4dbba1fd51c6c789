package rainlap.rule.penetration;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Intervals;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.joint.Sheets;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;

/** A side of a loose collar is neither taped nor bonded to the sheet it lies on. */
public final class UnsealedCollar implements Rule {
    static final RuleInfo INFO = RuleInfo.of("unsealed-collar", "collar not sealed", RuleInfo.Theme.PENETRATIONS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Face> collars = e.onWall(MaterialKind.COLLAR);
        return collars.isEmpty() ? Stream.of(new Outcome.DoesNotApply("the wall has no collar")) : collars.stream().flatMap(c -> judge(e, c).stream());
    }

    private static List<Outcome> judge(Evidence e, Face collar) {
        List<Outcome> out = new ArrayList<>();
        for (Joint j : e.jointsHere()) {
            if (j.outer() == collar && j.kind().isLap() && j.kind() != JointKind.REVERSE_LAP && !j.sealed() && Sheets.isSheet(j.inner())) {
                MembraneJoints.parts(e, j, UnsealedCollar::open).forEach(s -> out.add(broken(e, j, s)));
            }
        }
        return out.isEmpty() ? List.of(Outcome.Holds.of(collar.piece().id())) : out;
    }

    /** Of edges that face sideways; the foot may stay open, and the top belongs to the rule of reverse laps. */
    private static Intervals open(Run r) {
        return r.faces().facesSideways() ? r.uncovered() : Intervals.NONE;
    }

    /**
     * Whether wind pushes water from this stretch to the cut round a pipe. Of two open sides the trace keeps one way to the same place, so that the other
     * would seem safe.
     */
    private static boolean reachesAPipe(Evidence e, Joint.Stretch s) {
        Box side = Box.of(s.line());
        long creep = e.trace().drive().creep();
        Box driven = new Box(side.minX() - creep, side.minY(), side.maxX() + creep, side.maxY());
        return e.elevation().penetrations().stream().anyMatch(p -> driven.overlaps(p.region().box()));
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s) {
        LimitValue cover = e.practice().get(Limit.TAPE_COVER);
        String collar = j.outer().piece().id(), sheet = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        String length = LengthText.mmUp(Math.round(s.lengthMm() * 100));
        return Finding.of(INFO, where, List.of(collar, sheet)).source(NoCollar.SOURCE).joint(j.id()).defences(reachesAPipe(e, s) ? 0 : Finding.MANY)
                .reads("no tape", "tape over it")
                .says("The side of " + collar + " lies open on " + sheet + " over " + length + ", at " + where.inWords() + ": wind drives water in under it, to the cut round the pipe. "
                        + NoCollar.SOURCE.document() + ", " + NoCollar.SOURCE.clause() + ", asks for the membrane to be fully sealed at penetrations.",
                        "Stick tape over that edge of " + collar + ", " + length + " long, at least " + cover.number()
                        + " onto " + collar + " and onto " + sheet + "; sides first, then the top over them.");
    }
}
