package rainlap.rule.water;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.water.Standing;
import rainlap.water.Step;

/** Water gets in behind a piece and finds no way out: it stands along a closed edge. */
public final class TrappedWater implements Rule {
    static final RuleInfo INFO = RuleInfo.of("trapped-water", "trapped water", RuleInfo.Theme.WATER);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        Map<String, List<Standing>> byPiece = new LinkedHashMap<>();
        e.trace().trapped().forEach(s -> byPiece.computeIfAbsent(s.surface().name() + " " + s.over() + " " + s.layer(), k -> new ArrayList<>()).add(s));
        return byPiece.isEmpty() ? Stream.of(Outcome.Holds.of()) : byPiece.values().stream().map(s -> broken(e, widest(s)));
    }

    private static Standing widest(List<Standing> standing) {
        return standing.stream().reduce((a, b) -> width(b) > width(a) ? b : a).orElseThrow();
    }

    private static double width(Standing s) {
        return Math.hypot(s.where().get(1).x() - s.where().get(0).x(), s.where().get(1).y() - s.where().get(0).y());
    }

    private static Outcome broken(Evidence e, Standing s) {
        Place where = Place.line(e.elevation(), s.surface(), s.where());
        String over = s.over().isEmpty() ? "" : " under " + s.over(), on = s.layer().equals(Step.FRAME) ? "the frame" : s.layer();
        List<String> pieces = Stream.of(s.over(), s.layer()).filter(p -> !p.isEmpty() && !p.equals(Step.FRAME)).toList();
        return Finding.of(INFO, where, pieces).way(Finding.MANY, s.path()).reads("water stands", "a way out")
                .says("Water stands on " + on + over + " at " + where.inWords() + " and has no way out: " + Steps.told(s.path()) + ".",
                        (s.over().isEmpty() ? "Open a way down there" : "Leave the lower edge of " + s.over() + " open over " + on)
                        + ", or close the upper edge by which the water gets in.");
    }
}
