package rainlap.check;

import java.util.List;
import java.util.Map;
import rainlap.rule.Evidence;

/**
 * What a check found.
 *
 * @param held how many places each rule found as asked, by rule id
 * @param notApplicable rules that had nothing to judge, with the reason, by rule id
 */
public record CheckResult(Evidence evidence, List<WeakPoint> weakPoints, Map<String, Integer> held,
        Map<String, String> notApplicable, List<Unchecked> unchecked, List<Crash> crashes) {
    public CheckResult {
        weakPoints = List.copyOf(weakPoints);
        unchecked = List.copyOf(unchecked);
        crashes = List.copyOf(crashes);
        held = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(held));
        notApplicable = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(notApplicable));
    }
}
