package rainlap.rule.face;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;

/** The joints of cladding with cladding on the wall. */
final class SheetJoints {
    private SheetJoints() {}

    static Stream<Joint> of(Evidence e) {
        return Cladding.sheets(e).isEmpty() ? Stream.empty() : e.jointsHere().stream().filter(j -> j.surface().isWall() && Cladding.is(j.outer()) && Cladding.is(j.inner()));
    }

    /** Those that lap, whichever way. */
    static Stream<Joint> laps(Evidence e) {
        return of(e).filter(j -> j.kind().isLap());
    }

    /** Butts and gaps. */
    static Stream<Joint> open(Evidence e) {
        return of(e).filter(j -> !j.kind().isLap());
    }

    static boolean isSound(Joint j) {
        return j.kind() != JointKind.REVERSE_LAP;
    }

    /** Judges some joints; where the wall has no cladding, or none of them, says so. */
    static Stream<Outcome> judge(Evidence e, List<Joint> some, String none, Function<Joint, Stream<Outcome>> judge) {
        if (Cladding.sheets(e).isEmpty()) {
            return Stream.of(Cladding.none());
        }
        return some.isEmpty() ? Stream.of(new Outcome.DoesNotApply(none)) : some.stream().flatMap(judge);
    }

    static Outcome holds(Joint j) {
        return Outcome.Holds.of(j);
    }

    /** Whether the edge runs more up the wall than across it. */
    static boolean isPlumb(Run r) {
        return Math.abs(r.faces().across()) > Math.abs(r.faces().down());
    }
}
