package rainlap.rule;

import java.util.List;

/** What a rule says of one place. */
public sealed interface Outcome {
    /** The place is as asked. */
    record Holds(List<String> pieces) implements Outcome {
        public Holds {
            pieces = List.copyOf(pieces);
        }

        public static Holds of(String... pieces) {
            return new Holds(List.of(pieces));
        }
    }

    /** The place is not as asked. */
    record Broken(Finding finding) implements Outcome {}

    /** There is nothing here for this rule to judge. */
    record DoesNotApply(String why) implements Outcome {}

    /** The file does not say enough to judge. */
    record CannotTell(List<String> pieces, String why) implements Outcome {
        public CannotTell {
            pieces = List.copyOf(pieces);
        }
    }
}
