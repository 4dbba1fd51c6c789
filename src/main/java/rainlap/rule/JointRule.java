package rainlap.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rainlap.joint.Joint;

/** A rule that judges each joint for itself, so that all of them can be asked about one joint after the other: what one has looked at is at hand for the next. */
public interface JointRule extends Rule {
    /** Tells one outcome for each place of a joint of this wall that it looks at; nothing of a joint that is not for it to judge. */
    void judge(Evidence e, Joint j, Consumer<Outcome> tell);

    /** Why it does not apply where nothing was told of any joint. */
    String none();

    @Override
    default Stream<Outcome> check(Evidence e) {
        List<Outcome> out = new ArrayList<>();
        e.jointsHere().forEach(j -> judge(e, j, out::add));
        return out.isEmpty() ? Stream.of(new Outcome.DoesNotApply(none())) : out.stream();
    }
}
