package rainlap.mend;

import java.util.Map;
import java.util.Optional;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;

/** How what each rule finds is mended, where a change of pieces on the drawing shows it. */
final class Mends {
    private static final Map<String, Mend> BY_RULE = Map.ofEntries(
            Map.entry("reverse-lap", LapMends::reverse),
            Map.entry("lap-towards-travel", LapMends::turned),
            Map.entry("short-course-lap", LapMends::lengthened),
            Map.entry("short-end-lap", LapMends::lengthened),
            Map.entry("butt-joint", LapMends::bridged),
            Map.entry("open-gap", LapMends::bridged),
            Map.entry("untaped-joint", TapeMends::tape),
            Map.entry("tape-missed", TapeMends::tape),
            Map.entry("narrow-tape-cover", TapeMends::tape),
            Map.entry("untaped-corner", TapeMends::tape),
            Map.entry("flashing-in-front", OpeningMends::slit),
            Map.entry("missing-head-flap", OpeningMends::flap),
            Map.entry("short-return", OpeningMends::returned),
            Map.entry("short-corner-wrap", EdgeMends::wrapped),
            Map.entry("unwrapped-corner", EdgeMends::wrapped));

    /** A way to mend a finding. */
    interface Mend {
        /** The pieces changed; empty where this finding cannot be mended so. */
        Optional<Edited> of(Evidence e, Finding f);
    }

    private Mends() {}

    static Optional<Mend> find(String rule) {
        return Optional.ofNullable(BY_RULE.get(rule));
    }
}
