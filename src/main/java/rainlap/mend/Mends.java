package rainlap.mend;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.penetration.NoCollar;

/** How what each rule finds is mended, where a change of pieces on the drawing shows it; the ways are tried in turn. */
final class Mends {
    private static final Map<String, List<Mend>> BY_RULE = Map.ofEntries(
            Map.entry("bare-corner", List.of(CornerMends::piece)),
            Map.entry("bare-threshold", List.of(CornerMends::threshold, CornerMends::thresholdAnew)),
            Map.entry("bare-wall", List.of(SheetMends::covered)),
            Map.entry("butt-joint", List.of(LapMends::stripped, LapMends::bridged)),
            Map.entry("closed-cavity", List.of(EdgeMends::trimmed)),
            Map.entry("end-lap-near-opening", List.of(EndLapMends::moved)),
            Map.entry("flashing-in-front", List.of(OpeningMends::slit)),
            Map.entry("flat-capping", List.of(FlashingMends::packed)),
            Map.entry("flat-flashing", List.of(FlashingMends::fallen)),
            Map.entry("flat-sill", List.of(CornerMends::piece)),
            Map.entry("lap-towards-travel", List.of(LapMends::turnedLonger, LapMends::turned)),
            Map.entry("lap-towards-weather", List.of(LapMends::turned)),
            Map.entry("lap-towards-wind", List.of(TapeMends::over, LapMends::turned)),
            Map.entry("leaks-as-drawn", List.of(WaterMends::reaching, WaterMends::raised, WaterMends::sealed, SheetMends::collared, SheetMends::covered)),
            Map.entry("missing-head-flap", List.of(OpeningMends::flap)),
            Map.entry("missing-head-flashing", List.of(FlashingMends::headedOnStrip, FlashingMends::headed)),
            Map.entry("narrow-tape-cover", List.of(TapeMends::tape)),
            Map.entry("no-back-dam", List.of(FlashingMends::backed)),
            Map.entry("no-collar", List.of(SheetMends::collared)),
            Map.entry("no-drip", List.of(FlashingMends::dripping)),
            Map.entry("no-end-dam", List.of(FlashingMends::dammed)),
            Map.entry("one-failure-away", List.of(WaterMends::reaching, SheetMends::covered)),
            Map.entry("open-gap", List.of(LapMends::stripped, LapMends::bridged)),
            Map.entry("open-top", List.of(EdgeMends::topped)),
            Map.entry("pan-over-jamb", List.of(CornerMends::down)),
            Map.entry("reverse-lap", List.of(LapMends::reverse, SheetMends::tucked)),
            Map.entry("short-capping-lap", List.of(FlashingMends::lapped)),
            Map.entry("short-corner-wrap", List.of(EdgeMends::wrappedAnew, EdgeMends::wrapped)),
            Map.entry("short-course-lap", List.of(LapMends::lengthened)),
            Map.entry("short-end-lap", List.of(LapMends::turnedLonger, LapMends::lengthened)),
            Map.entry("short-flashing", List.of(FlashingMends::longer)),
            Map.entry("short-flashing-lap", List.of(LapMends::lengthened)),
            Map.entry("short-return", List.of(OpeningMends::returned, OpeningMends::returnedBehind)),
            Map.entry("short-sheet-end-lap", List.of(LapMends::lengthened)),
            Map.entry("short-sheet-side-lap", List.of(LapMends::lengthened)),
            Map.entry("short-turn-down", List.of(FlashingMends::turnedDown)),
            Map.entry("short-upstand", List.of(FlashingMends::higher, OpeningMends::flap)),
            Map.entry("tape-missed", List.of(TapeMends::tape)),
            Map.entry("tape-order", List.of(TapeMends::ordered)),
            Map.entry("uncovered-base", List.of(EdgeMends::footed, EdgeMends::past)),
            Map.entry("uncapped-parapet", List.of(FlashingMends::capped)),
            Map.entry("unstaggered-laps", List.of(EndLapMends::moved)),
            Map.entry("unsealed-collar", List.of(TapeMends::over)),
            Map.entry("untaped-corner", List.of(TapeMends::tape)),
            Map.entry("untaped-joint", List.of(TapeMends::tape)),
            Map.entry("unwrapped-corner", List.of(EdgeMends::wrappedAnew, EdgeMends::wrapped)),
            Map.entry("way-round-an-end", List.of(FlashingMends::dammed)));

    private static final String DAY = "another day or another material mends it, which a cut does not show.";
    private static final String BATTENS = "its remedy moves battens or cladding over the whole wall.";
    private static final String FACE = "its remedy takes cladding or trims off and sets them anew.";

    /** Why no cut shows the remedy of the others. */
    private static final Map<String, String> WHY = Map.ofEntries(
            Map.entry("attacking-pair", DAY), Map.entry("corrodes-where-wet", DAY), Map.entry("rots-where-wet", DAY), Map.entry("tape-out-of-service", DAY),
            Map.entry("timber-on-metal-batten", DAY), Map.entry("too-long-in-sun", DAY),
            Map.entry("reversed-tape-lap", "tapes are lifted and stuck down in another order at their ends, which a cut across them does not show."),
            Map.entry("bead-off-tape", "something is taken away before it is laid anew."),
            Map.entry("level-batten", BATTENS), Map.entry("shallow-cavity", BATTENS), Map.entry("open-outlet", BATTENS),
            Map.entry("water-on-batten", BATTENS), Map.entry("low-cladding", BATTENS), Map.entry("short-cladding", BATTENS),
            Map.entry("no-room-to-move", FACE), Map.entry("open-face-joint", FACE), Map.entry("trim-against-flow", FACE),
            Map.entry("closed-sill", "something is taken away, and nothing is laid."),
            Map.entry("trapped-water", "where the water is to leave is for whoever lays it to choose."),
            Map.entry("over-height", "the load is too large as a whole."), Map.entry("over-width", "the load is too large as a whole."));

    /** A way to mend a finding. */
    interface Mend {
        /** The pieces changed; empty where this finding cannot be mended so. */
        Optional<Edited> of(Evidence e, Finding f);
    }

    private Mends() {}

    static List<Mend> of(String rule) {
        return BY_RULE.getOrDefault(rule, List.of());
    }

    /** Why a rule is mended in words only; empty for the others. */
    static Optional<String> why(String rule) {
        return Optional.ofNullable(WHY.get(rule));
    }

    /** Why nothing is drawn whatever the pieces are. */
    static Optional<String> refusal(Evidence e, Finding f) {
        boolean hot = e.elevation().penetrationsMeeting(f.where().box()).stream().anyMatch(NoCollar::isHot);
        return hot ? Optional.of("clearance round a flue or hot duct is for licensed people and local code to say.") : why(f.rule());
    }
}
