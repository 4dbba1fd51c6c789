package rainlap.water;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
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
    private final List<Queue<Due>> pools = new ArrayList<>();
    private long count;
    private final List<Wet> entries = new ArrayList<>();
    private final List<Wet> firsts = new ArrayList<>();

    /** A gap that water has come to; higher ones are looked at first, so that most of what comes to a gap has come by then. */
    private record Due(double height, long number, Pool pool) implements Comparable<Due> {
        @Override
        public int compareTo(Due o) {
            int byHeight = Double.compare(o.height, height);
            return byHeight != 0 ? byHeight : Long.compare(number, o.number);
        }
    }

    Flow(Coat coat, Drive drive) {
        this.coat = coat;
        this.winds = new Winds(this, coat, drive);
        this.ways = new Ways(coat);
        this.runs = new Runs(this, coat, ways, winds);
        for (int i = 0; i <= MOST; i++) {
            waiting.add(new ArrayDeque<>());
            pools.add(new PriorityQueue<>());
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
        for (int cost = 0; cost <= MOST; cost++) {
            boolean more = true;
            while (more) {
                more = next(cost);
            }
        }
    }

    /** All water that came onto the frame from another layer, also where the frame was wet already; rain on a bare frame left out. */
    List<Wet> entries() {
        return entries;
    }

    /** Of the water that something had to fail for: what came onto a frame that was dry until then. */
    List<Wet> firsts() {
        return firsts;
    }

    List<Trapped> trapped() {
        return runs.trapped();
    }

    /** Puts off a drive until all that is cheaper, and all that falls, is done. */
    void later(int cost, Runnable move) {
        if (cost <= MOST) {
            waiting.get(cost).add(move);
        }
    }

    /** Water crosses into gap j of a cell, up to that cell's upper line. */
    private void fill(Cell c, int j, Crossing x, long from, long to, Wet w, Move move, Line line) {
        int cost = w.cost() + x.cost(j);
        boolean enters = j == 0 && !w.isOnFrame();
        if (j != c.openGap() && cost <= MOST && (enters || !c.pool(j).isFull(w.running(), cost, from, to))) {
            wet(new Wet(c, j, w.running(), cost, from, to, c.upper.at(from), c.upper.at(to), w, how(move, x, j, line)));
        }
    }

    void wet(Wet w) {
        Cell c = w.cell();
        if (w.gap() != c.openGap() && w.from() < w.to() && w.cost() <= MOST) {
            boolean spreads = c.ground.isSill() && w.running();
            Wet all = !spreads ? w : new Wet(c, w.gap(), true, w.cost(), c.x0, c.x1, c.upper.at(c.x0), c.upper.at(c.x1), w.source(), w.how());
            if (w.isOnFrame() && (w.source() == null || !w.source().isOnFrame()) && c.isNewEntry(w)) {
                entries.add(w);
            }
            Pool pool = c.pool(w.gap());
            if (!pool.covers(all) && pool.isFirst(all)) {
                pools.get(w.cost()).add(new Due(c.ground.height(Math.max(c.upper.at(c.x0), c.upper.at(c.x1))), count++, pool));
            }
        }
    }

    /** Lets what has come to the highest gap settle and move on, or else makes the next drive; false if nothing is left at this cost. */
    private boolean next(int cost) {
        Due due = pools.get(cost).poll();
        if (due != null) {
            for (Wet fresh : due.pool().settle(cost)) {
                if (fresh.isOnFrame() && fresh.cost() > 0 && (fresh.source() == null || !fresh.source().isOnFrame())) {
                    firsts.add(fresh);
                }
                moves(fresh);
            }
            return true;
        }
        Runnable drive = waiting.get(cost).poll();
        if (drive != null) {
            drive.run();
        }
        return drive != null;
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
        Line line = null;
        for (int j = x.lo; j <= x.hi; j++) {
            line = line != null ? line : Winds.part(s.line(), a, b);
            if (s.ontoSill()) {
                fill(s.lower(), j, x, s.lower().x0, s.lower().x1, w, Move.FALL, line);
            } else {
                fill(s.lower(), j, x, a + s.shift(), b + s.shift(), w, Move.FALL, line);
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
            fill(to, j, x, to.x0, to.x1, w, Move.SPREAD, line);
        }
    }

    private void wetAtPipe(Cell c) {
        int cost = 0;
        for (int gap = c.openGap() - 1; gap >= 0; gap--) {
            cost = coat.isHeldToPipe(c.pile.at(gap)) ? 1 : cost;
            How how = new How(Move.PIPE, c.pile.at(gap), c.upper);
            wet(new Wet(c, gap, true, cost, c.x0, c.x1, c.upper.at(c.x0), c.upper.at(c.x1), null, how));
        }
    }
}
