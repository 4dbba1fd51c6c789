package rainlap.check;

import java.util.Comparator;

/** Elevations in the order in which they want mending: fewest defences first, then most weak points with as few, those without any last. */
public final class WorstFirst {
    /** Elevations that rank alike stay in their order when a list is sorted by it. */
    public static final Comparator<CheckResult> ORDER = Comparator.comparingInt(WorstFirst::least)
            .thenComparing(WorstFirst::asBad, Comparator.reverseOrder());

    private WorstFirst() {}

    private static int least(CheckResult r) {
        return r.weakPoints().stream().mapToInt(p -> p.finding().defences()).min().orElse(Integer.MAX_VALUE);
    }

    private static long asBad(CheckResult r) {
        return r.weakPoints().stream().filter(p -> p.finding().defences() == least(r)).count();
    }
}
