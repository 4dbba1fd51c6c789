package rainlap.rule.transport;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.rule.transport.Road.Most;
import rainlap.source.Known;
import rainlap.wall.Exposure;
import rainlap.wall.Surface;

/** A building that travels stands higher above the road than the law, or common practice, allows. */
public final class OverHeight implements Rule {
    static final RuleInfo INFO = RuleInfo.of("over-height", "too high for the road", RuleInfo.Theme.TRANSPORT);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        Exposure x = e.elevation().exposure();
        if (!Travel.goesByRoad(x)) {
            return Stream.of(new Outcome.DoesNotApply(Travel.STAYS));
        }
        return Stream.of(Travel.unknownRoad(x).map(why -> (Outcome) new Outcome.CannotTell(List.of(), why)).orElseGet(() -> judge(e, x)));
    }

    private static Outcome judge(Evidence e, Exposure x) {
        Box wall = e.elevation().outline().box();
        Most most = Travel.road(x).flatMap(Road::height).orElse(Road.COMMON_HEIGHT);
        boolean known = e.elevation().outline().ground().isPresent();
        long height = wall.maxY() - e.elevation().outline().ground().orElse(wall.minY());
        if (height > most.mm() * 100L) {
            return broken(e, x, wall, height, most, known);
        }
        return known ? Outcome.Holds.of()
                : new Outcome.CannotTell(List.of(), "wall.ground is not stated: the level of the road under the wheels, against y = 0");
    }

    private static Outcome broken(Evidence e, Exposure x, Box wall, long height, Most most, boolean known) {
        String high = LengthText.mmBeside(height, most.mm() * 100L), over = LengthText.mmUp(height - most.mm() * 100L);
        Place where = Place.line(e.elevation(), Surface.WALL, List.of(new Point(wall.minX(), wall.maxY()), new Point(wall.maxX(), wall.maxY())));
        return Finding.of(INFO, where, List.of()).compares(height / 100.0, most.mm(), "mm").source(most.source())
                .reads(high + " high", most.mm() + " or less")
                .says("The wall's top is " + high + " above " + (known ? "the road" : "its own foot, and higher above the road") + ". " + asked(x, most) + " The roof above it is not counted.",
                        "Take " + over + " off the height with the roof counted, lower the floor, or carry it as an abnormal load with the permits that this takes. Measure as loaded, on its wheels, "
                        + "before it goes out: licensed people and the road's own law decide, and bridges may be lower. Fix all that is loose before towing.");
    }

    private static String asked(Exposure x, Most most) {
        Optional<Road> road = Travel.road(x);
        String mm = most.mm() + " is the most";
        if (most.source().known() != Known.COMMON_PRACTICE) {
            return mm + " on the roads of " + road.orElseThrow().name() + " (" + most.source().text() + ").";
        }
        return mm + " by common practice" + road.map(r -> "; the law of " + r.name() + " that was read sets no height").orElse("; the file names no road") + ".";
    }
}
