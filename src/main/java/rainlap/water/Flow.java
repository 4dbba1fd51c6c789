package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final Sills sills;
    private final Strips.Strip own;
    /** Where drives have been. */
    private List<Cell> driven = new ArrayList<>();
    private Bounds bounds;
    /** On their way from one line to another, for one failure, into cells that do not lead on: they cannot be begun again. */
    private List<Driven> putOff = new ArrayList<>();
    /** By cost. */
    private final List<Agenda> waiting = new ArrayList<>();
    /** What goes to other strips. */
    private final List<Coming> sent = new ArrayList<>();
    /** What has come from other strips. */
    private final List<Coming> expected = new ArrayList<>();
    private final List<Wet> entries = new ArrayList<>();

    /**
     * @param strip the number of that which it follows
     * @param beyond what is known of lines beyond their strips
     */
    Flow(int strip, Strips strips, Coat coat, Drive drive, Bounds bounds, Map<Ways.Step, List<Exit>> beyond) {
        this.strip = strip;
        this.own = strips.strip(strip);
        this.bounds = bounds;
        this.coat = coat;
        this.winds = new Winds(this, coat, drive);
        this.ways = new Ways(coat, bounds, beyond);
        this.pipes = new Pipes(this, coat);
        this.sills = new Sills(this);
        this.runs = new Runs(this, coat, ways);
        for (int i = 0; i <= MOST; i++) {
            waiting.add(new Agenda());
        }
    }

    boolean rain(Rain rain) {
        for (Cell c : own.open()) {
            Optional<Wet> wet = rain.on(c);
            (wet.isPresent() ? wet : rain.beside(c).map(Cell::rain)).ifPresent(this::moves);
        }
        return true;
    }

    /** Rain comes to one of its cells. */
    void rain(Wet wet) {
        moves(wet);
    }

    /**
     * Goes on with water of one failure in cells that did not lead on before, and into them.
     *
     * @param some those cells, and others from which it may get there
     */
    boolean goOn(List<Cell> some) {
        List<Driven> before = putOff;
        putOff = new ArrayList<>();
        before.forEach(this::later);
        for (Cell c : some) {
            if (c.isOpen()) {
                moves(c.rain());
            }
            c.settled().forEach(this::moves);
        }
        return true;
    }

    /** Begins ways of most failures in cells where somebody asks for them, from what has settled there; it goes no further until they are settled. */
    boolean beginLast(List<Cell> asked) {
        bounds = Bounds.LAST_WHERE_ASKED;
        for (Cell c : asked) {
            if (c.isOpen()) {
                begins(c.rain());
            }
            c.settled().forEach(this::begins);
        }
        return true;
    }

    /** Something comes from another strip; it waits there until this one goes on. */
    void expect(Coming c) {
        expected.add(c);
    }

    /** Does all that waits at a cost; whether there was anything. */
    boolean settle(int cost) {
        expected.forEach(c -> c.into(this));
        expected.clear();
        Agenda now = waiting.get(cost);
        boolean any = false;
        while (true) {
            int next = now.nextCell();
            Driven drive = next < 0 ? now.nextDrive() : null;
            if (next >= 0) {
                settle(own.cells().get(next), cost);
            } else if (drive != null) {
                if (!bounds.waitsInVain(drive.cell(), cost)) {
                    drive.go(winds);
                }
            } else {
                return any;
            }
            any = true;
        }
    }

    private void settle(Cell c, int cost) {
        Pool pool = c.pool();
        if (pool.isEmpty() || bounds.waitsInVain(c, cost)) {
            return;
        }
        int before = pool.count();
        pool.settle(cost);
        for (int i = before; i < pool.count(); i++) {
            Wet fresh = pool.settled(i);
            if (fresh.isOnFrame()) {
                fresh.cell().wetFrame(cost);
            }
            moves(fresh);
        }
    }

    /** All water that came onto the frame from another layer, also where the frame was wet already; rain on a bare frame left out. */
    List<Wet> entries() {
        return entries;
    }

    /** Itself, without what is remembered of drives and of ways along lines: that takes much room, and most is settled. */
    Flow settled() {
        driven.forEach(Cell::forgetDrives);
        driven = new ArrayList<>();
        ways.forget();
        runs.forget();
        return this;
    }

    /** Cells whose frame is bare or wet. */
    List<Cell> wetFrame() {
        return own.atFrame().stream().filter(Cell::hasWetFrame).toList();
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

    /** Whether a drive into a gap begins now, at a cost. */
    boolean begins(Cell c, int cost) {
        return bounds.leads(c, cost) && overruns(c, cost);
    }

    /** Whether a lap begins to be overrun now, at a cost: that leads on wherever its lower sheet ends. */
    boolean overruns(Cell c, int cost) {
        return bounds.begin(cost) && follows(c, cost);
    }

    /** Whether what is driven into a gap at a cost is followed. In the open the rain there makes the same drives, and sooner. */
    boolean follows(Cell c, int cost) {
        return cost <= bounds.most() && !c.isOpen() && bounds.hold(c, cost);
    }

    /** The drives that have been in a cell. */
    Been been(Cell c) {
        if (c.beenOrNull() == null) {
            driven.add(c);
        }
        return c.been();
    }

    /** Puts off a drive that is followed until all that is cheaper, and all that falls, is done. */
    void later(Driven d) {
        if (!isHere(d.cell())) {
            sent.add(d);
        } else if (!d.isOverrun() && !bounds.leads(d.cell(), d.cost())) {
            putOff.add(d);
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

    /** Water crosses a line into one of the cells beyond, up to that cell's upper line. */
    void fill(Crossing x, int i, long from, long to, Wet w, Move move, Line line) {
        Cell c = x.to(i);
        int cost = w.cost() + x.cost(i);
        if (c.isOpen() || !bounds.begin(cost) || !bounds.leads(c, cost)) {
            return;
        }
        boolean enters = c.isOnFrame() && !w.isOnFrame();
        if (enters || !isHere(c) || !c.pool().isFull(w.running(), cost, from, to)) {
            wet(new Wet(c, w.running(), cost, from, to, c.upper.at(from), c.upper.at(to), w, x.how(move, i), line));
        }
    }

    void wet(Wet w) {
        Cell c = w.cell();
        if (c.isOpen() || w.from() >= w.to() || w.cost() > bounds.most() || !bounds.leads(c, w.cost()) || !bounds.hold(c, w.cost())) {
            return;
        }
        if (!isHere(c)) {
            sent.add(w);
        } else {
            boolean spreads = c.ground.isSill() && w.running();
            Wet all = !spreads ? w : new Wet(c, true, w.cost(), c.x0, c.x1, c.upper.at(c.x0), c.upper.at(c.x1), w.source(), w.how(), w.line());
            if (w.isOnFrame() && (w.source() == null || !w.source().isOnFrame()) && c.isNewEntry(w)) {
                entries.add(w);
            }
            Pool pool = c.pool();
            if (!pool.covers(all)) {
                pool.add(all);
                waiting.get(w.cost()).add(c.number);
            }
        }
    }

    private void moves(Wet w) {
        begins(w);
        if (w.cell().pipe >= 0) {
            pipes.in(w);
        }
        if (w.running()) {
            runs.alongHeld(w);
            runs.overLedge(w);
        }
    }

    /** What it does of itself: falls, spreads, begins to be driven. */
    private void begins(Wet w) {
        if (w.cell().letsDown()) {
            falls(w);
        }
        if (w.running() && w.cell().hasDrives()) {
            winds.startFrom(w);
        }
        if (w.running() && w.cell().ground.isSill()) {
            sills.spreads(w);
        }
    }

    /** Down over every line below. */
    private void falls(Wet w) {
        for (Seam s : w.cell().down) {
            long a = Math.max(s.from, w.from()), b = Math.min(s.to, w.to());
            if (a < b && !s.carriesPast) {
                fall(w, s, a, b);
            }
        }
    }

    private void fall(Wet w, Seam s, long a, long b) {
        Line line = s.carriesOver() && !s.to(0).ground.isSill() ? null : s.line().part(a, b);
        for (int i = 0; i < s.count(); i++) {
            if (s.ontoSill && w.running()) {
                fill(s, i, s.to(i).x0, s.to(i).x1, w, Move.FALL, line);
            } else if (s.ontoSill) {
                sills.intoCorner(w, s, i, b);
            } else {
                fill(s, i, a + s.shift(), b + s.shift(), w, Move.FALL, line);
            }
        }
    }
}
