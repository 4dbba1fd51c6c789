package rainlap.practice;

import java.util.List;

/** A practice that asks for another value of one limit and else for what an existing one does; for tests of limits. */
public final class ShiftedPractice {
    private ShiftedPractice() {}

    public static Practice of(Practice practice, Limit limit, double value) {
        LimitValue v = practice.get(limit);
        LimitValue other = new LimitValue(limit, value, v.orTaped(), v.source(), v.spokenBy(), v.note(), v.strict());
        return Practice.of(new Practice.Text(practice.id(), practice.title(), practice.about(), List.of()), List.of(other), practice);
    }
}
