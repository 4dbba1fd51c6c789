package rainlap.material;

/** Lowest and highest temperature, in degrees Celsius. */
public record TemperatureRange(double lowC, double highC) {
    /** @throws IllegalArgumentException if the range is empty, not finite or below absolute zero */
    public TemperatureRange {
        if (!(lowC < highC && lowC >= -273.15 && Double.isFinite(highC))) {
            throw new IllegalArgumentException("service_c must run from low to high, not from " + lowC + " to " + highC);
        }
    }
}
