package rainlap.rule;

import java.util.List;
import java.util.stream.Stream;
import rainlap.joint.Joint;

/** A rule that judges each joint of this wall for itself. */
public interface JointRule extends PlaceRule<Joint> {
    /** Why it does not apply where nothing was told of any joint. */
    String none();

    @Override
    default List<Joint> places(Evidence e) {
        return e.jointsHere();
    }

    @Override
    default Stream<Outcome> atLast(Evidence e, boolean silent) {
        return silent ? Stream.of(new Outcome.DoesNotApply(none())) : Stream.empty();
    }
}
