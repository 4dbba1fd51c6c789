package rainlap.rule.water;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rainlap.geom.Point;
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
        return byPiece.isEmpty() ? Stream.of(Outcome.Holds.of()) : byPiece.values().stream().flatMap(s -> joined(s).stream()).map(s -> broken(e, s));
    }

    /** What stands along one level is one, as wide as all of it: it spreads along its foot. */
    private static List<Standing> joined(List<Standing> standing) {
        Map<Long, Standing> byLevel = new LinkedHashMap<>();
        for (Standing s : standing) {
            byLevel.merge(isLevel(s) ? s.where().get(0).y() : Long.MIN_VALUE, s, (a, b) -> isLevel(a) ? along(a, b) : width(b) > width(a) ? b : a);
        }
        return List.copyOf(byLevel.values());
    }

    private static Standing along(Standing a, Standing b) {
        long from = Stream.concat(a.where().stream(), b.where().stream()).mapToLong(Point::x).min().orElseThrow();
        long to = Stream.concat(a.where().stream(), b.where().stream()).mapToLong(Point::x).max().orElseThrow(), y = a.where().get(0).y();
        return new Standing(a.over(), a.layer(), a.surface(), List.of(new Point(from, y), new Point(to, y)), a.path());
    }

    private static boolean isLevel(Standing s) {
        return s.where().get(0).y() == s.where().get(1).y();
    }

    private static double width(Standing s) {
        return Math.hypot(s.where().get(1).x() - s.where().get(0).x(), s.where().get(1).y() - s.where().get(0).y());
    }

    private static Outcome broken(Evidence e, Standing s) {
        Place where = Place.line(e.elevation(), s.surface(), s.where());
        String over = s.over().isEmpty() ? "" : " under " + s.over(), on = s.layer().equals(Step.FRAME) ? "the frame" : s.layer();
        List<String> pieces = Stream.of(s.over(), s.layer()).filter(p -> !p.isEmpty() && !p.equals(Step.FRAME)).toList();
        return Finding.of(INFO, where, pieces).way(Finding.MANY, s.path()).reads("water stands", "a way out")
                .says("Water stands on " + on + over + " at " + where.inWords() + " and has no way out: " + Steps.told(s.path()) + ". It may fill up and find a way in.",
                        (s.over().isEmpty() ? "Open a way down there" : "Leave the lower edge of " + s.over() + " open over " + on)
                        + ", or close the upper edge by which the water gets in.");
    }
}
