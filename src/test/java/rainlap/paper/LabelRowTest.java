package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelRowTest {

    @Test
    void whatHasRoomStandsWhereItWants() {
        assertArrayEquals(new double[] {3, 20, 41}, LabelRow.places(new double[] {3, 20, 41}, new double[] {9, 9}, 0, 50).orElseThrow());
    }

    @Test
    void aCrowdSharesTheRoomAndOneStandsWhereItWants() {
        assertArrayEquals(new double[] {11, 20, 29}, LabelRow.places(new double[] {20, 20, 20}, new double[] {9, 9}, 0, 50).orElseThrow());
    }

    @Test
    void endsOfTheLineHold() {
        assertArrayEquals(new double[] {0, 9}, LabelRow.places(new double[] {-5, -4}, new double[] {9}, 0, 9).orElseThrow());
        assertEquals(Optional.empty(), LabelRow.places(new double[] {-5, -4}, new double[] {9}, 0, 8.9));
        assertEquals(0, LabelRow.places(new double[0], new double[0], 0, 1).orElseThrow().length);
    }

    @Test
    void noOtherPlacesOnWholeMillimetresAreNearer() {
        long seed = 2718;
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            double[] wanted = random.ints(4, -3, 16).asDoubleStream().toArray();
            double[] found = LabelRow.places(wanted, new double[] {2, 3, 2}, 0, 12).orElseThrow();
            double least = Double.POSITIVE_INFINITY;
            for (int a = 0; a <= 12; a++) {
                for (int b = a + 2; b <= 12; b++) {
                    for (int c = b + 3; c <= 12; c++) {
                        for (int d = c + 2; d <= 12; d++) {
                            least = Math.min(least, far(wanted, new double[] {a, b, c, d}));
                        }
                    }
                }
            }
            assertEquals(least, far(wanted, found), 1e-9, "seed " + seed + " round " + round + Arrays.toString(wanted));
            assertTrue(found[0] >= 0 && found[3] <= 12);
        }
    }

    private static double far(double[] wanted, double[] places) {
        double sum = 0;
        for (int i = 0; i < wanted.length; i++) {
            sum += Math.abs(wanted[i] - places[i]);
        }
        return sum;
    }
}
