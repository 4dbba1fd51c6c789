package rainlap.defect;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.rule.LevelBattens;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Side;
import rainlap.wall.Surface;
import rainlap.water.Arrival;
import rainlap.water.OnBatten;
import rainlap.water.Standing;
import rainlap.water.Step;
import rainlap.water.Trace;

/** The wall without holes, in rain at one pressure. */
public final class AsDrawn {
    /** From a line rounded to the grid to the frame beside it, grid units. */
    private static final long BESIDE = 2;

    private final Pressure pressure;
    private final Elevation elevation;
    private final Trace trace;
    private final List<OnBatten> pools;

    private AsDrawn(Pressure pressure, Elevation elevation, Trace trace, List<OnBatten> pools) {
        this.pressure = pressure;
        this.elevation = elevation;
        this.trace = trace;
        this.pools = pools;
    }

    /** @param over the wall's own stack, or that of the walls laid flat beside it */
    static AsDrawn of(Evidence e, Stack over, Pressure pressure) {
        boolean known = over == e.stack() && pressure.drive() == e.trace().drive();
        Trace trace = known ? e.trace() : Trace.of(over, pressure.drive(), Optional.empty(), Crew.ALONE);
        return new AsDrawn(pressure, over.elevation(), trace, LevelBattens.pools(over, trace.onBattens()));
    }

    public Pressure pressure() {
        return pressure;
    }

    /** Whether any of the frame is wet. */
    public boolean wetsFrame() {
        return trace.reachAsDrawn().stream().anyMatch(r -> !r.where().isEmpty());
    }

    /** The battens that water pools on, by id. */
    public List<String> pools() {
        return Stream.concat(pools.stream().map(OnBatten::batten), trace.trapped().stream().flatMap(s -> battens(elevation, s))).distinct().sorted().toList();
    }

    /** The batten, if any, that trapped water stands on or is held by. */
    static Stream<String> battens(Elevation e, Standing s) {
        return e.pieces().stream().filter(p -> p.material().kind() == MaterialKind.BATTEN && (p.id().equals(s.over()) || p.id().equals(s.layer())))
                .map(Piece::id);
    }

    boolean pools(OnBatten there) {
        Box place = Box.of(there.where());
        return pools.stream().anyMatch(o -> o.batten().equals(there.batten()) && o.surface().equals(there.surface()) && Box.of(o.where()).meets(place));
    }

    /** Whether the frame is wet at a place of a surface's own frame, or one grid unit beneath it. */
    boolean wets(Surface on, Point p) {
        long u = on.side().isJamb() ? -1 : 0, v = on.side().isJamb() ? 0 : on.side() == Side.HEAD ? 1 : -1;
        return trace.isWet(on, p) || trace.isWet(on, new Point(p.x() + u, p.y() + v));
    }

    /** Whether the frame is wet where water comes onto it: along its line, or at the edge of a pipe on any side of it. */
    boolean wets(Arrival a) {
        boolean pipe = a.path().get(a.path().size() - 1).kind() == Step.Kind.ALONG_A_PIPE;
        if (!pipe) {
            return wets(a.surface(), Outermost.middle(Box.of(a.where())));
        }
        Point p = Outermost.middle(Box.of(a.where().subList((a.where().size() - 1) / 2, (a.where().size() - 1) / 2 + 2)));
        return Stream.of(new Point(0, BESIDE), new Point(0, -BESIDE), new Point(BESIDE, 0), new Point(-BESIDE, 0))
                .anyMatch(by -> trace.isWet(a.surface(), new Point(p.x() + by.x(), p.y() + by.y())));
    }
}
