package rainlap.water;

import java.util.List;
import java.util.stream.Stream;
import rainlap.water.Step.Kind;

/** By what means water reaches the frame as drawn that no litres are counted for, because nobody can say how much it is. */
enum Besides {
    WIND("driven by wind"), PIPE("along a pipe"), REVEAL("in a reveal");

    private final String words;

    Besides(String words) {
        this.words = words;
    }

    /** In words, for what gets wet with nothing failing; empty where all that reaches the frame only runs down the wall. */
    static List<String> of(List<Arrival> arrivals, List<Reach> asDrawn) {
        boolean wind = arrivals.stream().anyMatch(a -> a.defences() == 0 && a.path().stream().anyMatch(s -> isDriven(s.kind())));
        boolean pipe = arrivals.stream().anyMatch(a -> a.defences() == 0 && a.path().stream().anyMatch(s -> s.kind() == Kind.ALONG_A_PIPE));
        boolean reveal = asDrawn.stream().anyMatch(r -> !r.surface().isWall() && !r.where().isEmpty());
        return Stream.of(values()).filter(b -> b == WIND && wind || b == PIPE && pipe || b == REVEAL && reveal).map(b -> b.words).toList();
    }

    private static boolean isDriven(Kind k) {
        return k == Kind.LIFT_UNDER || k == Kind.LIFT_ON || k == Kind.PUSH_UNDER || k == Kind.PUSH_ON;
    }
}
