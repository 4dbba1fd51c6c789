package rainlap.check;

import java.util.List;
import java.util.Optional;
import rainlap.rule.Rule;
import rainlap.rule.edge.ShortCornerWrap;
import rainlap.rule.edge.UntapedCorner;
import rainlap.rule.edge.UnwrappedCorner;
import rainlap.rule.opening.BareCorner;
import rainlap.rule.opening.FlashingInFront;
import rainlap.rule.opening.MissingHeadFlap;
import rainlap.rule.opening.MissingHeadFlashing;
import rainlap.rule.opening.ShortFlashing;
import rainlap.rule.opening.ShortReturn;
import rainlap.rule.opening.ShortUpstand;

/** Every rule, sorted by id. A new rule is one line here; a test fails while it is missing. */
public final class Rules {
    private static final List<Rule> ALL = List.of(
            new BareCorner(),
            new FlashingInFront(),
            new MissingHeadFlap(),
            new MissingHeadFlashing(),
            new ShortCornerWrap(),
            new ShortFlashing(),
            new ShortReturn(),
            new ShortUpstand(),
            new UntapedCorner(),
            new UnwrappedCorner()
    );

    private Rules() {}

    public static List<Rule> all() {
        return ALL;
    }

    public static Optional<Rule> find(String id) {
        return ALL.stream().filter(r -> r.info().id().equals(id)).findFirst();
    }
}
