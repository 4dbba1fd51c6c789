package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.RuleInfo;
import rainlap.stack.Crew;
import rainlap.water.Arrival;

/**
 * Findings of dimensions and of the trace at the same place are one weak point.
 *
 * <ol>
 * <li>Where the frame lies bare at the place of a finding of dimensions, on the wall or in the reveal beyond the edge of an opening that the place runs along, or in the gap that it tells of, rain wets it,
 * and there are no defences. Else it gets the least defences of the ways that get in at its place, and the steps of that way; see {@link Alone}. Ways that have got under or run over one of its
 * pieces by then go before others, and of equal ones that which shares most of the place.
 * <li>A finding of the trace whose way to the frame passes the place of a finding of dimensions that has no more defences than it is left out. Trapped water never is: no rule
 * of dimensions says that water stands, nor where, and who mends the edge by which it got in may not mend the closed foot that holds it.
 * <li>Water that lies on a batten is left out where a rule of the cavity names that batten as what closes the cavity there. Where none does, that a batten lies across the
 * cavity is left out where water lies on it: that is told with what the practice asks.
 * </ol>
 *
 * <p>Findings of themes that do not tell of water ({@link RuleInfo.Theme#tellsOfWater}) stay as they are: a leak is not said by who says that two metals touch there.
 */
final class OnePlace {
    private static final String ON_BATTEN = "water-on-batten", CLOSED = "closed-cavity", ACROSS = "level-batten";

    private final List<Finding> dimensions = new ArrayList<>();
    private final List<Finding> traced = new ArrayList<>();
    private final List<Finding> dry = new ArrayList<>();

    private List<Arrival> ofTwoFailures = List.of();

    private OnePlace() {}

    /**
     * @param findings all of them
     * @param ofTwoFailures the ways through two failures that were asked for on the way
     */
    record Merged(List<Finding> findings, List<Arrival> ofTwoFailures) {}

    static Merged merged(Evidence e, List<Finding> findings, Crew crew) {
        OnePlace all = new OnePlace();
        for (Finding f : findings) {
            Optional<RuleInfo.Theme> theme = Rules.find(f.rule()).map(r -> r.info().theme());
            boolean dry = theme.filter(t -> !t.tellsOfWater()).isPresent(), traced = theme.filter(t -> t == RuleInfo.Theme.WATER).isPresent();
            (dry ? all.dry : traced ? all.traced : all.dimensions).add(f);
        }
        List<Finding> out = new ArrayList<>(all.merged(e, crew));
        out.addAll(all.dry);
        return new Merged(out, all.ofTwoFailures);
    }

    private List<Finding> merged(Evidence e, Crew crew) {
        PlaceLitres litres = new PlaceLitres(e.trace());
        List<Finding> led = traced.stream().map(litres::ofWay).toList();
        if (dimensions.isEmpty()) {
            return led;
        }
        Alone alone = new Alone(e, dimensions, crew);
        BareGaps gaps = BareGaps.of(e, crew);
        ofTwoFailures = alone.ofTwoFailures();
        List<Integer> numbers = IntStream.range(0, dimensions.size()).boxed().toList();
        List<Finding> out = new ArrayList<>(crew.gather(numbers, run -> run.stream().map(i -> litres.ofPlace(withWay(e, alone, gaps, i))).toList()));
        Passed passed = new Passed(e, out);
        out.removeIf(this::isWet);
        List<Finding> left = led.stream().filter(t -> passed.by(t).stream().noneMatch(f -> saysItAlready(f, t)) && !isToldOfCavity(t)).toList();
        out.addAll(left);
        return out;
    }

    private Finding withWay(Evidence e, Alone alone, BareGaps gaps, int number) {
        Finding f = dimensions.get(number);
        Optional<Finding> bare = Uncovered.at(e, f.where()).or(() -> gaps.at(f)).map(step -> f.withWay(0, List.of(step)));
        if (bare.isPresent()) {
            return bare.get();
        }
        return alone.worst(number).filter(a -> a.defences() <= f.defences()).map(a -> f.withWay(a.defences(), a.path())).orElse(f);
    }

    private boolean isWet(Finding f) {
        return f.rule().equals(ACROSS) && traced.stream().anyMatch(t -> t.rule().equals(ON_BATTEN) && t.pieces().equals(f.pieces()));
    }

    private boolean isToldOfCavity(Finding t) {
        return t.rule().equals(ON_BATTEN) && dimensions.stream().anyMatch(f -> f.rule().equals(CLOSED) && f.pieces().containsAll(t.pieces()));
    }

    private static boolean saysItAlready(Finding f, Finding t) {
        return t.defences() < Finding.MANY && f.defences() <= t.defences();
    }
}
