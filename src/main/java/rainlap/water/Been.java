package rainlap.water;

import java.util.ArrayList;
import java.util.List;

/** Which drives have been in a cell; how far they got there, but not where they came from. */
final class Been {
    private List<Lifts.Lift> lifts = List.of();
    private List<Lifts.Overrun> overruns = List.of();
    private List<Push> pushes = List.of();

    /** Whether a lift tells nothing new. */
    boolean covers(Lifts.Lift l) {
        for (Lifts.Lift k : lifts) {
            if (k.covers(l)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a push tells nothing new. */
    boolean covers(Push p) {
        for (Push k : pushes) {
            if (k.covers(p)) {
                return true;
            }
        }
        return false;
    }

    private boolean covers(Lifts.Overrun o) {
        for (Lifts.Overrun k : overruns) {
            if (k.covers(o)) {
                return true;
            }
        }
        return false;
    }

    /** Remembers a lift; whether it tells anything new. */
    boolean isNew(Lifts.Lift l) {
        boolean fresh = !covers(l);
        lifts = fresh ? with(lifts, l.bare()) : lifts;
        return fresh;
    }

    boolean isNew(Push p) {
        boolean fresh = !covers(p);
        pushes = fresh ? with(pushes, p.bare()) : pushes;
        return fresh;
    }

    boolean isNew(Lifts.Overrun o) {
        boolean fresh = !covers(o);
        overruns = fresh ? with(overruns, o.bare()) : overruns;
        return fresh;
    }

    /** Most hold one. */
    private static <T> List<T> with(List<T> all, T next) {
        List<T> more = all.isEmpty() ? new ArrayList<>(1) : all;
        more.add(next);
        return more;
    }
}
