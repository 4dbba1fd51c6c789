package rainlap.rule;

import java.util.List;
import java.util.stream.Stream;
import rainlap.wall.Opening;

/** A rule that judges each opening for itself. */
public interface OpeningRule extends PlaceRule<Opening> {
    @Override
    default List<Opening> places(Evidence e) {
        return e.elevation().openings();
    }

    @Override
    default Stream<Outcome> atLast(Evidence e, boolean silent) {
        return e.elevation().openings().isEmpty() ? Stream.of(new Outcome.DoesNotApply("the wall has no opening")) : Stream.empty();
    }
}
