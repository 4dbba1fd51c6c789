package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import rainlap.geom.Box;
import rainlap.stack.Crew;

/**
 * Follows all water at once, cheapest ways first: moves that cost nothing before those that cost one, and so on. A wide wall is cut into upright strips, as
 * many whoever does the work; each is followed for itself, and what crosses into another waits there for the next round.
 */
final class Flows {
    /** How wide strips are: some bays, grid units. */
    static final long WIDE = 600_000;

    private final List<Flow> strips = new ArrayList<>();
    private final Box wall;
    private final long width;

    /**
     * @param grounds the first is the wall, the others the reveals
     * @param width of a strip
     */
    Flows(List<Ground> grounds, Coat coat, Drive drive, long width) {
        this.width = width;
        wall = grounds.get(0).extent();
        for (int i = 0; i <= stripAt(wall.maxX() - 1); i++) {
            strips.add(new Flow(i, coat, drive));
        }
        for (Ground g : grounds) {
            for (Cell c : g.cells) {
                c.strip = stripAt(g.isWall() ? c.x0 : g.left());
                strips.get(c.strip).add(c);
            }
        }
    }

    private int stripAt(long x) {
        return (int) (Math.max(0, Math.min(x, wall.maxX() - 1) - wall.minX()) / width);
    }

    void run(Crew crew, Rain rain) {
        List<Supplier<Boolean>> rains = strips.stream().<Supplier<Boolean>>map(s -> () -> s.rain(rain)).toList();
        crew.all(rains);
        for (int cost = 0; cost <= Flow.MOST; cost++) {
            exchange();
            int now = cost;
            List<Supplier<Boolean>> parts = strips.stream().<Supplier<Boolean>>map(s -> () -> s.settle(now)).toList();
            while (crew.all(parts).contains(true)) {
                exchange();
            }
        }
    }

    private void exchange() {
        for (Flow s : strips) {
            s.sent().forEach(d -> d.into(strips.get(d.cell().strip)));
            s.sent().clear();
        }
    }

    /** All water that came onto the frame from another layer, also where the frame was wet already; rain on a bare frame left out. */
    List<Wet> entries() {
        return all(Flow::entries);
    }

    /** Of the water that something had to fail for: what came onto a frame that was dry until then. */
    List<Wet> firsts() {
        return all(Flow::firsts);
    }

    List<Trapped> trapped() {
        return all(Flow::trapped);
    }

    /** Water that, as drawn, comes to the top of a batten. */
    List<OnBatten> onBattens() {
        return all(Flow::onBattens);
    }

    private <T> List<T> all(Function<Flow, List<T>> what) {
        return strips.stream().map(what).flatMap(List::stream).toList();
    }
}
