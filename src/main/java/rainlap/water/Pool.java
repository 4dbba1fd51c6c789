package rainlap.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The water of one gap of a cell: what has settled there and moved on, and what has come since. */
final class Pool {
    private static final Comparator<Wet> BY_PLACE = Comparator.comparingLong(Wet::from).thenComparing(Wet::to, Comparator.reverseOrder());

    final Cell cell;
    final int gap;
    private final List<Wet> settled = new ArrayList<>(2);
    private List<Wet> come = new ArrayList<>(2);

    Pool(Cell cell, int gap) {
        this.cell = cell;
        this.gap = gap;
    }

    List<Wet> settled() {
        return settled;
    }

    /** Whether all of it is there already, at no higher cost and at least as high. */
    boolean covers(Wet w) {
        for (Wet old : settled) {
            if (old.covers(w)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the whole height of a stretch is wet already, at no higher cost. */
    boolean isFull(boolean running, int cost, long from, long to) {
        for (Wet old : settled) {
            if (old.cost() <= cost && (old.running() || !running) && old.from() <= from && old.to() >= to
                    && old.top(from) >= cell.upper.at(from) - Uncovered.SAME && old.top(to) >= cell.upper.at(to) - Uncovered.SAME) {
                return true;
            }
        }
        return false;
    }

    /** Water comes. */
    void add(Wet w) {
        come.add(w);
    }

    /** Settles what has come at a cost, running water first; returns what is new. */
    List<Wet> settle(int cost) {
        if (come.isEmpty()) {
            return List.of();
        }
        List<Wet> fresh = new ArrayList<>(1);
        if (come.size() == 1) {
            if (come.get(0).cost() != cost) {
                return List.of();
            }
            settle(come.get(0), fresh);
            come.clear();
            return fresh;
        }
        List<Wet> running = new ArrayList<>(come.size()), driven = new ArrayList<>(0), rest = new ArrayList<>(0);
        for (Wet w : come) {
            (w.cost() != cost ? rest : w.running() ? running : driven).add(w);
        }
        come = rest;
        joined(running).forEach(w -> settle(w, fresh));
        joined(driven).forEach(w -> settle(w, fresh));
        return fresh;
    }

    private void settle(Wet w, List<Wet> fresh) {
        if (settled.isEmpty()) {
            settled.add(w);
            fresh.add(w);
        } else {
            List<Wet> parts = new Uncovered(settled).partsOf(w);
            settled.addAll(parts);
            fresh.addAll(parts);
        }
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
