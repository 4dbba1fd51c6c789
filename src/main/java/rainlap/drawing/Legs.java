package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rainlap.water.Arrival;
import rainlap.water.Step;

/**
 * Cuts ways of water where they come onto the frame. A way may leave the frame again, go in behind the next piece and so on; as a picture each part
 * is a way of its own, that ends at the frame.
 */
final class Legs {
    private Legs() {}

    /** The parts from rain or frame to frame, the last of them the arrival itself; water that moves on the frame alone is no part. */
    static List<Arrival> of(Arrival a) {
        List<Arrival> out = new ArrayList<>();
        for (List<Step> leg : of(a.path())) {
            Step end = leg.get(leg.size() - 1);
            boolean whole = end == a.path().get(a.path().size() - 1);
            int failures = (int) a.path().subList(0, a.path().indexOf(end) + 1).stream().filter(Step::failure).count();
            out.add(whole ? new Arrival(a.defences(), a.first(), a.surface(), a.where(), leg, a.litresPerHour())
                    : new Arrival(Math.min(a.defences(), failures), false, end.on(), end.where(), leg, OptionalDouble.empty()));
        }
        return out;
    }

    /** The same for the steps of a way that may end elsewhere than on the frame. */
    static List<List<Step>> of(List<Step> path) {
        List<List<Step>> out = new ArrayList<>();
        List<Step> leg = new ArrayList<>();
        boolean failed = false;
        for (Step s : path) {
            boolean wasOnFrame = leg.size() == 1 && isOnFrame(leg.get(0));
            if (wasOnFrame && isOnFrame(s)) {
                leg.clear();
            }
            failed |= s.failure();
            leg.add(failed && leg.isEmpty() && !s.failure() ? failing(s) : s);
            if (isOnFrame(s) && leg.size() > 1) {
                out.add(List.copyOf(leg));
                leg = new ArrayList<>(List.of(failed && !s.failure() ? failing(s) : s));
            }
        }
        if (leg.size() > 1) {
            out.add(List.copyOf(leg));
        }
        return out;
    }

    private static boolean isOnFrame(Step s) {
        return s.layer().equals(Step.FRAME);
    }

    /** So that what comes after a failure stays dashed. */
    private static Step failing(Step s) {
        return new Step(s.kind(), s.layer(), s.piece(), true, s.on(), s.where());
    }
}
