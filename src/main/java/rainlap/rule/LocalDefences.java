package rainlap.rule;

import rainlap.joint.Joint;
import rainlap.practice.Practice;
import rainlap.wall.Exposure;
import rainlap.water.Drive;

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
 * Rise and creep are those of {@link Drive} in the open, whatever the stage.
 */
public final class LocalDefences {
    private LocalDefences() {}

    /** Of a stretch of a joint with this lap (grid units). */
    public static int of(Joint joint, long lap, boolean taped, Exposure exposure, Practice practice) {
        int tape = taped ? 1 : 0;
        return switch (joint.kind()) {
            case REVERSE_LAP, BUTT, GAP -> tape;
            case COURSE_LAP -> tape + (lap >= Drive.rise(exposure, practice) ? 1 : 0);
            case END_LAP -> tape + (lap >= Drive.creep(practice) ? 1 : 0);
        };
    }
}
