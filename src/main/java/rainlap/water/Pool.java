package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The water of one gap of a cell: what has settled there and moved on, and what has come since. */
final class Pool {
    private static final Comparator<Wet> BY_PLACE = Comparator.comparingLong(Wet::from).thenComparing(Wet::to, Comparator.reverseOrder());

    private static final Wet[] NONE = {};

    private final Cell cell;
    /** Arrays that grow, and no lists: a wall has some twenty pools a piece, and most hold one or two. */
    private Wet[] settled = NONE;
    private int count;
    private Wet[] come = NONE;
    private int waiting;

    Pool(Cell cell) {
        this.cell = cell;
    }

    List<Wet> settled() {
        return Arrays.asList(settled).subList(0, count);
    }

    /** Whether any has settled at just this cost. */
    boolean holds(int cost) {
        for (int i = 0; i < count; i++) {
            if (settled[i].cost() == cost) {
                return true;
            }
        }
        return false;
    }

    /** Whether all of it is there already, at no higher cost and at least as high. */
    boolean covers(Wet w) {
        for (int i = 0; i < count; i++) {
            if (settled[i].covers(w)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the whole height of a stretch is wet already, at no higher cost. */
    boolean isFull(boolean running, int cost, long from, long to) {
        for (int i = 0; i < count; i++) {
            Wet old = settled[i];
            if (old.cost() <= cost && (old.running() || !running) && old.from() <= from && old.to() >= to
                    && old.top(from) >= cell.upper.at(from) - Uncovered.SAME && old.top(to) >= cell.upper.at(to) - Uncovered.SAME) {
                return true;
            }
        }
        return false;
    }

    /** Water comes. */
    void add(Wet w) {
        come = with(come, waiting++, w);
    }

    private static Wet[] with(Wet[] all, int n, Wet w) {
        Wet[] room = n < all.length ? all : Arrays.copyOf(all, n == 0 ? 2 : 2 * n);
        room[n] = w;
        return room;
    }

    /** Settles what has come at a cost, running water first; returns what is new. */
    List<Wet> settle(int cost) {
        List<Wet> running = null, driven = null;
        int rest = 0;
        for (int i = 0; i < waiting; i++) {
            Wet w = come[i];
            if (w.cost() != cost) {
                come[rest++] = w;
            } else if (w.running()) {
                running = with(running, w);
            } else {
                driven = with(driven, w);
            }
        }
        Arrays.fill(come, rest, waiting, null);
        waiting = rest;
        List<Wet> fresh = settle(running, null);
        fresh = settle(driven, fresh);
        return fresh == null ? List.of() : fresh;
    }

    private static List<Wet> with(List<Wet> all, Wet w) {
        List<Wet> room = all == null ? new ArrayList<>(2) : all;
        room.add(w);
        return room;
    }

    private List<Wet> settle(List<Wet> now, List<Wet> before) {
        List<Wet> fresh = before;
        List<Wet> whole = now == null ? List.of() : joined(now);
        for (int i = 0; i < whole.size(); i++) {
            for (Wet part : count == 0 ? List.of(whole.get(i)) : new Uncovered(settled, count).partsOf(whole.get(i))) {
                settled = with(settled, count++, part);
                fresh = with(fresh, part);
            }
        }
        return fresh;
    }

    /** Stretches that fill the cell and touch are one; of their ways the leftmost is told. */
    private static List<Wet> joined(List<Wet> now) {
        if (now.size() < 2) {
            return now;
        }
        now.sort(BY_PLACE);
        List<Wet> out = new ArrayList<>(now.size());
        Wet last = null;
        for (Wet w : now) {
            if (last != null && w.from() <= last.to() && isFull(w) && isFull(last)) {
                last = w.to() <= last.to() ? last : full(last, w.to());
                out.set(out.size() - 1, last);
            } else {
                out.add(w);
                last = w;
            }
        }
        return out;
    }

    private static Wet full(Wet w, long to) {
        Line upper = w.cell().upper;
        return new Wet(w.cell(), w.gap(), w.running(), w.cost(), w.from(), to, upper.at(w.from()), upper.at(to), w.source(), w.how());
    }

    private static boolean isFull(Wet w) {
        return w.leftTop() >= w.cell().upper.at(w.from()) - Uncovered.SAME && w.rightTop() >= w.cell().upper.at(w.to()) - Uncovered.SAME;
    }
}
