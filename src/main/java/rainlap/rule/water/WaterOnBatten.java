package rainlap.rule.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.LevelBattens;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Piece;
import rainlap.water.OnBatten;

/** Water comes to lie on the upper side of a batten that is level, or that falls to no open end. */
public final class WaterOnBatten implements Rule {
    static final RuleInfo INFO = RuleInfo.of("water-on-batten", "water lies on a batten", RuleInfo.Theme.WATER);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Piece> battens = e.pieces(MaterialKind.BATTEN).toList();
        if (battens.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no batten is drawn at this stage"));
        }
        Map<String, List<OnBatten>> pools = new TreeMap<>();
        LevelBattens.pools(e.stack(), e.trace().onBattens()).forEach(o -> pools.computeIfAbsent(o.batten(), k -> new ArrayList<>()).add(o));
        return battens.stream().map(b -> pools.containsKey(b.id()) ? broken(e, longest(pools.get(b.id()))) : Outcome.Holds.of(b.id()));
    }

    /** Stretches that touch are one; of several the longest is told. */
    private static List<OnBatten> longest(List<OnBatten> all) {
        List<List<OnBatten>> runs = new ArrayList<>();
        for (OnBatten o : all.stream().sorted(Comparator.comparingLong((OnBatten o) -> o.where().get(0).x())).toList()) {
            List<OnBatten> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (last.isEmpty() || !last.get(0).surface().equals(o.surface()) || o.where().get(0).x() > last.get(last.size() - 1).where().get(1).x() + 1) {
                runs.add(new ArrayList<>(List.of(o)));
            } else {
                last.add(o);
            }
        }
        return runs.stream().max(Comparator.comparingDouble(WaterOnBatten::length)).orElseThrow();
    }

    private static double length(List<OnBatten> run) {
        return run.stream().mapToDouble(o -> new Segment(o.where().get(0), o.where().get(1)).lengthMm()).sum();
    }

    private static Outcome broken(Evidence e, List<OnBatten> run) {
        OnBatten o = run.get(0);
        List<Point> line = Stream.concat(Stream.of(o.where().get(0)), run.stream().map(s -> s.where().get(1))).toList();
        Place where = Place.line(e.elevation(), o.surface(), line);
        String there = o.level() ? "lies on the level upper side of " + o.batten() : "runs down along " + o.batten() + " to a low place and finds no end to leave by,";
        return Finding.of(INFO, where, List.of(o.batten())).reads(o.level() ? "level, water lies on it" : "no way off its low place", "water runs off")
                .says("Water that runs down the wall " + there + " at " + where.inWords() + ": it is taken to lie tight against what is behind it.",
                        "Stand " + o.batten() + " upright, " + sloped(e) + "or set it on upright battens that leave a drained gap behind it; or close the cladding above it.");
    }

    /** As the practice wants it, so that nobody mends it twice. */
    private static String sloped(Evidence e) {
        LimitValue fall = e.practice().get(Limit.BATTEN_FALL), gap = e.practice().get(Limit.BATTEN_GAP);
        return fall.isNever() ? "" : "let it fall by " + fall.number() + "° to ends that stop at least " + gap.number() + " short of the next batten, ";
    }
}
