package rainlap.rule.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.measure.LengthText;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.wall.Exposure;
import rainlap.wall.Exposure.From;

/** A lap of cladding opens towards what drives rain into it: upwards, to the prevailing wind, or in the direction of travel. */
public final class LapTowardsWeather implements Rule {
    static final RuleInfo INFO = RuleInfo.of("lap-towards-weather", "lap opens towards weather", RuleInfo.Theme.FACE);
    private static final Source ADVICE = new Source("ABCB Housing Provisions", "2022", "7.2.5, explanatory", Known.PUBLISHED);
    private static final Source UPPER_OVER_LOWER = new Source("FEMA P-499, Fact Sheet 1.9", "12/10", "page 2", Known.PUBLISHED);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        if (Cladding.sheets(e).isEmpty()) {
            return Stream.of(Cladding.none());
        }
        List<Outcome> out = new ArrayList<>();
        SheetJoints.laps(e).forEach(j -> judge(e, j, out));
        return out.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no lap of sheets opens upwards, and none sideways whose weather is stated by wind_from or leading"))
                : out.stream();
    }

    private static void judge(Evidence e, Joint j, List<Outcome> out) {
        if (j.kind() == JointKind.REVERSE_LAP) {
            parts(e, j, r -> true).forEach(s -> out.add(upwards(e, j, s)));
            return;
        }
        Exposure x = e.elevation().exposure();
        boolean sideways = j.runs().stream().anyMatch(SheetJoints::isPlumb);
        if (!sideways || windSide(x).isEmpty() && x.leading().isEmpty()) {
            if (!sideways) {
                out.add(SheetJoints.holds(j));
            }
            return;
        }
        int before = out.size();
        windSide(x).ifPresent(w -> parts(e, j, r -> opensTo(r, w)).forEach(s -> out.add(sideways(e, j, s, "the prevailing wind", w, ADVICE))));
        x.leading().filter(l -> !windSide(x).equals(Optional.of(l)))
                .ifPresent(l -> parts(e, j, r -> opensTo(r, l)).forEach(s -> out.add(sideways(e, j, s, "travel", l, Source.commonPractice()))));
        if (out.size() == before) {
            out.add(SheetJoints.holds(j));
        }
    }

    private static Optional<From> windSide(Exposure x) {
        return x.windFrom().filter(w -> w != From.FRONT);
    }

    private interface Which {
        boolean is(Run r);
    }

    private static List<Joint.Stretch> parts(Evidence e, Joint j, Which which) {
        return MembraneJoints.parts(e, j, r -> which.is(r) ? Intervals.of(0, r.length()).minus(r.hidden()) : Intervals.NONE);
    }

    private static boolean opensTo(Run r, From side) {
        return SheetJoints.isPlumb(r) && (side == From.RIGHT) == (r.faces().across() > 0);
    }

    private static Outcome upwards(Evidence e, Joint j, Joint.Stretch s) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        return Finding.of(INFO, where, List.of(outer, inner)).source(UPPER_OVER_LOWER).measures(s.least()).joint(j.id())
                .reads(LengthText.mm(s.least()) + ", opens upwards", "upper over lower")
                .says("The upper edge of " + outer + " lies over " + inner + " at " + where.inWords() + ": rain that runs down " + inner + " goes in behind " + outer
                        + ". Laps must never turn an open seam towards water that runs down (FEMA P-499, Fact Sheet 1.9, page 2).",
                        "Take both off and lay " + inner + " over " + outer + "." + CAUTION);
    }

    private static Outcome sideways(Evidence e, Joint j, Joint.Stretch s, String what, From side, Source source) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id(), from = side == From.LEFT ? "left" : "right";
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        boolean wind = source == ADVICE;
        String meets = wind ? "the prevailing wind comes from the " + from : "the building travels with its " + from + " side first";
        String who = wind ? "ABCB Housing Provisions 2022, 7.2.5, advises side laps that face away from it wherever possible"
                : "Common practice is laps that open away from travel";
        return Finding.of(INFO, where, List.of(outer, inner)).source(source).measures(s.least()).joint(j.id())
                .reads("opens to the " + from, "opens away from " + (wind ? "wind" : "travel"))
                .says("The lap of " + outer + " over " + inner + " at " + where.inWords() + " opens to the " + from + ", and " + meets + ": rain is driven into it. " + who + ".",
                        "Lay the sheets again from the " + (side == From.LEFT ? "right to the left" : "left to the right") + ", so that " + inner + " laps over " + outer + "." + CAUTION);
    }

    private static final String CAUTION = " Sheet edges cut, and wind catches sheets: wear gloves, and do not handle them in wind.";
}
