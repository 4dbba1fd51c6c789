package rainlap.rule.lap;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Exposure;

/** The open edge of an end lap of the membrane faces the way the building travels: towing drives rain straight into it. */
public final class LapTowardsTravel implements Rule {
    static final RuleInfo INFO = RuleInfo.of("lap-towards-travel", "lap opens towards travel", RuleInfo.Theme.LAPS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        Exposure x = e.elevation().exposure();
        if (x.leading().isEmpty() || !travels(e)) {
            return Stream.of(new Outcome.DoesNotApply("no side of this elevation travels first"));
        }
        List<Joint> ends = EndLaps.onWall(e);
        if (ends.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no course has an end lap"));
        }
        return ends.stream().map(j -> judge(e, j, x.leading().get()));
    }

    static boolean travels(Evidence e) {
        return e.elevation().exposure().towingKmPerH().orElse(0) > 0;
    }

    /** Whether an end lap opens the way the building travels, and so must be turned round whatever else is wrong with it. */
    public static boolean isOpen(Evidence e, Joint j) {
        return travels(e) && EndLaps.onWall(e).stream().anyMatch(o -> o.id().equals(j.id())) && e.elevation().exposure().leading().filter(l -> !facing(e, j, l).isEmpty()).isPresent();
    }

    private static List<Joint.Stretch> facing(Evidence e, Joint j, Exposure.From leading) {
        return MembraneJoints.parts(e, j, r -> faces(r, leading) ? Intervals.of(0, r.length()).minus(r.hidden()) : Intervals.NONE);
    }

    private static Outcome judge(Evidence e, Joint j, Exposure.From leading) {
        List<Joint.Stretch> facing = facing(e, j, leading);
        return facing.isEmpty() ? Outcome.Holds.of(j) : broken(e, j, facing.get(0), leading);
    }

    private static boolean faces(Run r, Exposure.From leading) {
        return r.faces().facesSideways() && r.faces().across() > 0 == (leading == Exposure.From.RIGHT);
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s, Exposure.From leading) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        String ahead = leading == Exposure.From.RIGHT ? "right" : "left", back = leading == Exposure.From.RIGHT ? "left" : "right";
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        return Finding.of(INFO, where, List.of(outer, inner)).reads("opens to the " + ahead, "opens to the " + back).joint(j.id())
                .says("The building travels to the " + ahead + " on this sheet, and the end lap " + outer + " over " + inner + " opens that way at " + where.inWords()
                        + ": rain that towing drives along the wall goes straight in under its edge" + (s.taped() ? ", and only the tape holds it" : "")
                        + ". Common practice has laps open away from travel.",
                        "Lay " + inner + " over " + outer + " instead, from the rear forwards, so that the edge looks to the " + back
                        + width(e, j, s) + tape(e, s) + ". Work at height from a platform, and fix every loose edge before towing.");
    }

    /** A lap that is short too is not to be turned round twice. */
    private static String width(Evidence e, Joint j, Joint.Stretch s) {
        long asked = e.practice().get(Limit.END_LAP).hundredths();
        return s.least() >= asked ? "; keep the lap's width" : "; make the lap at least " + LengthText.mm(MendSizes.lap(e, j, asked, false)) + " wide";
    }

    /** Turned round, the edge may look to the wind, which tape alone closes. */
    static String tape(Evidence e, Joint.Stretch s) {
        String back = e.elevation().exposure().leading().filter(l -> l == Exposure.From.RIGHT).isPresent() ? "left" : "right";
        boolean wind = e.elevation().exposure().windFrom().filter(w -> w.name().toLowerCase(Locale.ROOT).equals(back)).isPresent();
        return (s.taped() ? " and tape it again with new tape" : wind ? " and tape the edge, at least " + e.practice().get(Limit.TAPE_COVER).number() + " to each side" : "")
                + (wind ? ", for it then looks to the prevailing wind" : "");
    }
}
