package rainlap.water;

import static rainlap.water.GridFlow.DONE;
import static rainlap.water.GridFlow.RUNNING;
import static rainlap.water.GridRaster.DOWN;
import static rainlap.water.GridRaster.RIGHT;
import static rainlap.water.GridRaster.UP;

import java.util.List;
import java.util.Optional;
import rainlap.joint.Sheets;
import rainlap.stack.Face;
import rainlap.wall.Side;

/** What wind does to running water: lifts, pushes and overruns. */
final class GridDrives {
    private final GridFlow flow;
    private final GridRaster raster;
    private final GridCrossing crossing;
    private final GridSlopes slopes;
    private final long rise;
    private final long creep;

    GridDrives(GridFlow flow, GridRaster raster, GridCrossing crossing, GridSlopes slopes, long rise, long creep) {
        this.flow = flow;
        this.raster = raster;
        this.crossing = crossing;
        this.slopes = slopes;
        this.rise = rise;
        this.creep = creep;
    }

    /** Wind takes running water under every piece that begins beside it. */
    void start(int q, int f, int dir) {
        int p = raster.next[4 * q + dir];
        if (p < 0 || raster.stackOf[p] == raster.stackOf[q] && raster.sameSurface(p, q) || crossing.goesPast(q, f, p, dir)
                || dir == DOWN) {
            return;
        }
        boolean head = raster.side(p) == Side.HEAD;
        int on = crossing.turned(q, p, dir);
        for (GridCrossing.Way w : crossing.ways(q, f, p, dir)) {
            if (w.begins()) {
                Face piece = raster.faces(p).get(w.layer());
                long reach = reach(piece, q, p, on, head);
                if (reach > 0) {
                    flow.add(p, w.layer(), w.cost(), on, reach);
                    if (w.behind()) {
                        flow.add(p, w.layer(), w.cost(), RUNNING, DONE);
                    }
                }
                if (Sheets.isSheet(piece) && isEnd(piece, q, p, dir)) {
                    overrun(q, p, on, piece, w.cost() + 1);
                }
            }
        }
    }

    /** Whether a lap that ends at this edge is overrun this way: up under a foot, sideways under a side, 45 degrees being a foot. */
    private boolean isEnd(Face piece, int q, int p, int dir) {
        return slopes.between(piece, q, p).map(e -> Math.abs(e.slope()) <= 1 == (dir == UP)).orElse(true);
    }

    /** How far beyond the cell's near side water may be driven in under a piece. */
    private long reach(Face piece, int q, int p, int dir, boolean head) {
        Optional<GridSlopes.Line> edge = slopes.between(piece, q, p);
        if (edge.isEmpty()) {
            return lifted(dir, head);
        }
        boolean upright = dir <= DOWN;
        double at = upright ? edge.get().yAt(raster.x(p)) : edge.get().xAt(raster.y(p));
        long side = raster.side(p, dir ^ 1);
        double gone = dir == UP || dir == RIGHT ? side - at : at - side;
        return Math.round(lifted(dir, head) - gone);
    }

    private long lifted(int dir, boolean head) {
        return dir != UP ? creep : head ? Math.max(rise, creep) : rise;
    }

    /** Driven water straight on, as far as it goes. */
    void onward(int c, int f, int dir, long left) {
        long beyond = left - raster.size(c, dir);
        int q = raster.next[4 * c + dir];
        if (q >= 0 && !crossing.goesPast(c, f, q, dir) && beyond + pastTrueEdge(c, f, q, dir) > 0) {
            int on = crossing.turned(c, q, dir);
            for (GridCrossing.Way w : crossing.ways(c, f, q, dir)) {
                boolean turnsUp = raster.side(c) == Side.HEAD && raster.side(q) != Side.HEAD || raster.side(c) == Side.SILL && raster.side(q).isJamb();
                flow.add(q, w.layer(), w.cost(), on, turnsUp ? Math.min(beyond, rise) : beyond);
                if (w.behind()) {
                    flow.add(q, w.layer(), w.cost(), RUNNING, DONE);
                }
            }
        }
    }

    /** By how much the sloped edge at which the water's layer ends comes before the stair that the raster makes of it. */
    private double pastTrueEdge(int c, int f, int q, int dir) {
        if (f == 0 || raster.stackOf[c] == raster.stackOf[q] || GridCrossing.indexOf(raster.faces(q), raster.faces(c).get(f - 1)) > 0) {
            return 0;
        }
        Optional<GridSlopes.Line> edge = slopes.between(raster.faces(c).get(f - 1), c, q);
        double at = edge.map(e -> dir <= DOWN ? e.yAt(raster.x(c)) : e.xAt(raster.y(c))).orElse((double) raster.side(c, dir));
        return dir == UP || dir == RIGHT ? raster.side(c, dir) - at : at - raster.side(c, dir);
    }

    /** Through the lap of a sheet on whatever lies under it, right to its end. */
    private void overrun(int q, int p, int dir, Face sheet, int more) {
        Optional<Face> lap = under(p, sheet);
        if (lap.isEmpty() || GridCrossing.indexOf(raster.faces(q), lap.get()) == 0) {
            return;
        }
        int c = p, on = dir;
        while (GridCrossing.indexOf(raster.faces(c), sheet) > 0) {
            int layer = GridCrossing.indexOf(raster.faces(c), sheet) - 1;
            if (GridCrossing.indexOf(raster.faces(c), lap.get()) == 0) {
                flow.add(c, layer, more, RUNNING, DONE);
                return;
            }
            flow.add(c, layer, more, GridFlow.FALLING, 1);
            leavesAslant(c, on, sheet, lap.get(), more);
            int n = raster.next[4 * c + on];
            if (n < 0) {
                return;
            }
            on = crossing.turned(c, n, on);
            c = n;
        }
    }

    /** Going sideways, the lap may end on a sloped edge between the middles of two rows: there too the water has come to its end. */
    private void leavesAslant(int c, int dir, Face sheet, Face lap, int more) {
        for (int beside : new int[] {UP, DOWN}) {
            int n = raster.next[4 * c + beside];
            if (dir > DOWN && n >= 0 && GridCrossing.indexOf(raster.faces(n), sheet) > 0 && GridCrossing.indexOf(raster.faces(n), lap) == 0) {
                boolean ahead = slopes.between(lap, c, n).filter(e -> e.slope() != 0 && e.slope() > 0 == ((dir == GridRaster.LEFT) == (beside == UP))).isPresent();
                if (ahead) {
                    flow.add(n, GridCrossing.indexOf(raster.faces(n), sheet) - 1, more, RUNNING, DONE);
                }
            }
        }
    }

    /** The outermost layer under a sheet that is no adhered strip. */
    private Optional<Face> under(int c, Face sheet) {
        List<Face> faces = raster.faces(c);
        for (int k = GridCrossing.indexOf(faces, sheet) - 2; k >= 0; k--) {
            if (!Sheets.isStrip(faces.get(k))) {
                return Optional.of(faces.get(k));
            }
        }
        return Optional.empty();
    }
}
