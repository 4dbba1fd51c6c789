package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Every surface as cells of the lattice: what lies in each, from the frame outwards, and which cell is next to it. */
final class GridRaster {
    static final List<Side> REVEAL = List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD);
    static final int UP = 0, DOWN = 1, LEFT = 2, RIGHT = 3;
    /** In place of a cell: nothing more, over the outline or at the window; the hole of a pipe. */
    static final int OUT = -1, PIPE = -2;

    /** The cells of one surface: rows of lattice cells from (i0, j0), numbered from {@code base}. */
    record Block(Surface surface, Optional<Opening> opening, int i0, int j0, int wide, int high, int base) {
        int at(int i, int j) {
            return i < i0 || j < j0 || i >= i0 + wide || j >= j0 + high ? OUT : base + (j - j0) * wide + i - i0;
        }

        int end() {
            return base + wide * high;
        }
    }

    final GridLattice lattice;
    final List<Block> blocks = new ArrayList<>();
    /** The faces of each kind of stack, inside first; the frame is not among them. */
    final List<List<Face>> stacks = new ArrayList<>();
    final int[] stackOf;
    /** Four a cell. */
    final int[] next;
    private final int[] blockOf;
    private final Stack stack;
    private final Map<Long, Integer> grown = new HashMap<>();
    private final Map<List<Face>, Integer> known = new HashMap<>();

    GridRaster(Stack stack, GridLattice lattice) {
        this.stack = stack;
        this.lattice = lattice;
        blocks.add(new Block(Surface.WALL, Optional.empty(), 0, 0, lattice.x.length - 1, lattice.y.length - 1, 0));
        stack.elevation().openings().stream().filter(o -> o.reveal() > 0).forEach(o -> REVEAL.forEach(s -> addBlock(o, s)));
        int cells = blocks.get(blocks.size() - 1).end();
        stackOf = new int[cells];
        blockOf = new int[cells];
        next = new int[4 * cells];
        stacks.add(List.of());
        known.put(List.of(), 0);
        for (int b = 0; b < blocks.size(); b++) {
            Arrays.fill(blockOf, blocks.get(b).base(), blocks.get(b).end(), b);
        }
        cutWall();
        int number = 0;
        for (Block b : blocks) {
            for (Face f : stack.on(b.surface())) {
                lay(b, f, number++);
            }
        }
        blocks.forEach(this::join);
        stack.elevation().openings().forEach(this::glue);
    }

    private void addBlock(Opening o, Side side) {
        Box r = o.rect();
        long x0 = side == Side.RIGHT ? r.maxX() - o.reveal() : r.minX(), x1 = side == Side.LEFT ? r.minX() + o.reveal() : r.maxX();
        long y0 = side == Side.HEAD ? r.maxY() - o.reveal() : r.minY(), y1 = side == Side.SILL ? r.minY() + o.reveal() : r.maxY();
        int i0 = GridLattice.cellAt(lattice.x, x0), j0 = GridLattice.cellAt(lattice.y, y0);
        blocks.add(new Block(new Surface(o.id(), side), Optional.of(o), i0, j0, GridLattice.cellAt(lattice.x, x1) - i0,
                GridLattice.cellAt(lattice.y, y1) - j0, blocks.get(blocks.size() - 1).end()));
    }

    private void cutWall() {
        Region outline = stack.elevation().outline().region();
        Block wall = blocks.get(0);
        for (int c = 0; c < wall.end(); c++) {
            double x = x(c), y = y(c);
            stackOf[c] = outline.covers(x, y) ? 0 : OUT;
            for (Penetration p : stack.elevation().penetrations()) {
                if (p.region().covers(x, y)) {
                    stackOf[c] = PIPE;
                }
            }
        }
        for (Opening o : stack.elevation().openings()) {
            int i1 = GridLattice.cellAt(lattice.x, o.rect().maxX()), j1 = GridLattice.cellAt(lattice.y, o.rect().maxY());
            for (int j = GridLattice.cellAt(lattice.y, o.rect().minY()); j < j1; j++) {
                for (int i = GridLattice.cellAt(lattice.x, o.rect().minX()); i < i1; i++) {
                    stackOf[wall.at(i, j)] = OUT;
                }
            }
        }
    }

    private void lay(Block b, Face f, int number) {
        Box box = b.surface().isWall() ? f.box() : new Box(Long.MIN_VALUE / 4, Long.MIN_VALUE / 4, Long.MAX_VALUE / 4, Long.MAX_VALUE / 4);
        int i0 = Math.max(b.i0(), GridLattice.cellAt(lattice.x, box.minX())), i1 = Math.min(b.i0() + b.wide() - 1, GridLattice.cellAt(lattice.x, box.maxX()));
        int j0 = Math.max(b.j0(), GridLattice.cellAt(lattice.y, box.minY())), j1 = Math.min(b.j0() + b.high() - 1, GridLattice.cellAt(lattice.y, box.maxY()));
        int before = OUT, after = OUT;
        for (int j = j0; j <= j1; j++) {
            for (int i = i0; i <= i1; i++) {
                int c = b.at(i, j);
                if (stackOf[c] >= 0 && covers(f, b, x(c), y(c))) {
                    if (stackOf[c] != before) {
                        before = stackOf[c];
                        after = grown.computeIfAbsent((long) before << 32 | number, key -> with((int) (key >> 32), f));
                    }
                    stackOf[c] = after;
                }
            }
        }
    }

    private int with(int inner, Face f) {
        List<Face> faces = new ArrayList<>(stacks.get(inner));
        if (faces.stream().anyMatch(g -> g.number() == f.number())) {
            return inner;
        }
        int at = (int) faces.stream().filter(g -> stack.isOutside(f, g)).count();
        faces.add(at, f);
        return known.computeIfAbsent(List.copyOf(faces), s -> {
            stacks.add(s);
            return stacks.size() - 1;
        });
    }

    private static boolean covers(Face f, Block b, double x, double y) {
        if (b.opening().isEmpty()) {
            return f.region().covers(x, y);
        }
        Box r = b.opening().get().rect();
        return switch (b.surface().side()) {
            case SILL -> f.region().covers(x - r.minX(), y - r.minY());
            case HEAD -> f.region().covers(x - r.minX(), r.maxY() - y);
            case LEFT -> f.region().covers(y - r.minY(), x - r.minX());
            case RIGHT -> f.region().covers(y - r.minY(), r.maxX() - x);
            case WALL -> throw new IllegalStateException();
        };
    }

    /** Neighbours within a surface. */
    private void join(Block b) {
        for (int j = b.j0(); j < b.j0() + b.high(); j++) {
            for (int i = b.i0(); i < b.i0() + b.wide(); i++) {
                int c = b.at(i, j);
                next[4 * c + UP] = open(b.at(i, j + 1));
                next[4 * c + DOWN] = open(b.at(i, j - 1));
                next[4 * c + LEFT] = open(b.at(i - 1, j));
                next[4 * c + RIGHT] = open(b.at(i + 1, j));
            }
        }
    }

    private int open(int cell) {
        return cell < 0 ? OUT : stackOf[cell] < 0 ? stackOf[cell] : cell;
    }

    /** Neighbours over an opening's edges: the wall on all sides, and the jambs on the sill's ends. Nothing passes from head to jamb. */
    private void glue(Opening o) {
        if (o.reveal() == 0) {
            return;
        }
        Block wall = blocks.get(0), sill = find(o, Side.SILL), head = find(o, Side.HEAD);
        for (int i = sill.i0(); i < sill.i0() + sill.wide(); i++) {
            link(wall.at(i, sill.j0() - 1), UP, sill.at(i, sill.j0()), DOWN);
            link(wall.at(i, head.j0() + head.high()), DOWN, head.at(i, head.j0() + head.high() - 1), UP);
        }
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Block jamb = find(o, side);
            boolean left = side == Side.LEFT;
            int in = left ? jamb.i0() : jamb.i0() + jamb.wide() - 1;
            for (int j = jamb.j0(); j < jamb.j0() + jamb.high(); j++) {
                link(wall.at(left ? in - 1 : in + 1, j), left ? RIGHT : LEFT, jamb.at(in, j), left ? LEFT : RIGHT);
            }
            int end = left ? sill.i0() : sill.i0() + sill.wide() - 1;
            for (int i = jamb.i0(); i < jamb.i0() + jamb.wide(); i++) {
                next[4 * jamb.at(i, jamb.j0()) + DOWN] = sill.at(end, rowAtDepth(o, sill, depth(o, side, i)));
            }
            for (int j = sill.j0(); j < sill.j0() + sill.high(); j++) {
                double v = y(sill.at(end, j)) - o.rect().minY();
                next[4 * sill.at(end, j) + (left ? LEFT : RIGHT)] =
                        jamb.at(GridLattice.cellAt(lattice.x, left ? o.rect().minX() + v : o.rect().maxX() - v), jamb.j0());
            }
        }
    }

    private double depth(Opening o, Side side, int i) {
        double x = lattice.x[i] + (lattice.x[i + 1] - lattice.x[i]) / 2.0;
        return side == Side.LEFT ? x - o.rect().minX() : o.rect().maxX() - x;
    }

    private int rowAtDepth(Opening o, Block sill, double v) {
        return Math.min(sill.j0() + sill.high() - 1, GridLattice.cellAt(lattice.y, o.rect().minY() + v));
    }

    private void link(int a, int dir, int b, int back) {
        if (a >= 0 && stackOf[a] >= 0 && b >= 0) {
            next[4 * a + dir] = b;
            next[4 * b + back] = a;
        }
    }

    private Block find(Opening o, Side side) {
        return blocks.stream().filter(b -> b.surface().opening().equals(o.id()) && b.surface().side() == side).findFirst().orElseThrow();
    }

    /** What lies in a cell on the frame, outwards. */
    List<Face> faces(int cell) {
        return stacks.get(stackOf[cell]);
    }

    Block block(int cell) {
        return blocks.get(blockOf[cell]);
    }

    Side side(int cell) {
        return block(cell).surface().side();
    }

    boolean sameSurface(int a, int b) {
        return blockOf[a] == blockOf[b];
    }

    int column(int cell) {
        Block b = block(cell);
        return b.i0() + (cell - b.base()) % b.wide();
    }

    int row(int cell) {
        Block b = block(cell);
        return b.j0() + (cell - b.base()) / b.wide();
    }

    /**
     * The place that stands for a cell: a little off its middle, so that no diagonal through the corners of cells meets it. On a sill both ends are
     * alike: towards its middle a fold cut at 45 degrees begins behind what it leaves bare.
     */
    double x(int cell) {
        int i = column(cell);
        Block b = block(cell);
        double part = b.surface().side() == Side.SILL && 2 * (i - b.i0()) < b.wide() ? 0.43 : 0.57;
        return lattice.x[i] + part * (lattice.x[i + 1] - lattice.x[i]);
    }

    double y(int cell) {
        int j = row(cell);
        return lattice.y[j] + 0.45 * (lattice.y[j + 1] - lattice.y[j]);
    }

    /** The line on a cell's side. */
    long side(int cell, int dir) {
        int i = column(cell), j = row(cell);
        return switch (dir) {
            case UP -> lattice.y[j + 1];
            case DOWN -> lattice.y[j];
            case LEFT -> lattice.x[i];
            default -> lattice.x[i + 1];
        };
    }

    /** How far it is through a cell in a direction, grid units. */
    long size(int cell, int dir) {
        int i = column(cell), j = row(cell);
        return dir <= DOWN ? lattice.y[j + 1] - lattice.y[j] : lattice.x[i + 1] - lattice.x[i];
    }

    /** Whether a stiff piece of the wall beside an opening goes on in front of it. */
    boolean goesOnInFront(Face f, int wallCell, int dir) {
        if (f.piece().material().kind().folds() || side(wallCell) != Side.WALL) {
            return false;
        }
        int beyond = dir == UP || dir == RIGHT ? 1 : -1;
        return dir <= DOWN ? f.region().covers(x(wallCell), side(wallCell, dir) + beyond) : f.region().covers(side(wallCell, dir) + beyond, y(wallCell));
    }
}
