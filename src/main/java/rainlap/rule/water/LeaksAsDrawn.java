package rainlap.rule.water;

import java.util.List;
import java.util.stream.Stream;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** Water comes onto the frame with nothing failing. */
public final class LeaksAsDrawn implements Rule {
    static final RuleInfo INFO = RuleInfo.of("leaks-as-drawn", "leaks as drawn", RuleInfo.Theme.WATER);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Way> ways = Ways.of(e, 0).stream().filter(LeaksAsDrawn::counts).toList();
        return ways.isEmpty() ? Stream.of(Outcome.Holds.of()) : ways.stream().map(w -> broken(e, w));
    }

    /** Whether water that comes onto the frame this way is a leak: not when it leaves a ledge, and not when it starts on frame deep inside an opening. */
    public static boolean counts(Arrival a) {
        return a.defences() == 0 && counts(Way.of(a));
    }

    private static boolean counts(Way w) {
        return !w.leavesALedge() && !w.startsInsideAnOpening();
    }

    private static Outcome broken(Evidence e, Way w) {
        Place where = w.place(e);
        return Finding.of(INFO, where, w.pieces()).way(0, w.path()).litres(w.litresPerHour()).reads("frame is wet", "dry as drawn")
                .says("Water comes onto the frame at " + where.inWords() + " with nothing failing: " + Steps.told(w.path()) + ".",
                        w.last().map(s -> remedy(e, s)).orElse("Cover the frame there with membrane."));
    }

    /** By how the water got under the last piece. */
    private static String remedy(Evidence e, Step s) {
        String p = s.piece(), cover = e.practice().get(Limit.TAPE_COVER).number();
        if (s.kind() == Step.Kind.LIFT_UNDER) {
            return "Let what lies beneath " + p + " reach up behind its lower edge by at least " + LengthText.mm(MendSizes.driven(e, s))
                    + ", the height wind lifts water to, or tape that edge.";
        }
        if (s.kind() == Step.Kind.PUSH_UNDER) {
            return "Let what lies beneath " + p + " reach in behind its side edge by at least " + LengthText.mm(MendSizes.driven(e, s))
                    + ", as far as wind pushes water, or tape that edge.";
        }
        if (s.kind() == Step.Kind.ALONG_A_PIPE) {
            boolean collar = e.elevation().pieces().stream().anyMatch(x -> x.id().equals(p) && x.material().kind() == MaterialKind.COLLAR);
            return collar ? "Seal the pipe to " + p + " all round." : "Fit a collar: " + MendSizes.collarFlat(e) + ", its top " + LengthText.mm(MendSizes.lap(e)) + " up under a slit in "
                    + p + ", sides taped.";
        }
        return "Tuck the edge of " + p + " that meets the water in behind the sheet above it by " + e.practice().get(Limit.COURSE_LAP).number()
                + ", or tape it, " + cover + " to each side.";
    }
}
