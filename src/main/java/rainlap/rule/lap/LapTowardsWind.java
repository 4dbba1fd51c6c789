package rainlap.rule.lap;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Exposure;

/** The open edge of an end lap of the membrane faces the prevailing wind, and no tape closes it. */
public final class LapTowardsWind implements Rule {
    static final RuleInfo INFO = RuleInfo.of("lap-towards-wind", "lap opens towards wind", RuleInfo.Theme.LAPS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        Optional<Exposure.From> wind = e.elevation().exposure().windFrom().filter(w -> w != Exposure.From.FRONT);
        if (wind.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("wind_from states no side of this elevation"));
        }
        List<Joint> ends = EndLaps.onWall(e);
        return ends.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no course has an end lap")) : ends.stream().flatMap(j -> judge(e, j, wind.get()));
    }

    private static Stream<Outcome> judge(Evidence e, Joint j, Exposure.From wind) {
        List<Joint.Stretch> open = MembraneJoints.parts(e, j, r -> faces(r, wind) ? Intervals.of(0, r.length()).minus(r.hidden()) : Intervals.NONE).stream()
                .filter(s -> !s.taped()).toList();
        return open.isEmpty() ? Stream.of(Outcome.Holds.of(j)) : open.stream().map(s -> broken(e, j, s, wind));
    }

    private static boolean faces(Run r, Exposure.From wind) {
        return r.faces().facesSideways() && r.faces().across() > 0 == (wind == Exposure.From.RIGHT);
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s, Exposure.From wind) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id(), cover = e.practice().get(Limit.TAPE_COVER).number();
        boolean travel = e.elevation().exposure().leading().filter(l -> l != wind && LapTowardsTravel.travels(e)).isPresent();
        String towards = wind == Exposure.From.RIGHT ? "right" : "left", away = wind == Exposure.From.RIGHT ? "left" : "right";
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        return Finding.of(INFO, where, List.of(outer, inner)).reads("opens to the " + towards, travel ? "taped" : "opens to the " + away + ", or taped").joint(j.id())
                .says("The end lap " + outer + " over " + inner + " opens to the " + towards + " at " + where.inWords() + ", where the prevailing wind comes from, and no tape closes it: "
                        + "rain is driven in under its edge. Common practice has laps open away from the wind, or closes them.",
                        "Tape the edge, at least " + cover + " to each side of it" + (travel ? ". Leave " + outer + " over " + inner + ": turned round the edge would look to the " + away + ", the way the building travels."
                        : "; or lay " + inner + " over " + outer + " instead, so that the edge looks to the " + away + "."));
    }
}
