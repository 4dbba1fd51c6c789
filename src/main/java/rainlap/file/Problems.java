package rainlap.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Gathers what is wrong with one file. */
final class Problems {
    private final SourceText source;
    private final Limits limits;
    private final List<Problem> found = new ArrayList<>();
    private int more;

    Problems(SourceText source, Limits limits) {
        this.source = source;
        this.limits = limits;
    }

    Limits limits() {
        return limits;
    }

    void add(int at, String what, String hint) {
        add(at, what, () -> hint);
    }

    /** With a hint that is worked out only where the problem is listed. */
    void add(int at, String what, Supplier<String> hint) {
        if (isFull()) {
            more++;
            return;
        }
        found.add(new Problem(source.name(), Optional.of(source.place(at)), what, hint.get(), Optional.of(source.excerpt(at))));
    }

    /** For messages that refer to another place of the file. */
    String line(int at) {
        return "line " + source.place(at).line();
    }

    /** Whether further problems are only counted. */
    boolean isFull() {
        return found.size() >= limits.problems();
    }

    /** Counts a problem that is not listed, where {@link #isFull}. */
    void countOne() {
        more++;
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    List<Problem> sorted() {
        List<Problem> out = new ArrayList<>(found);
        Collections.sort(out);
        if (more > 0) {
            out.add(Problem.ofFile(source.name(), more + (more == 1 ? " more problem is" : " more problems are") + " not listed",
                    "mend these first and run again"));
        }
        return List.copyOf(out);
    }
}
