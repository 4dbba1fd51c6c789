package rainlap.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rainlap.joint.Joint;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;

/** How much water meets the joint that a finding concerns: that is more than what one of its ways tells. */
final class JointLitres {
    private final Evidence evidence;
    private final Map<String, Integer> numbers = new HashMap<>();

    JointLitres(Evidence evidence) {
        this.evidence = evidence;
        List<Joint> all = evidence.joints().all();
        for (int i = 0; evidence.trace().rain().isPresent() && i < all.size(); i++) {
            numbers.put(all.get(i).id(), i);
        }
    }

    Finding of(Finding f) {
        Integer joint = f.joint().map(numbers::get).orElse(null);
        OptionalDouble litres = joint == null ? OptionalDouble.empty() : evidence.trace().litresAtJoint(joint);
        return litres.isPresent() ? f.withLitres(litres.getAsDouble()) : f;
    }
}
