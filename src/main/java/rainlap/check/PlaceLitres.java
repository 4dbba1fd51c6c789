package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.water.DrivingRain;
import rainlap.water.Litres;
import rainlap.water.Step;
import rainlap.water.Trace;

/** How much water meets the place that a finding names, and no more of the edge it lies on. */
final class PlaceLitres {
    private static final double SQUARE_METRES_A_MM2 = 1e-6;

    private final Optional<Litres> litres;
    private final double rain;

    PlaceLitres(Trace trace) {
        this.litres = trace.litres();
        this.rain = trace.rain().map(DrivingRain::litresPerM2Hour).orElse(0.0);
    }

    /**
     * A finding of dimensions. Where no edge of its pieces or of an opening lies along its place, as at corners of the building, nothing is told; over
     * a joint that stays dry nothing runs, and that is told.
     */
    Finding ofPlace(Finding f) {
        if (litres.isEmpty() || !f.where().surface().isWall() || isAlongPipe(f)) {
            return f;
        }
        double met = f.where().isLine() ? litres.get().at(f.pieces(), f.where().line()) : onto(f.where(), f.pieces());
        return met > 0 || f.joint().isPresent() ? f.withLitres(met) : f;
    }

    /** What comes in along a pipe is not reckoned. */
    private static boolean isAlongPipe(Finding f) {
        return !f.path().isEmpty() && f.path().get(f.path().size() - 1).kind() == Step.Kind.ALONG_A_PIPE;
    }

    /** What runs in over the upper edges of an area, and what falls on it. */
    private double onto(Place place, List<String> pieces) {
        List<Segment> upper = new ArrayList<>();
        place.area().forEach(r -> r.edges().stream().filter(s -> s.a().x() > s.b().x()).forEach(upper::add));
        double in = upper.stream().mapToDouble(s -> litres.get().at(pieces, List.<Point>of(s.a(), s.b()))).sum();
        return in + rain * place.area().stream().mapToDouble(Region::areaMm2).sum() * SQUARE_METRES_A_MM2;
    }

    /** A finding of the trace, whose place is where its way comes onto the frame. */
    Finding ofWay(Finding f) {
        double met = litres.isEmpty() || f.litresPerHour().isEmpty() ? 0 : litres.get().of(f.path(), f.where().box());
        return met > 0 ? f.withLitres(met) : f;
    }
}
