package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** Where along a weak stretch a cut meets the water that gets in there: a stream may be far narrower than the stretch. */
final class WetPlanes {
    /** In a narrower stream a cut keeps to its edge: the middle would be rounded to either. */
    private static final long NARROW = Grid.MM;
    private static final double[] SHARES = {0.5, 0.3, 0.7, 0.1, 0.9};
    private final Evidence evidence;
    private final List<Arrival> ways;

    /** Only ways with the fewest failures: a cut that shows others would tell another tale. */
    WetPlanes(Evidence evidence, WeakPoint point) {
        this.evidence = evidence;
        List<Arrival> all = new WaysIn(evidence).through(point);
        this.ways = all.stream().filter(a -> a.defences() == all.get(0).defences()).toList();
    }

    /** Whether some way comes to the frame in the plane of a cut. */
    boolean isWet(Cut cut) {
        if (ways.isEmpty()) {
            return false;
        }
        WayInPlane plane = new WayInPlane(evidence, CutStack.of(evidence, cut));
        return ways.stream().anyMatch(a -> plane.moments(a).size() > 1);
    }

    /** Places within the streams of the first way, as shares of a weak stretch from its first point; none where it does not run along it. */
    List<Double> shares(Point from, Point to, boolean plumb) {
        List<Double> out = new ArrayList<>();
        long a = plumb ? from.x() : from.y(), b = plumb ? to.x() : to.y();
        if (ways.isEmpty() || a == b) {
            return out;
        }
        Arrival way = ways.get(0);
        add(Place.line(evidence.elevation(), way.surface(), way.where()).box(), a, b, plumb, out);
        for (int i = way.path().size() - 1; i >= 0; i--) {
            Step s = way.path().get(i);
            add(Place.line(evidence.elevation(), s.on(), s.where()).box(), a, b, plumb, out);
        }
        return out;
    }

    private static void add(Box stream, long a, long b, boolean plumb, List<Double> out) {
        long from = Math.max(plumb ? stream.minX() : stream.minY(), Math.min(a, b)), to = Math.min(plumb ? stream.maxX() : stream.maxY(), Math.max(a, b));
        if (from > to) {
            return;
        }
        if (to - from < NARROW) {
            long inner = Math.abs(2 * from - a - b) <= Math.abs(2 * to - a - b) ? from : to;
            out.add((inner - a) / (double) (b - a));
            return;
        }
        for (double share : SHARES) {
            out.add((from + share * (to - from) - a) / (b - a));
        }
    }
}
