package rainlap.drawing;

import java.util.Comparator;
import java.util.List;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.water.Arrival;
import rainlap.water.Step;

/**
 * The ways of water to show for a weak point, fewest failures first. Of equal ones the first is the one that crosses its pieces along the
 * most of its place, because that is what a section there cuts; a finding of the trace itself is shown by the way that it tells.
 */
final class WaysIn {
    /** A way touches a place that it passes this near by, grid units. */
    private static final long NEAR = 100;
    private final Evidence evidence;

    WaysIn(Evidence evidence) {
        this.evidence = evidence;
    }

    /** Empty where no way comes there with so few failures that it is followed, and where rain wets a bare frame without any way. */
    List<Arrival> through(WeakPoint point) {
        Finding f = point.finding();
        if (f.path().isEmpty() || isRainOnFrame(f)) {
            return List.of();
        }
        Box place = f.where().box().grow(NEAR);
        boolean traced = Rules.find(f.rule()).filter(r -> r.info().theme() == RuleInfo.Theme.WATER).isPresent();
        return evidence.trace().arrivals().stream().filter(a -> a.path().equals(f.path()) || !traced && shared(a, f, place) >= 0)
                .sorted(Comparator.comparingInt(Arrival::defences).thenComparingLong(a -> -shared(a, f, place))
                        .thenComparing(a -> !a.path().equals(f.path())).thenComparingInt(a -> a.path().size())).toList();
    }

    static boolean isRainOnFrame(Finding f) {
        return f.path().size() == 1 && f.path().get(0).layer().equals(Step.FRAME) && f.path().get(0).piece().isEmpty();
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
