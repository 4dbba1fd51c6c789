package rainlap.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.stack.Crew;
import rainlap.wall.Elevation;
import rainlap.water.Arrival;

/**
 * What a place lets in by itself. Where water of another leak runs by, it wets what the place would let in only after some failure, and so the place's own way does not show: then
 * the water is followed once more, with rain at the place alone, over the part of the wall round it. So it is, too, where a rule reckons with few failures and no way tells of
 * them: of several ways round one pipe only one is told.
 */
final class Alone {
    /**
     * So much of the wall is looked at to each side and above, and so much below, by how many failures it took: ways to the frame that lead further are not told. What comes in
     * for nothing is followed far; after two failures water gets nearly everywhere. Where it rains on all of the wall, a second failure is followed as far to each side as what comes in for one.
     */
    private static final long[] BESIDE = {3_000 * Grid.MM, 1_500 * Grid.MM, 500 * Grid.MM}, BELOW = {9_000 * Grid.MM, 3_000 * Grid.MM, 1_000 * Grid.MM};
    /** It rains so far to both sides of the place: what is stuck over it ends within that, and lets water in by its edges. */
    private static final long RAIN = 120 * Grid.MM;
    /** It does not rain so near to the ends of a line: what is stuck over what lies there is left out. */
    private static final long ENDS = 60 * Grid.MM;

    private final Evidence evidence;
    private final List<Finding> findings;
    /** Ways that need one failure at most. */
    private final Both few;
    /** For each finding. */
    private final List<Optional<Passing.Worst>> worstOfFew;
    /** Ways that need two: only where no other one has to do with the finding's pieces. */
    private final Both two;
    private final List<Arrival> ofTwoFailures;

    /**
     * What passes some of the findings: gets through there, or only runs by.
     *
     * @param places which of the places that were asked for is that of which finding
     */
    private record Both(Map<Integer, Integer> places, Passing through, Passing by) {
        Optional<Passing.Worst> through(int finding, Finding f) {
            return Optional.ofNullable(places.get(finding)).flatMap(i -> through.worst(i, f.pieces(), f.joint().isPresent()));
        }

        boolean isBy(int finding, Finding f, int least) {
            List<String> anyOf = f.where().surface().isWall() ? List.of() : f.pieces();
            return Optional.ofNullable(places.get(finding)).flatMap(i -> by.worst(i, anyOf, false)).filter(w -> w.way().defences() < least).isPresent();
        }
    }

    Alone(Evidence evidence, List<Finding> findings, Crew crew) {
        this.evidence = evidence;
        this.findings = findings;
        List<Integer> all = IntStream.range(0, findings.size()).boxed().toList();
        few = passed(all, evidence.trace().arrivals().stream().filter(a -> a.defences() <= 1).toList(), crew);
        worstOfFew = crew.gather(all, run -> run.stream().map(i -> few.through(i, findings.get(i))).toList());
        List<Integer> open = all.stream().filter(i -> worstOfFew.get(i).filter(Passing.Worst::named).isEmpty()).toList();
        List<Box> near = open.stream().map(i -> round(findings.get(i).where().box(), BESIDE[1], BELOW[2])).toList();
        ofTwoFailures = near.isEmpty() ? List.of() : evidence.trace().ofTwoFailures(near, crew);
        two = passed(open, ofTwoFailures, crew);
    }

    /** All ways through two failures near the findings that ask for them. */
    List<Arrival> ofTwoFailures() {
        return ofTwoFailures;
    }

    private Both passed(List<Integer> some, List<Arrival> ways, Crew crew) {
        List<Place> places = some.stream().map(i -> findings.get(i).where()).toList();
        List<Passing> both = crew.all(List.<Supplier<Passing>>of(() -> Passing.through(evidence.elevation(), ways, places, crew),
                () -> Passing.by(evidence.elevation(), ways, places, crew)));
        Map<Integer, Integer> number = new HashMap<>();
        some.forEach(i -> number.put(i, number.size()));
        return new Both(number, both.get(0), both.get(1));
    }

    /** The worst way by which water gets in where a finding lies, by its number. */
    Optional<Arrival> worst(int finding) {
        Finding f = findings.get(finding);
        Optional<Passing.Worst> ofFew = worstOfFew.get(finding), ofTwo = two.through(finding, f);
        Optional<Arrival> own = ofFew.filter(Passing.Worst::named).or(() -> ofTwo.filter(Passing.Worst::named)).or(() -> ofFew).or(() -> ofTwo).map(Passing.Worst::way);
        int least = own.map(Arrival::defences).orElse(Finding.MANY);
        boolean hidden = least > 0 && (few.isBy(finding, f, least) || two.isBy(finding, f, least));
        boolean untold = own.isEmpty() && f.defences() < Finding.MANY;
        return hidden || untold ? rainedOn(f, Math.min(least - 1, f.defences())).filter(a -> own.isEmpty() || names(a, f) || !names(own.get(), f)).or(() -> own) : own;
    }

    /** Whether a way has to do with the pieces of a finding: one that has goes before worse ones beside it that have not. */
    private static boolean names(Arrival a, Finding f) {
        return a.path().stream().anyMatch(s -> f.pieces().contains(s.piece()) || f.pieces().contains(s.layer()));
    }

    private Optional<Arrival> rainedOn(Finding f, int most) {
        Elevation all = evidence.elevation();
        Box place = rained(f.where(), Math.max(RAIN, Passing.near(all, f.where())));
        List<Box> round = IntStream.range(0, BESIDE.length).mapToObj(cost -> round(place, BESIDE[cost], BELOW[cost])).toList();
        return evidence.trace().worstFrom(f.where().surface(), place, round, most,
                ways -> Passing.through(all, ways, List.of(f.where()), Crew.ALONE).worst(0, f.pieces(), f.joint().isPresent()).map(Passing.Worst::way));
    }

    private static Box round(Box place, long beside, long below) {
        return new Box(place.minX() - beside, place.minY() - below, place.maxX() + beside, place.maxY() + beside);
    }

    private static Box rained(Place where, long beside) {
        Box b = where.box();
        long x = where.isLine() && b.width() > b.height() ? -Math.min(ENDS, b.width() / 4) : beside;
        long y = where.isLine() && b.height() > b.width() ? -Math.min(ENDS, b.height() / 4) : beside;
        return new Box(b.minX() - x, b.minY() - y, b.maxX() + x, b.maxY() + y);
    }
}
