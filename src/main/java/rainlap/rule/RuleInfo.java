package rainlap.rule;

import java.util.List;
import rainlap.practice.Limit;

/**
 * A rule's name and subject.
 *
 * @param id plain words with hyphens that name the defect; permanent
 * @param title the defect in a few words, as a label on the drawing: "reverse lap"
 * @param theme the part of the work it belongs to
 * @param limits the limits it judges by; not those that only its remedy names
 */
public record RuleInfo(String id, String title, Theme theme, List<Limit> limits) {
    public RuleInfo {
        limits = List.copyOf(limits);
    }

    public static RuleInfo of(String id, String title, Theme theme, Limit... limits) {
        return new RuleInfo(id, title, theme, List.of(limits));
    }

    /** What part of the work a rule belongs to. */
    public enum Theme {
        LAPS("laps"), TAPE("tape"), OPENINGS("openings"), PENETRATIONS("penetrations"), EDGES("building edges"),
        CAVITY("the cavity"), FACE("the face"), WATER("the water's way"),
        MATERIALS("materials"), TRANSPORT("transport");

        private final String word;

        Theme(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** Whether its findings tell where water can get past: what is made of the wrong stuff or too large for the road says nothing of that. */
        public boolean tellsOfWater() {
            return this != MATERIALS && this != TRANSPORT;
        }
    }
}
