package rainlap.water;

import static rainlap.water.GridRaster.DOWN;
import static rainlap.water.GridRaster.LEFT;
import static rainlap.water.GridRaster.OUT;
import static rainlap.water.GridRaster.PIPE;
import static rainlap.water.GridRaster.RIGHT;
import static rainlap.water.GridRaster.UP;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rainlap.geom.Region;
import rainlap.material.EndDams;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.wall.Elevation;
import rainlap.wall.Penetration;
import rainlap.wall.Side;

/** The moves of the water in {@link GridSimulation}. */
final class GridFlow {
    /** Ways to move: driven in one of the four directions, driven water falling back, running, along the ledge of a flashing to its left or right end. */
    private static final int MODES = 8;
    static final int FALLING = 4;
    static final int RUNNING = 5;
    private static final int TO_LEFT_END = 6;
    private static final int TO_RIGHT_END = 7;
    static final long DONE = Long.MAX_VALUE;
    /** Where the water came from that is not from another state: rain. */
    private static final int RAIN = -1;
    private static final int[] SIDEWAYS = {LEFT, RIGHT};

    private final GridSimulation sim;
    private final GridRaster raster;
    private final GridCrossing crossing;
    private final GridSlopes slopes;
    private final long creep;
    private final GridDrives drives;
    private final List<Region> pipes;
    /** For each state and way to move, how far driven water may still go at most; {@link #DONE} for the others. */
    private final long[] best;
    private final boolean[] cut;
    final GridTraps traps;
    private final GridQueue[] queues = {new GridQueue(), new GridQueue(), new GridQueue()};
    private final int[] cellOf;
    /** For each state from which other it was first reached. */
    private final int[] cameFrom;
    private int cost;
    private int here = RAIN;

    GridFlow(GridSimulation sim, GridCrossing crossing, GridSlopes slopes, long rise, long creep, Elevation wall) {
        this.sim = sim;
        this.raster = sim.raster;
        this.crossing = crossing;
        this.slopes = slopes;
        this.creep = creep;
        this.drives = new GridDrives(this, raster, crossing, slopes, rise, creep);
        this.pipes = wall.penetrations().stream().map(Penetration::region).toList();
        this.traps = new GridTraps(raster, wall.outline());
        best = new long[MODES * sim.least.length];
        cameFrom = new int[sim.least.length];
        cut = new boolean[raster.stackOf.length];
        cellOf = new int[sim.least.length];
        for (int c = 0; c < raster.stackOf.length; c++) {
            Arrays.fill(cellOf, sim.firstState[c], sim.firstState[c + 1], c);
        }
    }

    void follow() {
        for (int c = 0; c < raster.stackOf.length; c++) {
            if (raster.stackOf[c] >= 0) {
                queues[0].add(sim.firstState[c + 1] - 1, RAIN, RUNNING, DONE);
            }
        }
        for (cost = 0; cost < queues.length; cost++) {
            GridQueue q = queues[cost];
            while (q.next()) {
                int state = q.state(), mode = q.mode();
                long left = q.left();
                if (isNews(state, mode, left)) {
                    best[MODES * state + mode] = left;
                    cameFrom[state] = sim.least[state] == GridSimulation.NOT_REACHED ? q.from() : cameFrom[state];
                    here = state;
                    move(cellOf[state], state - sim.firstState[cellOf[state]], mode, left);
                }
            }
        }
    }

    private void move(int c, int f, int mode, long left) {
        if (mode <= RIGHT) {
            long size = raster.size(c, mode);
            cut[c] |= left < size;
            if (left * 2 < size) {
                return;
            }
        }
        if (mode >= TO_LEFT_END) {
            toEnd(c, f, mode);
            return;
        }
        int state = sim.firstState[c] + f;
        sim.least[state] = (byte) Math.min(sim.least[state], cost);
        inAlongPipe(c, f);
        switch (mode) {
            case RUNNING -> run(c, f);
            case FALLING -> fall(c, f, false);
            default -> {
                fall(c, f, false);
                drives.onward(c, f, mode, left);
            }
        }
    }

    private boolean isNews(int state, int mode, long left) {
        return best[MODES * state + mode] < left && (mode != FALLING || best[MODES * state + RUNNING] == 0);
    }

    void add(int c, int f, int more, int mode, long left) {
        int state = sim.firstState[c] + f;
        if (cost + more < queues.length && isNews(state, mode, left)) {
            queues[cost + more].add(state, here, mode, left);
        }
    }

    /** Next to a pipe water gets onto every layer further in; past an adhered layer or a collar, if the seal to the pipe fails. */
    private void inAlongPipe(int c, int on) {
        if (pipes.isEmpty() || raster.next[4 * c] != PIPE && raster.next[4 * c + 1] != PIPE && raster.next[4 * c + 2] != PIPE
                && raster.next[4 * c + 3] != PIPE) {
            return;
        }
        List<Face> faces = raster.faces(c);
        boolean sealed = false;
        for (int f = on - 1; f >= 0; f--) {
            sealed |= faces.get(f).piece().bond().isFull() || faces.get(f).piece().material().kind() == MaterialKind.COLLAR;
            add(c, f, sealed ? 1 : 0, RUNNING, DONE);
        }
    }

    private void run(int c, int f) {
        Side side = raster.side(c);
        if (side == Side.SILL) {
            spread(c, f);
        } else {
            if (!fall(c, f, true)) {
                int way = slopes.downhill(c, raster.next[4 * c + DOWN], pipes);
                traps.held(sim.firstState[c] + f);
                aside(c, f, way <= 0, way >= 0, true);
            }
            ledges(c, f);
        }
        for (int dir : new int[] {UP, LEFT, RIGHT, DOWN}) {
            drives.start(c, f, dir);
        }
    }

    private void spread(int c, int f) {
        for (int dir = UP; dir <= RIGHT; dir++) {
            int q = raster.next[4 * c + dir];
            if (q >= 0 && !raster.side(q).isJamb()) {
                crossing.ways(c, f, q, dir).forEach(w -> add(q, w.layer(), w.cost(), RUNNING, DONE));
            }
        }
    }

    /** Straight down. Returns whether there is a way down for nothing. */
    private boolean fall(int c, int f, boolean running) {
        int q = raster.next[4 * c + DOWN];
        if (q < 0) {
            return q == OUT;
        }
        if (crossing.goesPast(c, f, q, DOWN)) {
            return true;
        }
        boolean free = false;
        for (GridCrossing.Way w : crossing.ways(c, f, q, DOWN)) {
            free |= w.cost() == 0;
            add(q, w.layer(), w.cost(), running ? RUNNING : FALLING, running ? DONE : 1);
        }
        return free;
    }

    /** Running water goes sideways: along a closed line for nothing only, along a ledge at any cost. */
    private void aside(int c, int f, boolean left, boolean right, boolean freeOnly) {
        for (int dir : SIDEWAYS) {
            int q = raster.next[4 * c + dir];
            if (!(dir == LEFT ? left : right)) {
                continue;
            }
            if (q < 0 ? traps.leavesSideways(c, q, dir) : crossing.goesPast(c, f, q, dir)) {
                traps.leaves(sim.firstState[c] + f);
            } else if (q >= 0) {
                for (GridCrossing.Way w : crossing.ways(c, f, q, dir)) {
                    if (w.cost() == 0 || !freeOnly) {
                        add(q, w.layer(), w.cost(), RUNNING, DONE);
                        traps.leads(sim.firstState[c] + f, sim.firstState[q] + w.layer());
                    }
                }
            }
        }
    }

    private void ledges(int c, int f) {
        int q = raster.next[4 * c + DOWN];
        if (q >= 0 && raster.stackOf[q] != raster.stackOf[c] && crossing.ways(c, f, q, DOWN).stream()
                .anyMatch(w -> w.begins() && raster.faces(q).get(w.layer()).piece().material().kind() == MaterialKind.BATTEN)) {
            int way = slopes.downhill(c, q, pipes);
            aside(c, f, way <= 0, way >= 0, false);
        }
        if (f > 0 && standsOnLedge(c, raster.faces(c).get(f - 1))) {
            toEnd(c, f, TO_LEFT_END);
            toEnd(c, f, TO_RIGHT_END);
        }
    }

    /** One cell further along a ledge. It stands out in front of what lies over the upstand, so water is not wetting anything on its way. */
    private void toEnd(int c, int f, int mode) {
        int dir = mode == TO_LEFT_END ? LEFT : RIGHT, q = raster.next[4 * c + dir];
        if (q < 0 || !raster.sameSurface(c, q)) {
            return;
        }
        Face flashing = raster.faces(c).get(f - 1);
        Optional<EndDams> dams = flashing.piece().material().profile().endDams();
        int on = GridCrossing.indexOf(raster.faces(q), flashing);
        if (on > 0) {
            add(q, on, 0, mode, DONE);
        } else if (!dams.map(dir == LEFT ? EndDams::atLeft : EndDams::atRight).orElse(false)) {
            crossing.ways(c, f, q, dir).forEach(w -> add(q, w.layer(), w.cost(), RUNNING, DONE));
        }
    }

    private boolean standsOnLedge(int c, Face face) {
        if (face.piece().material().kind() != MaterialKind.FLASHING || face.piece().material().profile().upstandMm().orElse(0) == 0) {
            return false;
        }
        long base = raster.side(c) == Side.WALL ? 0 : raster.block(c).opening().orElseThrow().rect().minY();
        return raster.lattice.y[raster.row(c)] == base + GridLattice.ledge(face);
    }

    /** The states by which a reached state was first reached, itself first. */
    List<Integer> way(int state) {
        List<Integer> out = new ArrayList<>();
        for (int s = state; s != RAIN && out.size() < cameFrom.length; s = cameFrom[s]) {
            out.add(s);
        }
        return out;
    }

    boolean isCut(int c) {
        return cut[c];
    }
}
