package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.material.Edge;
import rainlap.wall.Side;
import rainlap.water.How.Move;

/** Follows the water of one upright strip of a wall. Each cell keeps what water has come to its gaps; only what is new there moves on. */
final class Flow {
    /** Ways that cost more are not followed. */
    static final int MOST = 2;

    private final int strip;
    private final Coat coat;
    private final Winds winds;
    private final Runs runs;
    private final Ways ways;
    private final Pipes pipes;
    private final List<Cell> cells;
    private final Bounds bounds;
    /** By cost. */
    private final List<Agenda> waiting = new ArrayList<>();
    /** What goes to other strips. */
    private final List<Coming> sent = new ArrayList<>();
    private final List<Wet> entries = new ArrayList<>();
    private final List<Wet> firsts = new ArrayList<>();

    /** @param cells of the strip, in the order of their numbers */
    Flow(int strip, List<Cell> cells, Coat coat, Drive drive, Bounds bounds) {
        this.strip = strip;
        this.cells = cells;
        this.bounds = bounds;
        this.coat = coat;
        this.winds = new Winds(this, coat, drive);
        this.ways = new Ways(coat, bounds);
        this.pipes = new Pipes(this, coat);
        this.runs = new Runs(this, coat, ways);
        for (int i = 0; i <= MOST; i++) {
            waiting.add(new Agenda());
        }
    }

    boolean rain(Rain rain) {
        for (Cell c : cells) {
            Optional<Wet> wet = rain.on(c);
            (wet.isPresent() ? wet : rain.beside(c).map(Cell::rain)).ifPresent(this::moves);
        }
        return true;
    }

    /** Rain comes to one of its cells. */
    void rain(Wet wet) {
        moves(wet);
    }

    /** Does all that waits at a cost; whether there was anything. */
    boolean settle(int cost) {
        Agenda now = waiting.get(cost);
        boolean any = false;
        while (true) {
            int next = now.nextCell();
            Driven drive = next < 0 ? now.nextDrive() : null;
            if (next >= 0) {
                settle(cells.get(next), cost);
            } else if (drive != null) {
                drive.go(winds);
            } else {
                return any;
            }
            any = true;
        }
    }

    private void settle(Cell c, int cost) {
        for (int gap = c.openGap() - 1; gap >= 0; gap--) {
            Pool pool = c.poolOrNull(gap);
            if (pool != null) {
                settle(pool, cost);
            }
        }
    }

    private void settle(Pool pool, int cost) {
        int before = pool.count();
        pool.settle(cost);
        for (int i = before; i < pool.count(); i++) {
            Wet fresh = pool.settled(i);
            if (fresh.isOnFrame()) {
                fresh.cell().wetFrame(cost);
                if (cost > 0 && (fresh.source() == null || !fresh.source().isOnFrame())) {
                    firsts.add(fresh);
                }
            }
            moves(fresh);
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

    /** Itself, without what is remembered of drives: it takes a third of the room, and all is settled. */
    Flow settled() {
        cells.forEach(Cell::forgetDrives);
        return this;
    }

    List<Trapped> trapped() {
        return runs.trapped();
    }

    List<OnBatten> onBattens() {
        return runs.onBattens();
    }

    List<Coming> sent() {
        return sent;
    }

    private boolean isHere(Cell c) {
        return c.strip == strip;
    }

    /** Whether what is driven into a gap at a cost is followed. In the open the rain there makes the same drives, and sooner. */
    boolean follows(Cell c, int gap, int cost) {
        return cost <= bounds.most() && gap != c.openGap() && bounds.hold(c, cost);
    }

    /** Puts off a drive that is followed until all that is cheaper, and all that falls, is done. */
    void later(Driven d) {
        if (!isHere(d.cell())) {
            sent.add(d);
        } else if (!d.isKnown()) {
            waiting.get(d.cost()).add(d.cell().number, d);
        }
    }

    /** Goes on with a drive at once. */
    void further(Driven d) {
        if (isHere(d.cell())) {
            d.go(winds);
        } else {
            sent.add(d);
        }
    }

    /** Water crosses a line into gap j of a cell, up to that cell's upper line. */
    private void fill(Cell c, int j, Crossing x, long from, long to, Wet w, Move move, Line line) {
        int cost = w.cost() + x.cost(j);
        if (j == c.openGap() || cost > bounds.most()) {
            return;
        }
        boolean enters = j == 0 && !w.isOnFrame();
        if (enters || !isHere(c) || !c.pool(j).isFull(w.running(), cost, from, to)) {
            wet(new Wet(c, j, w.running(), cost, from, to, c.upper.at(from), c.upper.at(to), w, x.how(move, j), line));
        }
    }

    void wet(Wet w) {
        Cell c = w.cell();
        if (w.gap() == c.openGap() || w.from() >= w.to() || w.cost() > bounds.most() || !bounds.hold(c, w.cost())) {
            return;
        }
        if (!isHere(c)) {
            sent.add(w);
        } else {
            boolean spreads = c.ground.isSill() && w.running();
            Wet all = !spreads ? w : new Wet(c, w.gap(), true, w.cost(), c.x0, c.x1, c.upper.at(c.x0), c.upper.at(c.x1), w.source(), w.how(), w.line());
            if (w.isOnFrame() && (w.source() == null || !w.source().isOnFrame()) && c.isNewEntry(w)) {
                entries.add(w);
            }
            Pool pool = c.pool(w.gap());
            if (!pool.covers(all)) {
                pool.add(all);
                waiting.get(w.cost()).add(c.number);
            }
        }
    }

    private void moves(Wet w) {
        falls(w);
        if (w.cell().pipe >= 0) {
            pipes.in(w);
        }
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
                    boolean away = runs.along(w, a, b, !x.isFree());
                    runs.rest(w, x, a, b, !away);
                }
            }
        }
        if (w.running() && c.overPipe) {
            runs.along(w, w.from(), w.to(), true);
        }
    }

    private void fall(Wet w, Seam s, Crossing x, long a, long b) {
        Cell c = s.lower();
        Line line = s.carriesOver() && !c.ground.isSill() ? null : s.line().part(a, b);
        for (int j = x.lo; j <= x.hi; j++) {
            if (s.ontoSill() && w.running()) {
                fill(c, j, x, c.x0, c.x1, w, Move.FALL, line);
            } else if (s.ontoSill()) {
                intoCorner(w, s, j, x, b);
            } else {
                fill(c, j, x, a + s.shift(), b + s.shift(), w, Move.FALL, line);
            }
        }
    }

    /** What wind drove and what falls back from a jamb onto the sill spreads no further than the corner. */
    private void intoCorner(Wet w, Seam s, int j, Crossing x, long upTo) {
        Cell c = s.lower();
        long from = s.upper().ground.surface().side() == Side.LEFT ? c.x0 : c.x1 - 1;
        wet(new Wet(c, j, false, w.cost() + x.cost(j), from, from + 1, upTo, upTo, w, x.how(Move.FALL, j), s.line().part(w.from(), upTo)));
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
}
