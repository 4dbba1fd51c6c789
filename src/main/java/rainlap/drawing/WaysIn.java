package rainlap.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
    private final List<Arrival> arrivals;

    WaysIn(Evidence evidence) {
        this.evidence = evidence;
        this.arrivals = evidence.trace().arrivals();
    }

    /** A part of a way and how much it shares with the place; whether the finding itself tells of it. */
    private record Leg(Arrival way, long shared, boolean own) {
        boolean fromRain() {
            return !way.path().get(0).layer().equals(Step.FRAME);
        }
    }

    /**
     * Each ends where it first comes onto the frame, and takes no more failures than the weak point does. Empty where no way comes there with so few that it
     * is followed, and where rain wets a bare frame without any way.
     */
    List<Arrival> through(WeakPoint point) {
        Finding f = point.finding();
        Box place = f.where().box().grow(NEAR);
        if (f.path().isEmpty() || isRainOnFrame(f) && (f.path().size() == 1 || isAt(f.path().get(0), place))) {
            return List.of();
        }
        boolean traced = Rules.find(f.rule()).filter(r -> r.info().theme() == RuleInfo.Theme.WATER).isPresent();
        return Stream.concat(alone(f).stream(), arrivals.stream()).flatMap(a -> legs(a, f, place, traced).stream())
                .filter(l -> l.way().defences() <= f.defences())
                .sorted(Comparator.comparingInt((Leg l) -> l.way().defences()).thenComparingLong(l -> -l.shared()).thenComparing(l -> !l.own())
                        .thenComparing(l -> !l.fromRain()).thenComparingInt(l -> l.way().path().size()))
                .map(Leg::way).distinct().toList();
    }

    /** The way that a finding tells, where it shows only with rain at its place alone, and so is none of the wall's. */
    private Optional<Arrival> alone(Finding f) {
        Step last = f.path().get(f.path().size() - 1);
        return arrivals.stream().anyMatch(a -> a.path().equals(f.path())) ? Optional.empty()
                : Optional.of(new Arrival(f.defences(), true, last.on(), last.where(), f.path(), f.litresPerHour()));
    }

    private List<Leg> legs(Arrival a, Finding f, Box place, boolean traced) {
        boolean own = a.path().equals(f.path());
        List<Arrival> legs = own || !traced ? Legs.of(a) : List.of();
        List<Leg> there = traced ? List.of()
                : legs.stream().map(l -> new Leg(l, shared(l, f, place), own)).filter(l -> l.shared() >= 0).toList();
        boolean lasts = there.isEmpty() && own && !legs.isEmpty() && (traced || !isRainOnFrame(f));
        return lasts ? List.of(new Leg(legs.get(legs.size() - 1), -1, true)) : there;
    }

    /** Whether the water that a finding tells of begins as rain on the bare frame. */
    static boolean isRainOnFrame(Finding f) {
        return !f.path().isEmpty() && f.path().get(0).layer().equals(Step.FRAME) && f.path().get(0).piece().isEmpty();
    }

    private boolean isAt(Step s, Box place) {
        return shared(Place.line(evidence.elevation(), s.on(), s.where()).box(), place) >= 0;
    }

    /** How much of a place the lines share that the water crosses there, grid units; -1 where it crosses none. */
    private long shared(Arrival a, Finding f, Box place) {
        long most = -1;
        boolean later = a.path().get(0).layer().equals(Step.FRAME); // that it was on the frame there before is no part of this way
        for (Step s : later ? a.path().subList(1, a.path().size()) : a.path()) {
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
