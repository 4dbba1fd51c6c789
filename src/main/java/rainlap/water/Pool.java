package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The water of a cell: what has settled there and moved on, and what has come since. Arrays without room to spare: a wall has some eight cells a piece, and most hold one or two. */
class Pool {
    private static final Comparator<Wet> BY_PLACE = Comparator.comparingLong(Wet::from).thenComparing(Wet::to, Comparator.reverseOrder());
    private static final Comparator<Wet> FEWEST_STEPS = Comparator.comparingInt(Wet::steps);
    private static final Wet[] NONE = {};
    /** Water that is parted by less than 1 mm is one: a stream is wider than that, though it is followed as if it were as narrow as the grid. */
    private static final long ONE = 100;

    private Wet[] settled = NONE;
    private Wet[] come = NONE;

    /** Dry. */
    final void empty() {
        settled = NONE;
        come = NONE;
    }

    final boolean isEmpty() {
        return settled.length == 0 && come.length == 0;
    }

    List<Wet> settled() {
        return Arrays.asList(settled);
    }

    /** Whether all of it is there already, at no higher cost and at least as high. */
    final boolean covers(Wet w) {
        for (Wet old : settled) {
            if (old.covers(w)) {
                return true;
            }
        }
        return false;
    }

    /** Whether all of some water is there already by what came for fewer failures. */
    final boolean isThereForFewer(Wet w) {
        Wet[] fewer = NONE;
        for (Wet old : settled) {
            fewer = old.cost() < w.cost() ? with(fewer, old) : fewer;
        }
        return new Uncovered(fewer).partsOf(w).isEmpty();
    }

    /** Whether the whole height of a stretch is wet already, at no higher cost. */
    final boolean isFull(boolean running, int cost, long from, long to) {
        for (Wet old : settled) {
            if (old.cost() <= cost && (old.running() || !running) && old.from() <= from && old.to() >= to && old.isFull(from, to)) {
                return true;
            }
        }
        return false;
    }

    /** Water comes. */
    final void add(Wet w) {
        come = with(come, w);
    }

    private static Wet[] with(Wet[] all, Wet w) {
        Wet[] more = Arrays.copyOf(all, all.length + 1);
        more[all.length] = w;
        return more;
    }

    final int count() {
        return settled.length;
    }

    final Wet settled(int i) {
        return settled[i];
    }

    /** Settles what has come at a cost, running water first: what is new is added to what had settled. */
    final void settle(int cost) {
        if (come.length == 1) {
            if (come[0].cost() == cost) {
                Wet only = come[0];
                come = NONE;
                settle(only);
            }
            return;
        }
        List<Wet> running = new ArrayList<>(2), driven = new ArrayList<>(2);
        Wet[] rest = NONE;
        for (Wet w : come) {
            if (w.cost() != cost) {
                rest = with(rest, w);
            } else if (w.running()) {
                running.add(w);
            } else {
                driven.add(w);
            }
        }
        come = rest;
        joined(running).forEach(this::settle);
        joined(driven).forEach(this::settle);
    }

    private void settle(Wet w) {
        if (settled.length == 0) {
            settled = new Wet[] {w};
        } else {
            new Uncovered(settled).partsOf(w).forEach(part -> settled = with(settled, bridged(part)));
        }
    }

    /** With what lies between it and like water beside it that is nearer than {@link #ONE}. */
    private Wet bridged(Wet w) {
        long from = w.from(), to = w.to();
        if (!w.isFull(from, to)) {
            return w;
        }
        for (Wet old : settled) {
            if (old.cost() <= w.cost() && old.running() == w.running() && old.isFull(old.from(), old.to())) {
                from = old.to() < w.from() && w.from() - old.to() < ONE ? Math.min(from, old.to()) : from;
                to = old.from() > w.to() && old.from() - w.to() < ONE ? Math.max(to, old.from()) : to;
            }
        }
        return from == w.from() && to == w.to() ? w : full(w, from, to);
    }

    /**
     * Stretches that fill the cell, touch or nearly do, and came alike are one. Of its ways the one with the fewest steps is told, else the leftmost; and so what came by fewer steps
     * settles first.
     */
    private static List<Wet> joined(List<Wet> now) {
        if (now.size() < 2) {
            return now;
        }
        now.sort(BY_PLACE);
        List<Wet> out = new ArrayList<>(now.size());
        for (Wet w : now) {
            int like = w.isFull(w.from(), w.to()) ? touching(out, w) : -1;
            if (like < 0) {
                out.add(w);
            } else {
                Wet last = out.get(like), told = w.steps() < last.steps() ? w : last;
                Wet all = full(told, last.from(), Math.max(last.to(), w.to()));
                out.set(like, all.along(last, w));
            }
        }
        out.sort(FEWEST_STEPS);
        return out;
    }

    private static int touching(List<Wet> out, Wet w) {
        for (int i = out.size() - 1; i >= 0; i--) {
            Wet last = out.get(i);
            if (w.from() < last.to() + ONE && last.isFull(last.from(), last.to()) && w.isLike(last)) {
                return i;
            }
        }
        return -1;
    }

    private static Wet full(Wet w, long from, long to) {
        Line upper = w.cell().upper;
        return new Wet(w.cell(), w.running(), w.cost(), from, to, upper.at(from), upper.at(to), w.source(), w.how(), w.line());
    }
}
