package rainlap.water;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToIntBiFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.Bond;
import rainlap.material.MaterialKind;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/**
 * Compares what something says of every place with the grid simulation. Where every face is upright the two must agree in every cell that no
 * drive ends in; with sloped edges, cells beside any border, of the drawing or of either result, are excepted.
 */
final class TraceAgainstGrid {
    private static final int MOST_STAIRS = 64;
    /** 1 mm. */
    private static final long ONE_STREAM = 100;
    private final Stack stack;
    private final GridSimulation grid;
    private final boolean upright;
    private int compared;

    /** A cell where the two differ. */
    record Disagreement(Surface surface, Point centre, int grid, int trace) {
        @Override
        public String toString() {
            return surface.name() + " " + mm(centre.x()) + " " + mm(centre.y()) + ": grid " + grid + ", trace " + trace;
        }
    }

    /** Drives in grid units, the widest cell in mm. */
    TraceAgainstGrid(Stack stack, long rise, long creep, double cellMm) {
        this(stack, rise, creep, cellMm, 1);
    }

    private TraceAgainstGrid(Stack stack, long rise, long creep, double cellMm, int steps) {
        this.stack = stack;
        this.grid = GridSimulation.of(stack, rise, creep, cellMm, steps);
        this.upright = isUpright(stack);
    }

    static boolean isUpright(Stack stack) {
        return stack.surfaces().stream().flatMap(s -> stack.on(s).stream()).allMatch(f -> f.region().isUpright())
                && stack.elevation().outline().region().isUpright() && stack.elevation().penetrations().stream().allMatch(p -> p.region().isUpright());
    }

    /** @param trace the defences at a place of a surface's own frame, {@link GridSimulation#NOT_REACHED} from 3 on */
    List<Disagreement> with(ToIntBiFunction<Surface, Point> trace) {
        List<Disagreement> out = new ArrayList<>();
        for (GridSimulation.Cell c : grid.cells()) {
            if (upright ? grid.isCut(c) : grid.nearBorder(c)) {
                continue;
            }
            compared++;
            int told = trace.applyAsInt(c.surface(), c.centre());
            if (told != c.defences() && !isOneStream(c, told) && (upright || !changesBeside(c, told, trace))) {
                out.add(new Disagreement(c.surface(), c.centre(), c.defences(), told));
            }
        }
        return out;
    }

    /**
     * The same, but with sloped edges a difference counts only if it lasts when each edge has 16 stairs, and then 64, ever smaller towards its corners:
     * a lap that is just a stair longer than the drive decides over all that lies below it. There a cell agrees too if another no further along its
     * row or column than a stair does: of water driven over a sloped edge the raster has one stream a stair.
     */
    List<Disagreement> lasting(long rise, long creep, double cellMm, ToIntBiFunction<Surface, Point> trace) {
        List<Disagreement> all = with(trace);
        for (int steps = 16; !upright && !all.isEmpty() && steps <= MOST_STAIRS; steps *= 4) {
            TraceAgainstGrid finer = new TraceAgainstGrid(stack, rise, creep, cellMm, steps);
            Set<Integer> known = all.stream().map(d -> d.trace() * 4 + d.grid()).collect(Collectors.toSet());
            all = finer.withoutStairs(finer.with(trace).stream().filter(d -> known.contains(d.trace() * 4 + d.grid())).toList(), steps);
        }
        return all;
    }

    private record Row(Surface surface, boolean level, long at) {
        static Row of(Surface s, Point p, boolean level) {
            return new Row(s, level, level ? p.y() : p.x());
        }
    }

    private List<Disagreement> withoutStairs(List<Disagreement> all, int steps) {
        long wide = widest(steps, e -> e.b().x() - e.a().x(), e -> e.b().y() - e.a().y());
        long high = widest(steps, e -> e.b().y() - e.a().y(), e -> e.b().x() - e.a().x());
        Map<Row, TreeMap<Long, Integer>> rows = new HashMap<>();
        all.forEach(d -> List.of(true, false).forEach(level -> rows.put(Row.of(d.surface(), d.centre(), level), new TreeMap<>())));
        grid.cells().forEach(c -> List.of(true, false).forEach(level -> rows.getOrDefault(Row.of(c.surface(), c.centre(), level), new TreeMap<>())
                .put(level ? c.centre().x() : c.centre().y(), c.defences())));
        return all.stream().filter(d -> !rows.get(Row.of(d.surface(), d.centre(), true)).subMap(d.centre().x() - wide, d.centre().x() + wide)
                .containsValue(d.trace()) && !rows.get(Row.of(d.surface(), d.centre(), false)).subMap(d.centre().y() - high, d.centre().y() + high)
                .containsValue(d.trace())).toList();
    }

    /** The width of a stair along the longest sloped edge of a face; those in reveals have fewer. */
    private long widest(int steps, ToLongFunction<Segment> run, ToLongFunction<Segment> rise) {
        return stack.surfaces().stream().mapToLong(on -> {
            int stairs = on.isWall() ? steps : Math.min(steps, GridLattice.MOST_IN_REVEALS);
            return stack.on(on).stream().flatMap(f -> f.region().edges().stream()).filter(e -> !e.isLevel() && !e.isPlumb())
                    .mapToLong(e -> 1 + Math.abs(run.applyAsLong(e)) / Math.min(stairs, Math.abs(rise.applyAsLong(e)))).max().orElse(0);
        }).max().orElse(0);
    }

    /** What lies between streams nearer than 1 mm is wet to the trace, which takes them for one; the raster keeps them apart. So a narrower cell may be told worse, never better. */
    private boolean isOneStream(GridSimulation.Cell c, int told) {
        return told < c.defences() && grid.width(c) < ONE_STREAM;
    }

    private boolean changesBeside(GridSimulation.Cell c, int told, ToIntBiFunction<Surface, Point> trace) {
        return grid.beside(c).stream().anyMatch(n -> trace.applyAsInt(n.surface(), n.centre()) != told);
    }

    int compared() {
        return compared;
    }

    /** The seed, the first places and the wall, to be pasted into a test. */
    String report(long seed, List<Disagreement> all) {
        return "seed " + seed + ", " + all.size() + " of " + compared + " cells, the first:\n"
                + all.stream().limit(5).map(Disagreement::toString).collect(Collectors.joining("\n")) + "\n" + asDrawn(stack.elevation());
    }

    /** A wall as a test would write it with {@code joint.Drawn}. */
    static String asDrawn(Elevation e) {
        StringBuilder out = new StringBuilder("Drawn.wall().outline(" + rect(e.outline().box()) + ", EdgeRole."
                + e.outline().edges().stream().filter(o -> o.line().isPlumb()).findFirst().orElseThrow().role() + ")");
        for (Opening o : e.openings()) {
            out.append("\n        .window(\"").append(o.id()).append("\", ").append(rect(o.rect())).append(", ").append(mm(o.reveal())).append(")");
        }
        e.penetrations().forEach(p -> out.append("\n        /* a pipe, ").append(points(p.region())).append(" */"));
        for (Piece p : e.pieces()) {
            out.append("\n        .").append(piece(p));
            if (!p.bond().equals(p.material().kind().defaultBond())) {
                out.append(".bond(").append(bond(p.bond())).append(")");
            }
        }
        return out.append(";").toString();
    }

    private static String piece(Piece p) {
        Shape s = p.shapes().get(0);
        Region r = s.regions().get(0);
        MaterialKind kind = p.material().kind();
        boolean plain = p.shapes().size() == 1 && s.regions().size() == 1 && s.on().isWall() && r.holes().isEmpty();
        String under = p.under().stream().map(u -> ", \"" + u + "\"").collect(Collectors.joining());
        if (plain && r.isBox() && kind == MaterialKind.TAPE && p.cuts().isEmpty()) {
            return "tape(\"" + p.id() + "\", " + rect(r.box()) + under + ")";
        }
        if (plain && kind == MaterialKind.MEMBRANE && p.cuts().size() < 2) {
            if (r.isBox() && p.cuts().isEmpty()) {
                return "sheet(\"" + p.id() + "\", " + rect(r.box()) + under + ")";
            }
            if (r.isBox() && under.isEmpty()) {
                return p.cuts().stream().map(c -> "cutSheet(\"" + p.id() + "\", " + rect(r.box()) + ", \"" + c.opening() + "\", CutPattern."
                        + c.pattern() + ", " + mm(c.returned()) + ")").findFirst().orElseThrow();
            }
            if (p.cuts().isEmpty() && under.isEmpty()) {
                return "ring(\"" + p.id() + "\", " + points(r) + ")";
            }
        }
        return "add(\"" + p.id() + "\", Material.of(\"" + p.material().id() + "\", MaterialKind." + kind + "), List.of(" + p.shapes().stream()
                .map(TraceAgainstGrid::shape).collect(Collectors.joining(", ")) + "), List.of()" + under + ")"
                + (p.cuts().isEmpty() ? "" : " /* and cuts */") + (p.material().profile().upstandMm().isPresent() ? " /* and a profile */" : "");
    }

    private static String shape(Shape s) {
        String on = s.on().isWall() ? "Surface.WALL" : "new Surface(\"" + s.on().opening() + "\", Side." + s.on().side() + ")";
        return "new Shape(" + on + ", List.of(" + s.regions().stream().map(r -> "Drawn.region(" + points(r) + ")"
                + (r.holes().isEmpty() ? "" : " /* and holes */")).collect(Collectors.joining(", ")) + "))";
    }

    private static String bond(Bond b) {
        return b.isFull() ? "Bond.FULL" : b.isLoose() ? "Bond.LOOSE" : "Bond.sealedAt(" + b.sealedEdges().stream()
                .map(e -> "Edge." + e.name().toUpperCase(Locale.ROOT)).collect(Collectors.joining(", ")) + ")";
    }

    private static String points(Region r) {
        return r.shell().points().stream().map(p -> mm(p.x()) + ", " + mm(p.y())).collect(Collectors.joining(", "));
    }

    private static String rect(Box b) {
        return mm(b.minX()) + ", " + mm(b.minY()) + ", " + mm(b.width()) + ", " + mm(b.height());
    }

    private static String mm(long units) {
        return BigDecimal.valueOf(units, 2).stripTrailingZeros().toPlainString();
    }
}
