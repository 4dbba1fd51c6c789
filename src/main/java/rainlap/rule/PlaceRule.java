package rainlap.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A rule that judges each place of one sort for itself, so that all such rules can be asked about one place after the other: what one has looked at is at hand for the next. */
public interface PlaceRule<P> extends Rule {
    /** All places of that sort on this wall. */
    List<P> places(Evidence e);

    /** Tells one outcome for each thing that it looks at there; nothing of a place that is not for it to judge. */
    void judge(Evidence e, P place, Consumer<Outcome> tell);

    /**
     * What is left to say when it has been asked about all of them.
     *
     * @param silent whether it has told nothing of any
     */
    Stream<Outcome> atLast(Evidence e, boolean silent);

    @Override
    default Stream<Outcome> check(Evidence e) {
        List<Outcome> out = new ArrayList<>();
        places(e).forEach(p -> judge(e, p, out::add));
        return Stream.concat(out.stream(), atLast(e, out.isEmpty()));
    }
}
