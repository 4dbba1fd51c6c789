package rainlap.rule;

import java.util.List;
import java.util.function.Supplier;
import rainlap.joint.Joint;

/** What a rule says of one place. */
public sealed interface Outcome {
    /** The place is as asked. Most places are, and a check only counts them: pieces are named when somebody asks for them. */
    final class Holds implements Outcome {
        private final Supplier<List<String>> pieces;

        public Holds(Supplier<List<String>> pieces) {
            this.pieces = pieces;
        }

        public static Holds of(String... pieces) {
            return of(List.of(pieces));
        }

        public static Holds of(List<String> pieces) {
            List<String> named = List.copyOf(pieces);
            return new Holds(() -> named);
        }

        /** Of the two pieces of a joint. */
        public static Holds of(Joint j) {
            return new Holds(() -> List.of(j.outer().piece().id(), j.inner().piece().id()));
        }

        public List<String> pieces() {
            return pieces.get();
        }

        @Override
        public boolean equals(Object o) {
            return o instanceof Holds h && pieces().equals(h.pieces());
        }

        @Override
        public int hashCode() {
            return pieces().hashCode();
        }

        @Override
        public String toString() {
            return "Holds[pieces=" + pieces() + "]";
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
