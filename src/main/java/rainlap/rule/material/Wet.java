package rainlap.rule.material;

import java.util.List;
import java.util.function.Supplier;
import rainlap.rule.Outcome;
import rainlap.wall.Exposure;

/** Whether the stated exposure is wet: it is where any rain is stated. */
enum Wet {
    YES, NO, NOT_STATED;

    static Wet of(Exposure x) {
        return x.rainMmPerH().isEmpty() ? NOT_STATED : x.rainMmPerH().getAsDouble() > 0 ? YES : NO;
    }

    /** What is to be said of pieces that come to harm in the wet only: nothing worse than that it is dry, or not known, where it is. */
    Outcome judge(List<String> pieces, Supplier<Outcome> inTheWet) {
        return switch (this) {
            case YES -> inTheWet.get();
            case NO -> new Outcome.DoesNotApply("the exposure states no rain: rain_mm_h is 0");
            case NOT_STATED -> new Outcome.CannotTell(pieces, "the exposure states no rain_mm_h, so it is not known to be wet or dry");
        };
    }
}
