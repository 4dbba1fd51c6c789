package rainlap.water;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import rainlap.material.Edge;
import rainlap.water.How.Move;

/**
 * Follows all water at once, cheapest ways first: moves that cost nothing before those that cost one, and so on. Each cell keeps what water has
 * come to its gaps; only what is new there moves on.
 */
final class Flow {
    /** Ways that cost more are not followed. */
    static final int MOST = 2;

    private final Coat coat;
    private final Winds winds;
    private final Runs runs;
    private final Ways ways;
    private final List<Queue<Runnable>> waiting = new ArrayList<>();
    private final List<Wet> onFrame = new ArrayList<>();

    Flow(Coat coat, Drive drive) {
        this.coat = coat;
        this.winds = new Winds(this, coat, drive);
        this.ways = new Ways(coat);
        this.runs = new Runs(this, coat, ways);
        for (int i = 0; i <= MOST; i++) {
            waiting.add(new ArrayDeque<>());
        }
    }

    void run(List<Ground> grounds) {
        for (Ground g : grounds) {
            for (Cell c : g.cells) {
                moves(c.rain());
                if (c.pipe >= 0) {
                    wetAtPipe(c);
                }
            }
        }
        for (Queue<Runnable> q : waiting) {
            while (!q.isEmpty()) {
                q.poll().run();
            }
        }
    }

    /** All water that came onto the frame, in the order found, rain on a bare frame left out. */
    List<Wet> onFrame() {
        return onFrame;
    }

    List<Trapped> trapped() {
        return runs.trapped();
    }

    /** Puts off a move until all cheaper ones are done. */
    void later(int cost, Runnable move) {
        if (cost <= MOST) {
            waiting.get(cost).add(move);
        }
    }

    /** Water comes to a gap, up to its cell's upper line. */
    void fill(Cell c, int gap, boolean running, int cost, long from, long to, Wet source, How how) {
        wet(new Wet(c, gap, running, cost, from, to, c.upper.at(from), c.upper.at(to), source, how));
    }

    void wet(Wet w) {
        Cell c = w.cell();
        if (w.gap() != c.openGap() && w.from() < w.to()) {
            boolean spreads = c.ground.isSill() && w.running();
            Wet all = !spreads ? w : new Wet(c, w.gap(), true, w.cost(), c.x0, c.x1, c.upper.at(c.x0), c.upper.at(c.x1), w.source(), w.how());
            later(w.cost(), () -> settle(all));
        }
    }

    private void settle(Wet w) {
        List<Wet> there = w.cell().wet[w.gap()];
        if (there == null) {
            there = w.cell().wet[w.gap()] = new ArrayList<>(1);
        }
        for (Wet fresh : new Uncovered(there).partsOf(w)) {
            there.add(fresh);
            if (fresh.isOnFrame()) {
                onFrame.add(fresh);
            }
            moves(fresh);
        }
    }

    private void moves(Wet w) {
        falls(w);
        if (w.running()) {
            winds.startFrom(w);
            runs.overLedge(w);
            if (w.cell().ground.isSill()) {
                spreads(w);
            }
        }
    }

    /** Down over every line below. */
    private void falls(Wet w) {
        Cell c = w.cell();
        for (Seam s : c.down) {
            long a = Math.max(s.from(), w.from()), b = Math.min(s.to(), w.to());
            if (a < b && !isCarriedPast(c.pile, w.gap(), s.inFront())) {
                Crossing x = new Crossing(coat, c.pile, w.gap(), s.lower().pile, Edge.TOP);
                fall(w, s, x, a, b);
                if (w.running() && ways.isHeld(x)) {
                    runs.along(w, a, b, !x.isFree());
                }
            }
        }
        if (w.running() && c.overPipe) {
            runs.along(w, w.from(), w.to(), true);
        }
    }

    private void fall(Wet w, Seam s, Crossing x, long a, long b) {
        for (int j = x.lo; j <= x.hi; j++) {
            How how = how(Move.FALL, x, j, s.line().isLevel() ? Line.level(s.line().ay(), a, b) : s.line());
            if (s.ontoSill()) {
                fill(s.lower(), j, w.running(), w.cost() + x.cost(j), s.lower().x0, s.lower().x1, w, how);
            } else {
                fill(s.lower(), j, w.running(), w.cost() + x.cost(j), a + s.shift(), b + s.shift(), w, how);
            }
        }
    }

    static How how(Move move, Crossing x, int j, Line line) {
        return new How(move, x.begins(j) ? x.overAt(j) : x.cost(j) > 0 ? x.overAt(j) : -1, line);
    }

    /** Whether water in this gap lies on, or outside, a piece that goes on in front of the opening it comes to. */
    static boolean isCarriedPast(Pile here, int gap, Pile inFront) {
        for (int k = 0; inFront != null && k < gap; k++) {
            if (inFront.holds(here.at(k))) {
                return true;
            }
        }
        return false;
    }

    /** On a sill: over every line and border, to all sides. */
    private void spreads(Wet w) {
        Cell c = w.cell();
        for (Seam s : c.up) {
            if (s.upper().ground == c.ground) {
                spread(w, s.upper(), Edge.BOTTOM, s.line());
            }
        }
        for (Seam s : c.down) {
            if (s.lower().ground == c.ground) {
                spread(w, s.lower(), Edge.TOP, s.line());
            }
        }
        for (Flank f : c.flanks) {
            if (f.b().ground == c.ground) {
                spread(w, f.b(), f.aRight() ? Edge.LEFT : Edge.RIGHT, null);
            }
        }
    }

    private void spread(Wet w, Cell to, Edge facing, Line line) {
        Crossing x = new Crossing(coat, w.cell().pile, w.gap(), to.pile, facing);
        for (int j = x.lo; j <= x.hi; j++) {
            fill(to, j, true, w.cost() + x.cost(j), to.x0, to.x1, w, how(Move.SPREAD, x, j, line));
        }
    }

    private void wetAtPipe(Cell c) {
        int cost = 0;
        for (int gap = c.openGap() - 1; gap >= 0; gap--) {
            cost = coat.isHeldToPipe(c.pile.at(gap)) ? 1 : cost;
            fill(c, gap, true, cost, c.x0, c.x1, null, new How(Move.PIPE, c.pile.at(gap), c.upper));
        }
    }
}
