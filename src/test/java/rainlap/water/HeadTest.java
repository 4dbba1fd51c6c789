package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.wall.Exposure;

/**
 * Heads and pressures against check values. Where a value is published, its source stands beside it; the tables marked derived were
 * reckoned from those constants outside this product and are printed with so many figures as the tolerance uses.
 */
class HeadTest {
    private static final double WATER_10C = 999.7027;
    private static final double WATER_20C = 998.2067;

    /** Derived: Pa, then mm in conventional water, at 10 C and at 20 C (densities after Tanaka 2001). */
    private static final double[][] HEADS = {
        {50, 5.099, 5.100, 5.108}, {100, 10.197, 10.200, 10.215}, {137, 13.970, 13.974, 13.995}, {150, 15.296, 15.300, 15.323},
        {200, 20.394, 20.400, 20.431}, {250, 25.493, 25.500, 25.539}, {300, 30.591, 30.601, 30.646}, {450, 45.887, 45.901, 45.970},
        {600, 61.183, 61.201, 61.293}, {750, 76.479, 76.501, 76.616}, {1000, 101.972, 102.002, 102.155},
        {1500, 152.957, 153.003, 153.232}, {2500, 254.929, 255.005, 255.387}};

    @Test
    void aPressureHoldsUpTheHeadOfTheTable() {
        for (double[] row : HEADS) {
            assertEquals(row[1], Head.mm(row[0]), 6e-4, row[0] + " Pa, conventional");
            assertEquals(row[2], Head.mm(row[0], WATER_10C), 6e-4, row[0] + " Pa, 10 C");
            assertEquals(row[3], Head.mm(row[0], WATER_20C), 6e-4, row[0] + " Pa, 20 C");
        }
    }

    @Test
    void conventionalColumnsOfWaterWeighWhatIsPublished() {
        // NIST SP 811, appendix B.8, in a transcription: 9.80665 Pa a millimetre, 249.0889 Pa an inch, both conventional.
        assertEquals(1, Head.mm(9.80665), 1e-12);
        assertEquals(25.4, Head.mm(249.0889), 1e-5);
        // The same appendix: an inch of water at 60 F is 248.84 Pa; water at 60 F (15.6 C) is 0.1 % lighter, so it stands no less high.
        assertEquals(25.4, Head.mm(248.84), 25.4 * 1.1e-3);
        // Building code, 1611.1: rain weighs 0.0098 kN/m2 a millimetre, printed to two figures.
        assertEquals(1, Head.mm(9.8), 1e-3);
    }

    @Test
    void theCodesRoundRuleIsTwoPerCentLow() {
        // Ontario Building Code, note B-9.27.3.8.(5): 10 Pa raise water by 1 mm, so 200 Pa by 20. Exactly it is a little more.
        assertEquals(20, Head.mm(200), 20 * 0.02);
        assertTrue(Head.mm(200) > 20);
    }

    @Test
    void headsGoUpToTheGridAndNeverDown() {
        assertEquals(0, Head.onGrid(0));
        assertEquals(100, Head.onGrid(9.80665), "a whole millimetre stays one");
        assertEquals(101, Head.onGrid(9.8067), "a little more is a step more");
        assertEquals(1398, Head.onGrid(137), "13.970 is 13.9701…, so 13.98");
        for (int mm = 1; mm <= 1000; mm++) {
            assertEquals(100L * mm, Head.onGrid(mm * 9.80665), mm + " mm");
        }
    }

    /** Derived: m/s, then Pa in air of 1.2, 1.225 and 1.25 kg/m3. The three densities: design, ISA 15 C, EN 1991-1-4. */
    private static final double[][] STAGNATION = {
        {10, 60, 61.25, 62.5}, {20, 240, 245, 250}, {32, 614.4, 627.2, 640}, {37, 821.4, 838.51, 855.63}, {44, 1161.6, 1185.8, 1210},
        {50, 1500, 1531.25, 1562.5}, {55, 1815, 1852.81, 1890.63}};

    @Test
    void speedMakesTheStagnationPressureOfTheTable() {
        for (double[] row : STAGNATION) {
            assertEquals(row[1], Head.stagnationPa(row[0], 1.2), 6e-3, row[0] + " m/s");
            assertEquals(row[2], Head.stagnationPa(row[0], 1.225), 6e-3, row[0] + " m/s");
            assertEquals(row[3], Head.stagnationPa(row[0]), 6e-3, row[0] + " m/s, our own air");
            // ASCE 7: q = 0.613 V^2 N/m2 (as quoted).
            assertEquals(0.613 * row[0] * row[0], Head.stagnationPa(row[0], 1.225), 0.001 * row[1], row[0] + " m/s, the American constant");
        }
    }

    @Test
    void theInverseSpeedsMakeTheTestPressures() {
        // Derived, EN air; 40 m/s is exact.
        assertEquals(1000, Head.stagnationPa(40), 1e-9);
        assertEquals(137, Head.stagnationPa(14.805), 0.01);
        assertEquals(300, Head.stagnationPa(21.909), 0.015);
        assertEquals(600, Head.stagnationPa(30.984), 0.02);
        // Derived, air of 1.2: what an upstand of 25, 50, 100 and 150 mm just resists.
        for (double[] row : new double[][] {{25, 245.17, 20.214}, {50, 490.33, 28.587}, {100, 980.67, 40.428}, {150, 1471.0, 49.514}}) {
            assertEquals(row[0], Head.mm(row[1]), 1e-3);
            assertEquals(row[0], Head.mm(Head.stagnationPa(row[2], 1.2)), 0.004);
        }
    }

    /** Derived: km/h, m/s, Pa in air of 1.2 and of 1.25, mm in air of 1.2 and of 1.25. */
    private static final double[][] TOWING = {
        {50, 13.8889, 115.74, 120.56, 11.80, 12.29}, {80, 22.2222, 296.30, 308.64, 30.21, 31.47}, {90, 25, 375, 390.63, 38.24, 39.83},
        {100, 27.7778, 462.96, 482.25, 47.21, 49.18}, {110, 30.5556, 560.19, 583.53, 57.12, 59.50},
        {120, 33.3333, 666.67, 694.44, 67.98, 70.81}};

    @Test
    void towingMakesThePressureOfTheTable() {
        for (double[] row : TOWING) {
            double speed = Head.speedMPerS(Exposures.towing(row[0])).orElseThrow();
            assertEquals(row[1], speed, 6e-5);
            assertEquals(row[2], Head.stagnationPa(speed, 1.2), 6e-3);
            assertEquals(row[3], Head.stagnationPa(speed), 6e-3);
            assertEquals(row[4], Head.mm(Head.stagnationPa(speed, 1.2)), 6e-3);
            assertEquals(row[5], Head.mm(Head.stagnationPa(speed)), 6e-3);
        }
    }

    @Test
    void headWindIsAddedBeforeSquaring() {
        // Derived: 90 km/h against 20 m/s is 45 m/s: 1215 Pa and 123.90 mm in air of 1.2.
        double speed = Head.speedMPerS(Exposures.windAndTowing(20, 90)).orElseThrow();
        assertEquals(45, speed, 1e-12);
        assertEquals(1215, Head.stagnationPa(speed, 1.2), 1e-9);
        assertEquals(123.90, Head.mm(Head.stagnationPa(speed, 1.2)), 0.006);
    }

    @Test
    void withoutWindOrTowingThereIsNoSpeed() {
        for (Exposure x : List.of(Exposure.UNSTATED, Exposures.pressure(300))) {
            assertEquals(OptionalDouble.empty(), Head.speedMPerS(x));
        }
        assertEquals(OptionalDouble.of(0), Head.speedMPerS(Exposures.wind(0)), "a stated calm is a speed");
    }
}
