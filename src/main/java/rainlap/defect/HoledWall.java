package rainlap.defect;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.rule.LevelBattens;
import rainlap.rule.Place;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;
import rainlap.water.Arrival;
import rainlap.water.Inflow;
import rainlap.water.OnBatten;

/** The wall with one hole in it. */
final class HoledWall {
    private final Hole hole;
    private final Stack stack;
    private final Elevation drawn;

    /** @param over what the water is followed over */
    HoledWall(Stack over, Hole hole) {
        this.hole = hole;
        this.drawn = over.elevation();
        this.stack = Stack.of(Cutting.of(drawn, hole), over.stage());
    }

    Result at(AsDrawn without) {
        Inflow in = Inflow.at(stack, without.pressure().drive(), hole.box());
        List<OnBatten> pools = LevelBattens.pools(stack, in.onBattens());
        List<String> on = Stream.concat(pools.stream().map(OnBatten::batten), in.trapped().stream().flatMap(t -> AsDrawn.battens(drawn, t))).distinct().sorted().toList();
        Point middle = Outermost.middle(hole.box());
        if (in.ontoBareFrame()) {
            Place bare = Place.line(drawn, Surface.WALL, List.of(new Point(hole.box().minX(), middle.y()), new Point(hole.box().maxX(), middle.y())));
            return new Result(without.pressure(), Optional.of(bare), List.of(), on, without.wets(Surface.WALL, middle));
        }
        Optional<Arrival> arrival = in.arrivals().stream().min(Comparator.comparingInt(a -> a.path().size()));
        if (arrival.isPresent()) {
            Arrival a = arrival.get();
            return new Result(without.pressure(), Optional.of(Place.line(drawn, a.surface(), a.where())), a.path(), on, without.wets(a));
        }
        return new Result(without.pressure(), Optional.empty(), List.of(), on,
                on.isEmpty() ? without.wets(Surface.WALL, middle) : pools.stream().allMatch(without::pools) && without.pools().containsAll(on));
    }
}
