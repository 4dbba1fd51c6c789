package rainlap.drawing;

import java.util.Comparator;
import java.util.List;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** Which of the ways that water takes to the frame pass through a weak point: those that get past one of its pieces at its place. */
final class WaysIn {
    /** A way touches a place that it passes this near by, grid units. */
    private static final long NEAR = 100;
    private final Evidence evidence;

    WaysIn(Evidence evidence) {
        this.evidence = evidence;
    }

    /** Fewest failures first, then those that pass along more of the place, then the shortest. */
    List<Arrival> through(WeakPoint point) {
        Finding f = point.finding();
        Box place = f.where().box().grow(NEAR);
        return evidence.trace().arrivals().stream().filter(a -> shared(a, f, place) >= 0)
                .sorted(Comparator.comparingInt(Arrival::defences).thenComparingLong(a -> -shared(a, f, place))
                        .thenComparingInt(a -> a.path().size())).toList();
    }

    /** How much of a place the lines share that the water crosses there, grid units; -1 where it crosses none. */
    private long shared(Arrival a, Finding f, Box place) {
        long most = -1;
        for (Step s : a.path()) {
            if (f.pieces().contains(s.piece()) || f.pieces().contains(s.layer())) {
                most = Math.max(most, shared(Place.line(evidence.elevation(), s.on(), s.where()).box(), place));
                most = Math.max(most, shared(Place.line(evidence.elevation(), a.surface(), a.where()).box(), place));
            }
        }
        return most;
    }

    private static long shared(Box a, Box b) {
        long x = Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX()), y = Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY());
        return x < 0 || y < 0 ? -1 : Math.max(x, y);
    }
}
