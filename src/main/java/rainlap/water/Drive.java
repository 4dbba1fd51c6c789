package rainlap.water;

import java.util.List;
import java.util.OptionalDouble;
import rainlap.practice.Limit;
import rainlap.practice.Practice;
import rainlap.wall.Exposure;
import rainlap.wall.Stage;

/**
 * How far wind and travel drive water: up under a free lower edge by the rise, sideways under a free side edge by the creep.
 *
 * <p>Rise = pressure / (water density x gravity), rounded up to the grid. The pressure is half the air density times the speed squared,
 * speeds of wind and travel added; or a test pressure stated for the wall, and the greater of the two where both are stated. In the open
 * edges take all of it. Behind a drained cladding they take the practice's share of what speed makes; a stated test pressure is never
 * lessened. Where no speed and no pressure is stated there is no figure, and the practice's course lap stands for the rise everywhere.
 * The creep has no published formula: it is the practice's end lap; none where the stated pressure is nothing, for then nothing pushes.
 *
 * @param rise of edges in the open, in grid units (0.01 mm)
 * @param creep of side edges, in grid units
 * @param shelteredRise of edges behind a drained cladding, in grid units; at the wrap stage nothing shelters and it is the rise
 * @param pressurePa the driving pressure in the open, in Pa; empty where none is stated
 * @param assumptions all that went into these figures, each with its own figure and source
 */
public record Drive(long rise, long creep, long shelteredRise, OptionalDouble pressurePa, List<Assumption> assumptions) {
    /** @throws IllegalArgumentException if a distance is below zero, or shelter drives further than the open */
    public Drive {
        assumptions = List.copyOf(assumptions);
        if (creep < 0 || shelteredRise < 0 || shelteredRise > rise) {
            throw new IllegalArgumentException("no such drive: rise " + rise + ", sheltered " + shelteredRise + ", creep " + creep);
        }
    }

    /** What this exposure drives under this practice at this stage. */
    public static Drive of(Exposure exposure, Practice practice, Stage stage) {
        long rise = rise(exposure, practice);
        long sheltered = stage == Stage.FINISHED ? shelteredRise(exposure, practice) : rise;
        Drive bare = new Drive(rise, creep(exposure, practice), sheltered, pressurePa(exposure), List.of());
        return new Drive(rise, bare.creep, sheltered, bare.pressurePa, DriveAssumptions.of(bare, exposure, practice, stage));
    }

    /** The rise in the open, in grid units. */
    public static long rise(Exposure exposure, Practice practice) {
        OptionalDouble pa = pressurePa(exposure);
        return pa.isPresent() ? Head.onGrid(pa.getAsDouble()) : practice.get(Limit.COURSE_LAP).hundredths();
    }

    /** The creep, in grid units. */
    private static long creep(Exposure exposure, Practice practice) {
        return pressurePa(exposure).orElse(1) == 0 ? 0 : practice.get(Limit.END_LAP).hundredths();
    }

    private static long shelteredRise(Exposure exposure, Practice practice) {
        OptionalDouble pa = pressurePa(exposure, share(practice));
        return pa.isPresent() ? Head.onGrid(pa.getAsDouble()) : rise(exposure, practice);
    }

    /** More than all of the pressure never reaches an edge. */
    static double share(Practice practice) {
        return Math.min(1, practice.get(Limit.DRIVING_SHARE).value());
    }

    /** The driving pressure in the open, in Pa; empty when neither speed nor pressure is stated. */
    public static OptionalDouble pressurePa(Exposure x) {
        return pressurePa(x, 1);
    }

    private static OptionalDouble pressurePa(Exposure x, double share) {
        OptionalDouble speed = Head.speedMPerS(x);
        if (speed.isEmpty()) {
            return x.pressurePa();
        }
        return OptionalDouble.of(Math.max(share * Head.stagnationPa(speed.getAsDouble()), x.pressurePa().orElse(0)));
    }

    /** The height of water that the stated exposure holds up in the open, in mm, not rounded; empty when none is stated. */
    public static OptionalDouble headMm(Exposure x) {
        OptionalDouble pa = pressurePa(x);
        return pa.isPresent() ? OptionalDouble.of(Head.mm(pa.getAsDouble())) : pa;
    }
}
