package rainlap.water;

import java.util.ArrayList;
import java.util.List;

/** What of new water is not there already, at no higher cost and at least as high. */
final class Uncovered {
    /** Heights that differ by less count as equal: half a grid unit. */
    static final double SAME = 0.5;

    private final Wet[] there;

    Uncovered(Wet[] there) {
        this.there = there;
    }

    List<Wet> partsOf(Wet w) {
        List<Wet> left = List.of(w);
        for (Wet old : there) {
            if (old.cost() <= w.cost() && (old.running() || !w.running()) && old.from() < w.to() && old.to() > w.from()) {
                List<Wet> next = new ArrayList<>(left.size() + 1);
                left.forEach(part -> minus(part, old, next));
                left = next;
                if (left.isEmpty()) {
                    break;
                }
            }
        }
        return left;
    }

    private static void minus(Wet part, Wet old, List<Wet> out) {
        long a = Math.max(part.from(), old.from()), b = Math.min(part.to(), old.to());
        if (a >= b || old.top(a) < part.top(a) - SAME || old.top(b) < part.top(b) - SAME) {
            out.add(part);
            return;
        }
        if (part.from() < a) {
            out.add(part.between(part.from(), a));
        }
        if (b < part.to()) {
            out.add(part.between(b, part.to()));
        }
    }
}
