package rainlap.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** All cells of an elevation with the water in them. */
final class Waters {
    private static final Comparator<Wet> FROM_ABOVE = Comparator.comparingInt((Wet w) -> w.cell().strip).thenComparingInt(w -> w.cell().number);

    private final List<Ground> grounds = new ArrayList<>();
    /** By opening. */
    private final Map<String, List<Ground>> reveals;
    private final Strips strips;
    private final Drive drive;
    private Flows flows;
    private final Coat coat;
    private final Elevation elevation;
    private final Turn turn = new Turn();

    /** With rain on every surface. */
    Waters(Stack stack, Drive drive, Crew crew) {
        this(stack, drive, crew, Rain.EVERYWHERE, Strips.WIDE, false);
    }

    /**
     * With rain on every surface, followed through one failure; {@link #further} goes on.
     *
     * @param forLitres whether its cells can tell how much runs where
     */
    static Waters toOneFailure(Stack stack, Drive drive, Crew crew, boolean forLitres) {
        return toOneFailure(stack, drive, crew, Strips.WIDE, forLitres);
    }

    /** @param strip how wide the strips are that are followed one by one */
    static Waters toOneFailure(Stack stack, Drive drive, Crew crew, long strip, boolean forLitres) {
        Waters w = new Waters(stack, drive, crew, strip, forLitres);
        Upstream.find(w.strips, drive, crew);
        w.flows = new Flows(w.strips, w.coat, w.drive, Bounds.BUT_THE_LAST);
        w.flows.run(crew, Rain.EVERYWHERE, Flow.MOST - 1);
        return w;
    }

    /** With rain at some places alone, followed as drawn. */
    static Waters into(Stack stack, Drive drive, Rain rain) {
        Waters w = new Waters(stack, drive, Crew.ALONE, Strips.WIDE, true);
        w.flows.run(Crew.ALONE, rain, 0);
        return w;
    }

    /**
     * @param strip how wide the strips are that are followed one by one
     * @param isFine whether cells in the open end at each edge beneath
     */
    Waters(Stack stack, Drive drive, Crew crew, Rain rain, long strip, boolean isFine) {
        this(stack, drive, crew, strip, isFine);
        flows.run(crew, rain, Flow.MOST);
    }

    /** Dry. */
    private Waters(Stack stack, Drive drive, Crew crew, long strip, boolean isFine) {
        coat = new Coat(stack);
        elevation = stack.elevation();
        Ground wall = Ground.ofWall(elevation.outline().box(), coat, isFine);
        grounds.add(wall);
        elevation.openings().stream().filter(o -> o.reveal() > 0).forEach(o -> grounds.addAll(Glue.reveals(o, coat, isFine)));
        grounds.forEach(g -> g.turn = turn);
        List<Ground> all = grounds.subList(1, grounds.size());
        reveals = all.stream().collect(Collectors.groupingBy(g -> g.surface().opening()));
        List<Rim.Cut> cuts = crew.gather(all, run -> run.stream().map(g -> Carving.carve(g, stack)).toList());
        glue(all, cuts, Carving.carveWall(wall, stack, crew), crew);
        strips = new Strips(grounds, strip, crew);
        this.drive = drive;
        flows = new Flows(strips, coat, drive, Bounds.NONE);
    }

    /** No water yet. */
    static Waters dry(Stack stack, Drive drive) {
        return new Waters(stack, drive, Crew.ALONE, Strips.WIDE, false);
    }

    private void glue(List<Ground> reveals, List<Rim.Cut> cuts, Rim.Cut wall, Crew crew) {
        Map<String, Map<Side, Rim.Cut>> sides = new HashMap<>();
        for (int i = 0; i < cuts.size(); i++) {
            Surface s = reveals.get(i).surface();
            sides.computeIfAbsent(s.opening(), k -> new EnumMap<>(Side.class)).put(s.side(), cuts.get(i));
        }
        List<Opening> openings = elevation.openings();
        List<Integer> deep = IntStream.range(0, openings.size()).filter(i -> sides.containsKey(openings.get(i).id())).boxed().toList();
        crew.gather(deep, run -> run.stream().map(i -> new Glue(openings.get(i), sides.get(openings.get(i).id())).find(wall.openings().getOrDefault(i, Map.of()))).toList())
                .forEach(Glue::join);
    }

    /** What runs where as drawn, in this much rain. */
    Runoff runoff(long creep, double litresPerM2Hour) {
        if (!grounds.get(0).isFine()) {
            throw new IllegalStateException("its cells cannot tell litres");
        }
        Runoff r = new Runoff(coat, creep, litresPerM2Hour);
        r.run(grounds, elevation.openings());
        return r;
    }

    /** Itself, dried up; cells forget what was followed and is told when other water comes. */
    Waters driedUp() {
        flows = new Flows(strips, coat, drive, Bounds.NONE);
        nextTurn();
        return this;
    }

    /** Gives back the room of the cells, which what is kept still knows by their surface. */
    void forgetCells() {
        grounds.forEach(Ground::letGo);
    }

    /**
     * The ways by which water comes onto the frame through one failure more than it was followed through, near some places; once only.
     *
     * @param near boxes of the wall, with the reveals there: ways that come onto the frame further away, or fail on their way from there or to there, are left out
     */
    List<Arrival> further(List<Box> near, Crew crew) {
        near.forEach(strips::ask);
        Set<String> there = new HashSet<>();
        near.forEach(b -> elevation.openingsMeeting(b).forEach(o -> there.add(o.id())));
        there.forEach(o -> onReveals(o).forEach(strips::ask));
        flows.finish(crew);
        return Arrivals.of(flows, w -> w.cost() == Flow.MOST && w.cell().isAsked, new Paths(coat), crew);
    }

    private void nextTurn() {
        turn.now++;
    }

    /** The worst way by which water comes onto the frame that comes in at one place alone; see {@link Trace#worstFrom}. */
    Optional<Arrival> worstFrom(Surface surface, Box place, Bounds bounds, Function<List<Arrival>, Optional<Arrival>> among) {
        nextTurn();
        Flows alone = new Flows(strips, coat, drive, bounds);
        alone.rain((surface.isWall() ? onWall(place) : onReveals(surface.opening()).filter(Cell::isOpen).map(Cell::rain)).sorted(FROM_ABOVE).toList());
        Paths paths = new Paths(coat);
        Optional<Arrival> worst = Optional.empty();
        for (int cost = 0; cost <= bounds.most() && worst.isEmpty(); cost++) {
            int now = cost;
            alone.settle(cost, Crew.ALONE);
            worst = among.apply(Arrivals.of(alone, w -> w.cost() == now, paths, Crew.ALONE));
        }
        return worst;
    }

    /** What of the rain lies above, on or below a place. */
    private Stream<Wet> onWall(Box place) {
        return strips.in(place).stream().filter(Cell::isOpen).map(c -> c.rain().in(place));
    }

    private Stream<Cell> onReveals(String opening) {
        return reveals.getOrDefault(opening, List.of()).stream().flatMap(g -> g.cells.stream());
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
                    if (c.isOnFrame() && c.x0 <= p.x() && p.x() < c.x1 && c.lower.at(p.x()) <= p.y() && p.y() < c.upper.at(p.x())) {
                        return defences(c, p);
                    }
                }
            }
        }
        throw new IllegalArgumentException("no frame at " + own + " on " + surface.name());
    }

    private static int defences(Cell c, Point p) {
        int least = c.isOpen() ? 0 : Flow.MOST + 1;
        for (Wet w : c.settled()) {
            if (w.from() <= p.x() && p.x() < w.to() && p.y() <= w.top(p.x())) {
                least = Math.min(least, w.cost());
            }
        }
        return least;
    }
}
