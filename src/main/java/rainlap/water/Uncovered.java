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
                left = minus(left, old);
                if (left.isEmpty()) {
                    break;
                }
            }
        }
        return left;
    }

    private static List<Wet> minus(List<Wet> parts, Wet old) {
        List<Wet> out = null;
        for (int i = 0; i < parts.size(); i++) {
            Wet part = parts.get(i);
            if (covers(old, part)) {
                out = out == null ? new ArrayList<>(parts.subList(0, i)) : out;
                long a = Math.max(part.from(), old.from()), b = Math.min(part.to(), old.to());
                if (part.from() < a) {
                    out.add(part.between(part.from(), a));
                }
                if (b < part.to()) {
                    out.add(part.between(b, part.to()));
                }
            } else if (out != null) {
                out.add(part);
            }
        }
        return out == null ? parts : out;
    }

    /**
     * Whether it stands as high over all that they have in common. A stream one grid unit wide in the midst of other water does not part that: down a high wall many gather,
     * and there would be ever more parts of ever less.
     */
    private static boolean covers(Wet old, Wet part) {
        long a = Math.max(part.from(), old.from()), b = Math.min(part.to(), old.to());
        boolean within = part.from() < a && b < part.to();
        return b - a > (within ? 1 : 0) && old.top(a) >= part.top(a) - SAME && old.top(b) >= part.top(b) - SAME;
    }
}
