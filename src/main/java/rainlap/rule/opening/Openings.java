package rainlap.rule.opening;

import rainlap.wall.Opening;
import rainlap.wall.Side;

/** What the rules of openings say alike. */
final class Openings {
    private Openings() {}

    /** {@code sill of W1}. */
    static String name(Opening o, Side side) {
        return side.inWords() + " of " + o.id();
    }
}
