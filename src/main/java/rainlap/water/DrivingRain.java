package rainlap.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.wall.Exposure;

/**
 * Rain on an upright wall. One litre on a square metre is one millimetre.
 *
 * <p>With a speed: rain on the wall = deposition x (speed / speed at which the median drop falls) x rain on level ground x cosine of the
 * wind's angle to the wall (Building Science Digest BSD-148). The median drop comes from the rain (Best 1950), its fall from its size
 * (Dingle and Lee 1972). Deposition is taken as 1, the most that digest gives, and the wind as square to the wall: an upper bound.
 * Without a speed: half the rain on level ground, the old design rule of one across to two down. A stated test pressure is no wind and
 * says nothing about rain.
 *
 * @param litresPerM2Hour on the wall
 * @param assumptions all that went into it, each with its own figure and source
 */
public record DrivingRain(double litresPerM2Hour, List<Assumption> assumptions) {
    /** Median of 1 - F = exp(-(D/a)^n), a = 1.30 R^0.232, with n as the driving-rain texts quote it. */
    private static final double MEDIAN_MM = 1.30 * Math.pow(Math.log(2), 1 / 2.245);
    private static final double MEDIAN_POWER = 0.232;
    /** The smallest drop whose fall was measured (Gunn and Kinzer 1949). Below it the fit soon falls upwards. */
    private static final double SMALLEST_DROP_MM = 0.1;
    private static final double FASTEST_FALL_M_PER_S = 9.20;
    static final double DEPOSITION = 1;
    private static final double SQUARE_TO_WALL = 1;
    static final double DESIGN_RULE = 0.5;

    /** @throws IllegalArgumentException if there is less than no rain */
    public DrivingRain {
        assumptions = List.copyOf(assumptions);
        if (!(litresPerM2Hour >= 0) || Double.isInfinite(litresPerM2Hour)) {
            throw new IllegalArgumentException("no such rain on a wall: " + litresPerM2Hour);
        }
    }

    /** What falls on a wall in this exposure; empty where no rain is stated. */
    public static Optional<DrivingRain> of(Exposure x) {
        return x.rainMmPerH().stream().mapToObj(rain -> {
            OptionalDouble speed = Head.speedMPerS(x);
            double onWall = speed.isPresent() ? onWall(rain, speed.getAsDouble(), DEPOSITION, SQUARE_TO_WALL) : DESIGN_RULE * rain;
            return new DrivingRain(onWall, speed.isPresent() ? RainAssumptions.driven(x, rain, onWall) : RainAssumptions.byDesignRule(rain, onWall));
        }).findFirst();
    }

    /** In one line with its figures and source; empty where no rain is stated. */
    public static Optional<String> relation(Exposure x) {
        return of(x).map(r -> RainAssumptions.relation(x, r.litresPerM2Hour));
    }

    /** Litres a square metre and hour; nothing on a wall that faces away. */
    static double onWall(double rainMmPerH, double speedMPerS, double deposition, double cosine) {
        return deposition * factorSPerM(rainMmPerH) * speedMPerS * rainMmPerH * Math.max(0, cosine);
    }

    /** The driving rain factor in s/m. */
    static double factorSPerM(double rainMmPerH) {
        return 1 / fallMPerS(medianDropMm(rainMmPerH));
    }

    /** Half of the water comes in drops smaller than this. */
    static double medianDropMm(double rainMmPerH) {
        return MEDIAN_MM * Math.pow(rainMmPerH, MEDIAN_POWER);
    }

    /** The steady speed of a falling drop. */
    static double fallMPerS(double dropMm) {
        double d = Math.max(SMALLEST_DROP_MM, dropMm);
        return Math.min(FASTEST_FALL_M_PER_S, -0.166033 + d * (4.91844 + d * (-0.888016 + d * 0.054888)));
    }
}
