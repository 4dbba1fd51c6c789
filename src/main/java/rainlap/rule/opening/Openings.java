package rainlap.rule.opening;

import java.util.function.Function;
import java.util.stream.Stream;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/** What the rules of openings say alike. */
final class Openings {
    private Openings() {}

    /** Judges every opening; without any, one answer that there is none. */
    static Stream<Outcome> each(Evidence e, Function<Opening, Stream<Outcome>> judge) {
        return e.elevation().openings().isEmpty() ? Stream.of(new Outcome.DoesNotApply("the wall has no opening"))
                : e.elevation().openings().stream().flatMap(judge);
    }

    /** What is said of openings with a reveal, and that the others have nothing to turn into. */
    static Stream<Outcome> withReveal(Evidence e, Stream<Outcome> judged) {
        return Stream.concat(judged, each(e, o -> o.reveal() > 0 ? Stream.empty()
                : Stream.of(new Outcome.DoesNotApply(o.id() + " has no reveal"))));
    }

    /** {@code sill of W1}. */
    static String name(Opening o, Side side) {
        return side.inWords() + " of " + o.id();
    }
}
