package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.check.WeakPoint;

/** How many weak points there are, by their defences, in a few words. */
final class Tally {
    private Tally() {}

    static String of(List<WeakPoint> points) {
        if (points.isEmpty()) {
            return "no weak point found";
        }
        List<String> parts = new ArrayList<>();
        count(points, Severity.NONE, " with no defence", parts);
        count(points, Severity.ONE, " one failure away", parts);
        count(points, Severity.MORE, " below what was asked", parts);
        return String.join(", ", parts);
    }

    /** The same after their number. */
    static String counted(List<WeakPoint> points) {
        return points.isEmpty() ? of(points) : points.size() + (points.size() == 1 ? " weak point: " : " weak points: ") + of(points);
    }

    private static void count(List<WeakPoint> points, Severity s, String words, List<String> parts) {
        long n = points.stream().filter(p -> Severity.of(p.finding().defences()) == s).count();
        if (n > 0) {
            parts.add(n + words);
        }
    }
}
