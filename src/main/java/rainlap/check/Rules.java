package rainlap.check;

import java.util.List;
import java.util.Optional;
import rainlap.rule.Rule;

/** Every rule, sorted by id. A new rule is one line here; a test fails while it is missing. */
public final class Rules {
    private static final List<Rule> ALL = List.of(
    );

    private Rules() {}

    public static List<Rule> all() {
        return ALL;
    }

    public static Optional<Rule> find(String id) {
        return ALL.stream().filter(r -> r.info().id().equals(id)).findFirst();
    }
}
