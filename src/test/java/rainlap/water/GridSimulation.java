package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/**
 * Follows the water from cell to cell, in order of cost: written from the package description of {@code rainlap.water} alone, to be compared
 * with the trace. Upright pieces are met exactly ({@link GridLattice}); sloped edges to within a cell.
 */
final class GridSimulation {
    /** What three failures or more stand for. */
    static final int NOT_REACHED = 3;

    final GridRaster raster;
    final int[] firstState;
    /** Least cost of each state, however the water moves there. */
    final byte[] least;
    private final GridFlow flow;

    /** A cell: its surface, a place in its middle in the surface's own frame, and the defences of the frame there. */
    record Cell(int number, Surface surface, Point centre, int defences) {}

    /** Water found on a layer, for looking at. */
    record Found(Surface surface, Point centre, String layer, int cost) {}

    private GridSimulation(Stack stack, long rise, long creep, double cellMm, int steps) {
        raster = new GridRaster(stack, GridLattice.of(stack, rise, creep, Math.round(cellMm * 100), steps));
        int cells = raster.stackOf.length;
        firstState = new int[cells + 1];
        for (int c = 0; c < cells; c++) {
            firstState[c + 1] = firstState[c] + (raster.stackOf[c] < 0 ? 0 : raster.stacks.get(raster.stackOf[c]).size() + 1);
        }
        least = new byte[firstState[cells]];
        Arrays.fill(least, (byte) NOT_REACHED);
        GridSlopes slopes = new GridSlopes(stack, raster);
        flow = new GridFlow(this, new GridCrossing(stack, raster, slopes), slopes, rise, creep, stack.elevation());
        flow.follow();
    }

    /** Drives in grid units, the widest cell in mm. */
    static GridSimulation of(Stack stack, long rise, long creep, double cellMm) {
        return new GridSimulation(stack, rise, creep, cellMm, 1);
    }

    /** The same with so many stairs at least along each sloped edge on the wall. */
    static GridSimulation of(Stack stack, long rise, long creep, double cellMm, int steps) {
        return new GridSimulation(stack, rise, creep, cellMm, steps);
    }

    /** How many things must fail before the frame is wet at a place, given in the surface's own frame; {@link #NOT_REACHED} from 3 on. */
    int defences(Surface surface, Point place) {
        return costs(surface, place)[0];
    }

    /** The same for each layer at a place, the frame first. */
    int[] costs(Surface surface, Point place) {
        int c = cellAt(surface, place);
        return IntStream.range(firstState[c], firstState[c + 1]).map(s -> least[s]).toArray();
    }

    private int cellAt(Surface surface, Point place) {
        GridRaster.Block b = raster.blocks.stream().filter(k -> k.surface().equals(surface)).findFirst().orElseThrow();
        Point p = b.opening().map(o -> o.toWall(surface.side(), place)).orElse(place);
        int c = b.at(GridLattice.cellAt(raster.lattice.x, p.x()), GridLattice.cellAt(raster.lattice.y, p.y()));
        if (c < 0 || raster.stackOf[c] < 0) {
            throw new IllegalArgumentException("no wall at " + place + " on " + surface.name());
        }
        return c;
    }

    /** Every cell wide enough to have a place of the grid inside it. */
    List<Cell> cells() {
        List<Cell> out = new ArrayList<>();
        eachCell(c -> {
            if (raster.size(c, GridRaster.UP) >= 2 && raster.size(c, GridRaster.RIGHT) >= 2) {
                out.add(cell(c));
            }
        });
        return out;
    }

    private Cell cell(int c) {
        return new Cell(c, raster.block(c).surface(), centre(c), least[firstState[c]]);
    }

    /** The four cells that a cell's water may go to. */
    List<Cell> beside(Cell cell) {
        return IntStream.range(0, 4).map(dir -> raster.next[4 * cell.number() + dir]).filter(n -> n >= 0).mapToObj(this::cell).toList();
    }

    private void eachCell(IntConsumer each) {
        for (int c = 0; c < raster.stackOf.length; c++) {
            if (raster.stackOf[c] >= 0) {
                each.accept(c);
            }
        }
    }

    private Point centre(int c) {
        GridRaster.Block b = raster.block(c);
        Point flat = new Point(Math.floorDiv(raster.side(c, GridRaster.LEFT) + raster.side(c, GridRaster.RIGHT), 2),
                Math.floorDiv(raster.side(c, GridRaster.DOWN) + raster.side(c, GridRaster.UP), 2));
        return b.opening().map((Opening o) -> o.toSurface(b.surface().side(), flat)).orElse(flat);
    }

    /**
     * Whether the cell, or one beside it, touches an edge of anything, an end of a drive that is no line of the raster, or a change in the
     * result. With upright pieces only the drives matter.
     */
    boolean nearBorder(Cell cell) {
        int c = cell.number();
        for (int up : new int[] {GridRaster.UP, GridRaster.DOWN, -1}) {
            int row = up < 0 ? c : raster.next[4 * c + up];
            for (int side : new int[] {GridRaster.LEFT, GridRaster.RIGHT, -1}) {
                int n = row < 0 || side < 0 ? row : raster.next[4 * row + side];
                if (n < 0 || raster.stackOf[n] != raster.stackOf[c] || least[firstState[n]] != cell.defences() || flow.isCut(n)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** How wide a cell is across its down, grid units. */
    long width(Cell cell) {
        return raster.side(cell.number(), GridRaster.RIGHT) - raster.side(cell.number(), GridRaster.LEFT);
    }

    /** Whether a drive ends within the cell, so that one value for all of it is a guess. */
    boolean isCut(Cell cell) {
        return flow.isCut(cell.number());
    }

    /** Places from which running water finds no way out. */
    List<Found> trapped() {
        return flow.traps.trapped().stream().map(this::found).toList();
    }

    /** Everything that gets wet within a box of a surface's own frame, for looking at. */
    List<Found> wet(Surface surface, Box within) {
        List<Found> out = new ArrayList<>();
        eachCell(c -> {
            if (raster.block(c).surface().equals(surface) && within.contains(centre(c))) {
                IntStream.range(firstState[c], firstState[c + 1]).filter(s -> least[s] < NOT_REACHED).forEach(s -> out.add(found(s)));
            }
        });
        return out;
    }

    /** How water first came onto the frame at a place, that place first; steps within one and the same stack of layers left out. */
    List<Found> way(Surface surface, Point place) {
        int state = firstState[cellAt(surface, place)];
        List<Integer> steps = least[state] == NOT_REACHED ? List.of() : flow.way(state);
        return IntStream.range(0, steps.size()).filter(i -> i == 0 || i == steps.size() - 1 || raster.stackOf[cellOf(steps.get(i))]
                != raster.stackOf[cellOf(steps.get(i - 1))] || raster.stackOf[cellOf(steps.get(i))] != raster.stackOf[cellOf(steps.get(i + 1))])
                .mapToObj(i -> found(steps.get(i))).toList();
    }

    private Found found(int state) {
        int c = cellOf(state), layer = state - firstState[c];
        String name = layer == 0 ? "frame" : raster.stacks.get(raster.stackOf[c]).get(layer - 1).piece().id();
        return new Found(raster.block(c).surface(), centre(c), name, least[state]);
    }

    int cellOf(int state) {
        int at = Arrays.binarySearch(firstState, state);
        if (at < 0) {
            return -at - 2;
        }
        while (firstState[at + 1] == state) {
            at++;
        }
        return at;
    }
}
