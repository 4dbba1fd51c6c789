package rainlap.report;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import rainlap.check.CheckResult;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;

/** How many joints there are of each kind. */
final class JointCounts {
    private JointCounts() {}

    /** {@code 6 course laps, 1 reverse lap (upper edge taped or beneath another piece)}: an upper edge that water cannot get behind is no fault. */
    static String inWords(CheckResult result) {
        String all = Arrays.stream(JointKind.values()).map(kind -> of(result, kind)).filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
        return all.isEmpty() ? "none found" : all;
    }

    private static String of(CheckResult result, JointKind kind) {
        long n = result.evidence().joints().ofKind(kind).count();
        return n == 0 ? "" : TerminalTable.count(n, kind.inWords()) + (kind == JointKind.REVERSE_LAP ? sound(result, n) : "");
    }

    private static String sound(CheckResult result, long all) {
        Set<String> weak = result.weakPoints().stream().flatMap(w -> w.finding().joint().stream()).collect(Collectors.toSet());
        long sound = result.evidence().joints().ofKind(JointKind.REVERSE_LAP).filter(j -> !weak.contains(j.id())).map(Joint::uncovered).filter(u -> u.isEmpty()).count();
        return sound == 0 ? "" : " (" + (sound < all ? sound + " with the " : "") + "upper edge taped or beneath another piece)";
    }
}
