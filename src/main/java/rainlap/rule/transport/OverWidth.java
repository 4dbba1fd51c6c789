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
import rainlap.wall.Exposure;
import rainlap.wall.Surface;

/** The front or rear of a building that travels is wider than the law of its road allows. */
public final class OverWidth implements Rule {
    static final RuleInfo INFO = RuleInfo.of("over-width", "too wide for the road", RuleInfo.Theme.TRANSPORT);

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
        if (x.leading().isPresent()) {
            return Stream.of(new Outcome.DoesNotApply("this side travels along the road (leading): its length is not the building's width"));
        }
        Optional<String> unknown = x.road().isEmpty() ? Optional.of("the exposure names no road, and common practice knows no width") : Travel.unknownRoad(x);
        return Stream.of(unknown.map(why -> (Outcome) new Outcome.CannotTell(List.of(), why)).orElseGet(() -> judge(e, Travel.road(x).orElseThrow())));
    }

    private static Outcome judge(Evidence e, Road road) {
        Box wall = e.elevation().outline().box();
        Most most = road.width().orElseThrow();
        return wall.width() <= most.mm() * 100L ? Outcome.Holds.of() : broken(e, road, wall, most);
    }

    private static Outcome broken(Evidence e, Road road, Box wall, Most most) {
        String wide = LengthText.mmBeside(wall.width(), most.mm() * 100L), over = LengthText.mmUp(wall.width() - most.mm() * 100L);
        Place where = Place.line(e.elevation(), Surface.WALL, List.of(new Point(wall.minX(), wall.minY()), new Point(wall.maxX(), wall.minY())));
        return Finding.of(INFO, where, List.of()).compares(wall.width() / 100.0, most.mm(), "mm").source(most.source())
                .reads(wide + " wide", most.mm() + " or less")
                .says("This end of the building is " + wide + " wide, before cladding and trims stand out at its sides. " + most.mm() + " is the most on the roads of "
                        + road.name() + " (" + most.source().text() + ").",
                        "Make it " + over + " narrower and leave room for cladding and trims on both sides, or carry it as an abnormal load with the permits that this takes. If this side travels along the road, "
                        + "say which end goes first (leading). Licensed people and the road's own law decide.");
    }
}
