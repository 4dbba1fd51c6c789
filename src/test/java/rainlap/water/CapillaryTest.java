package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class CapillaryTest {
    @Test
    void risesBetweenPlatesAsPublished() {
        // Published exercise (secondary): plates 1 mm apart, 0.075 N/m, 1000 kg/m3, g 10: 15 mm exactly.
        assertEquals(15, Capillary.betweenPlatesMm(1, 0.075, 1000, 10), 1e-12);
        // Published exercise (secondary): a tube of 0.5 mm radius, 0.0728 N/m, g 9.81: 29.68 mm. Plates as far apart as that radius do the same.
        assertEquals(29.68, Capillary.betweenPlatesMm(0.5, 0.0728, 1000, 9.81), 0.005);
    }

    /** Derived: gap and height in mm, water at 20 C. */
    private static final double[][] PLATES = {
        {0.1, 148.607}, {0.2, 74.303}, {0.3, 49.536}, {0.5, 29.721}, {1, 14.861}, {2, 7.430}, {3, 4.954}, {6, 2.477}};

    @Test
    void risesBetweenPlatesAsTabled() {
        for (double[] row : PLATES) {
            assertEquals(row[1], Capillary.betweenPlatesMm(row[0]), 1e-3, row[0] + " mm");
        }
    }

    @Test
    void surfaceTensionIsThatOfTheRelease() {
        // IAPWS R1-76(2014), table at 20 C: 72.74 mN/m (secondary).
        assertEquals(72.74e-3, Capillary.TENSION_N_PER_M, 0.005e-3);
    }

    @Test
    void aGapIsAboveZero() {
        assertThrows(IllegalArgumentException.class, () -> Capillary.betweenPlatesMm(0));
        assertThrows(IllegalArgumentException.class, () -> Capillary.betweenPlatesMm(Double.NaN));
    }
}
