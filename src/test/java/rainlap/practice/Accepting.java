package rainlap.practice;

import java.util.List;
import rainlap.source.Source;

/** Practices for tests that say what no shipped one says. */
public final class Accepting {
    private Accepting() {}

    /** A practice that asks for a length or tape, and is silent on all else. */
    public static Practice tapeInsteadOf(Limit limit, double mm) {
        return Practice.of(new Practice.Text("test", "Test", "Invented for a test.", List.of()),
                List.of(new LimitValue(limit, mm, true, Source.commonPractice(), "test", "")), Practices.common());
    }
}
