package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Point;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/** All cells of an elevation with the water in them. */
final class Waters {
    private static final Comparator<Wet> FROM_ABOVE = Comparator.comparingInt((Wet w) -> w.cell().strip).thenComparingInt(w -> w.cell().number);

    private final List<Ground> grounds = new ArrayList<>();
    private final Strips strips;
    private final Drive drive;
    private Flows flows;
    /** Of the wall's cells; made when first asked for. */
    private BoxTree places;
    private final Coat coat;
    private final List<Opening> openings;

    /** With rain on every surface. */
    Waters(Stack stack, Drive drive, Crew crew) {
        this(stack, drive, crew, Rain.EVERYWHERE);
    }

    Waters(Stack stack, Drive drive, Crew crew, Rain rain) {
        this(stack, drive, crew, rain, Strips.WIDE);
    }

    /** @param strip how wide the strips are that are followed one by one */
    Waters(Stack stack, Drive drive, Crew crew, Rain rain, long strip) {
        this(stack, drive, crew, strip);
        flows.run(crew, rain);
    }

    /** Dry. */
    private Waters(Stack stack, Drive drive, Crew crew, long strip) {
        Ground wall = Ground.ofWall(stack.elevation().outline().box());
        openings = stack.elevation().openings();
        grounds.add(wall);
        stack.elevation().openings().forEach(o -> grounds.addAll(Glue.reveals(o)));
        crew.inRuns(grounds.subList(1, grounds.size()), run -> carve(run, stack));
        Carving.carve(wall, stack, crew);
        glue(wall, stack.elevation().openings());
        coat = new Coat(stack);
        strips = new Strips(grounds, strip, crew);
        this.drive = drive;
        flows = new Flows(strips, coat, drive, Bounds.NONE);
    }

    /** No water yet. */
    static Waters dry(Stack stack, Drive drive) {
        return new Waters(stack, drive, Crew.ALONE, Strips.WIDE);
    }

    private static List<Ground> carve(List<Ground> reveals, Stack stack) {
        reveals.forEach(g -> Carving.carve(g, stack, Crew.ALONE));
        return reveals;
    }

    private void glue(Ground wall, List<Opening> openings) {
        OpeningSides heads = new OpeningSides(), sills = new OpeningSides(), left = new OpeningSides(), right = new OpeningSides();
        List<Opening> deep = openings.stream().filter(o -> o.reveal() > 0).toList();
        for (Opening o : deep) {
            Box r = o.rect();
            sills.add(r.minY(), r.minX(), r.maxX(), o);
            heads.add(r.maxY(), r.minX(), r.maxX(), o);
            left.add(r.minX(), r.minY(), r.maxY(), o);
            right.add(r.maxX(), r.minY(), r.maxY(), o);
        }
        Map<String, List<Cell>> beside = new HashMap<>();
        for (Cell c : wall.cells) {
            if (c.isFramed()) {
                note(c, c.lower.isLevel() ? heads.touching(c.lower.ay(), c.x0, c.x1) : List.of(), beside);
                note(c, c.upper.isLevel() ? sills.touching(c.upper.ay(), c.x0, c.x1) : List.of(), beside);
                note(c, left.touching(c.x1, c.lower.at(c.x1), c.upper.at(c.x1)), beside);
                note(c, right.touching(c.x0, c.lower.at(c.x0), c.upper.at(c.x0)), beside);
            }
        }
        Map<String, List<Ground>> sides = new HashMap<>();
        grounds.forEach(g -> sides.computeIfAbsent(g.surface().opening(), k -> new ArrayList<>(4)).add(g));
        for (Opening o : deep) {
            new Glue(o, sides.get(o.id())).join(beside.getOrDefault(o.id(), List.of()));
        }
        Glue.dropFronts(wall);
    }

    /** A cell at the corner of an opening meets two of its sides. */
    private static void note(Cell c, List<Opening> met, Map<String, List<Cell>> beside) {
        for (Opening o : met) {
            List<Cell> cells = beside.computeIfAbsent(o.id(), k -> new ArrayList<>());
            if (cells.isEmpty() || cells.get(cells.size() - 1) != c) {
                cells.add(c);
            }
        }
    }

    /** What runs where as drawn, in this much rain. */
    Runoff runoff(long creep, double litresPerM2Hour) {
        Runoff r = new Runoff(coat, creep, litresPerM2Hour);
        r.run(grounds, openings);
        return r;
    }

    /** Dries up: gives back the room of what was followed and is told. */
    void dryUp() {
        flows = new Flows(strips, coat, drive, Bounds.NONE);
        nextTurn();
        grounds.forEach(g -> g.cells.forEach(Cell::freshen));
    }

    /** Gives back the room of the cells, which what is kept still knows by their surface. */
    void forgetCells() {
        grounds.forEach(g -> g.cells.clear());
    }

    private void nextTurn() {
        grounds.forEach(g -> g.turn++);
    }

    /** The worst way by which water comes onto the frame that comes in at one place alone; see {@link Trace#worstFrom}. */
    Optional<Arrival> worstFrom(Surface surface, Box place, Bounds bounds, Function<List<Arrival>, Optional<Arrival>> among) {
        nextTurn();
        Flows alone = new Flows(strips, coat, drive, bounds);
        alone.rain((surface.isWall() ? onWall(place) : onReveals(surface.opening())).sorted(FROM_ABOVE).toList());
        Arrivals told = new Arrivals(new Paths(coat));
        Optional<Arrival> worst = Optional.empty();
        for (int cost = 0; cost <= bounds.most() && worst.isEmpty(); cost++) {
            alone.settle(cost, Crew.ALONE);
            worst = among.apply(told.of(at(cost, alone.entries()), at(cost, alone.firsts())));
        }
        return worst;
    }

    private static List<Wet> at(int cost, List<Wet> all) {
        return all.stream().filter(w -> w.cost() == cost).toList();
    }

    /** What of the rain lies above, on or below a place. */
    private Stream<Wet> onWall(Box place) {
        List<Cell> wall = grounds.get(0).cells;
        places = places == null ? new BoxTree(wall.stream().map(Cell::box).toList()) : places;
        return Arrays.stream(places.meeting(place)).mapToObj(wall::get).filter(c -> c.isIn(place))
                .map(c -> c.rain().between(Math.max(c.x0, place.minX()), Math.min(c.x1, place.maxX())));
    }

    private Stream<Wet> onReveals(String opening) {
        return grounds.stream().filter(g -> !g.isWall() && g.surface().opening().equals(opening)).flatMap(g -> g.cells.stream()).map(Cell::rain);
    }

    List<Ground> grounds() {
        return grounds;
    }

    Coat coat() {
        return coat;
    }

    Flows flows() {
        return flows;
    }

    /** The defences of the frame at a place of a surface's own frame; 3 where no water was followed to. */
    int defences(Surface surface, Point own) {
        for (Ground g : grounds) {
            if (g.surface().equals(surface)) {
                Point p = g.turned(own);
                for (Cell c : g.cells) {
                    if (c.x0 <= p.x() && p.x() < c.x1 && c.lower.at(p.x()) <= p.y() && p.y() < c.upper.at(p.x())) {
                        return defences(c, p);
                    }
                }
            }
        }
        throw new IllegalArgumentException("no frame at " + own + " on " + surface.name());
    }

    private static int defences(Cell c, Point p) {
        int least = c.pile.depth() == 0 ? 0 : Flow.MOST + 1;
        for (Wet w : c.onFrame()) {
            if (w.from() <= p.x() && p.x() < w.to() && p.y() <= w.top(p.x())) {
                least = Math.min(least, w.cost());
            }
        }
        return least;
    }
}
