package rainlap.rule;

import java.util.OptionalDouble;
import rainlap.joint.Joint;
import rainlap.practice.Limit;
import rainlap.practice.Practice;
import rainlap.wall.Exposure;

/**
 * How many separate things must fail before water passes one joint, looked at alone:
 *
 * <pre>
 * sound course or end lap   1 (the lap is overrun), 2 with tape (it peels as well)
 * course lap under the rise 0, 1 with tape
 * end lap under the creep   0, 1 with tape
 * reverse lap, butt, gap    0, 1 with tape
 * </pre>
 *
 * The rise is the head of water that wind and travel hold up: half the air density times the speed squared, over the weight of water
 * (air 1.25 kg/m3 as EN 1991-1-4 recommends, water 9.80665 Pa a millimetre; speeds of wind and travel added). At the hold point the
 * wrap takes all of it. Where neither is stated there is no figure and the practice's own course lap takes its place. The creep has no
 * published formula: it is the practice's end lap.
 */
public final class LocalDefences {
    private static final double AIR_KG_PER_M3 = 1.25;
    private static final double PA_PER_MM = 9.80665;

    private LocalDefences() {}

    /** Of a stretch of a joint with this lap (grid units). */
    public static int of(Joint joint, long lap, boolean taped, Exposure exposure, Practice practice) {
        int tape = taped ? 1 : 0;
        return switch (joint.kind()) {
            case REVERSE_LAP, BUTT, GAP -> tape;
            case COURSE_LAP -> tape + (lap / 100.0 >= needed(exposure, practice) ? 1 : 0);
            case END_LAP -> tape + (lap >= practice.get(Limit.END_LAP).hundredths() ? 1 : 0);
        };
    }

    private static double needed(Exposure exposure, Practice practice) {
        return riseMm(exposure).orElse(practice.get(Limit.COURSE_LAP).value());
    }

    /** The height of water the stated exposure holds up, in mm; empty when none is stated. */
    public static OptionalDouble riseMm(Exposure x) {
        if (x.pressurePa().isPresent()) {
            return OptionalDouble.of(x.pressurePa().getAsDouble() / PA_PER_MM);
        }
        if (x.windMPerS().isEmpty() && x.towingKmPerH().isEmpty()) {
            return OptionalDouble.empty();
        }
        double speed = x.windMPerS().orElse(0) + x.towingKmPerH().orElse(0) / 3.6;
        return OptionalDouble.of(AIR_KG_PER_M3 / 2 * speed * speed / PA_PER_MM);
    }
}
