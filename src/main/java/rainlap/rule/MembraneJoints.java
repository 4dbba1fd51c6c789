package rainlap.rule;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Profile;
import rainlap.geom.Region;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.stack.Face;

/** The joints of membrane with membrane, of which the practices speak, and where they are to be taped. */
public final class MembraneJoints {
    /** The drawing's own tolerance: 1 mm, less the half of a grid unit by which an end may be rounded. */
    private static final double LEAST_MM = 0.995;

    private MembraneJoints() {}

    /** All of them on this wall and its reveals. */
    public static Stream<Joint> of(Evidence e) {
        return e.membraneJoints().stream();
    }

    static List<Joint> among(List<Joint> joints) {
        return joints.stream().filter(MembraneJoints::is).toList();
    }

    /** Whether a joint is one of membrane with membrane. */
    public static boolean is(Joint j) {
        return isMembrane(j.outer()) && isMembrane(j.inner());
    }

    /** Whether it is one that laps the right way: a course lap or an end lap. */
    public static boolean isLap(Joint j) {
        return (j.kind() == JointKind.COURSE_LAP || j.kind() == JointKind.END_LAP) && is(j);
    }

    public static boolean isMembrane(Face f) {
        return f.kind() == MaterialKind.MEMBRANE;
    }

    /** The parts of a joint on this wall that a caller chooses on each run, with the least lap on each. */
    public static List<Joint.Stretch> parts(Evidence e, Joint j, Function<Run, Intervals> where) {
        return parts(e, j, where, Run::lap);
    }

    /** The same with the least of another length on each. Those under 1 mm are left out: they are within the drawing's own tolerance. */
    public static List<Joint.Stretch> parts(Evidence e, Joint j, Function<Run, Intervals> where, Function<Run, Profile> of) {
        List<Joint.Stretch> all = j.stretches(where, of);
        return all.isEmpty() ? all : all.stream().filter(s -> s.lengthMm() >= LEAST_MM && e.isOnThisWall(j.surface(), s.line())).toList();
    }

    /** Tape that lies over a place on a sheet without being stuck down: it covers nothing there. */
    public static List<String> looseTapes(Evidence e, Face sheet, List<Point> line) {
        Box where = Box.of(line).grow(1);
        return e.stack().meeting(sheet.surface(), where).stream().filter(f -> f.kind() == MaterialKind.TAPE && !f.piece().bond().isFull())
                .filter(f -> f.region().overlaps(Region.of(where)) && e.stack().isOutside(f, sheet)).map(f -> f.piece().id()).distinct().sorted().toList();
    }

    /**
     * Where a practice asks for tape: the lap is below {@link Limit#TAPE_FREE_LAP}, or below a limit that tape may stand in for. Not where
     * a further sheet lies over it, nor where the outer sheet's own adhesive seals it.
     */
    public static Intervals tapeAsked(Joint j, Run r, Practice practice) {
        if (j.sealed()) {
            return Intervals.NONE;
        }
        LimitValue free = practice.get(Limit.TAPE_FREE_LAP);
        Intervals asked = !j.kind().isLap() || free.isNever() ? Intervals.of(0, r.length()) : r.lap().below(free.hundredths());
        return asked.union(lapOrTape(r, practice)).minus(r.hidden());
    }

    /** Where a practice asks for a lap <em>or</em> tape, and the lap is too short. */
    public static Intervals lapOrTape(Run r, Practice practice) {
        LimitValue course = practice.get(Limit.COURSE_LAP), end = practice.get(Limit.END_LAP);
        return (course.orTaped() ? below(r, course) : Intervals.NONE).union(end.orTaped() ? below(r, end) : Intervals.NONE);
    }

    /**
     * Where a run is lapped by less than a practice asks of its slope: the course lap where it faces down, the end lap where it faces
     * sideways. What lies beneath a further sheet is not asked: the foot or side of that sheet is the joint there.
     */
    public static Intervals below(Run r, LimitValue limit) {
        boolean asked = switch (limit.limit()) {
            case COURSE_LAP -> r.faces().facesDown();
            case END_LAP -> r.faces().facesSideways();
            default -> throw new IllegalArgumentException(limit.limit().id() + " is no lap");
        };
        return asked ? r.lap().below(limit.hundredths()).minus(r.hidden()) : Intervals.NONE;
    }
}
