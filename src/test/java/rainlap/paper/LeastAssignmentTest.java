package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LeastAssignmentTest {

    @Test
    void noOtherAssignmentCostsLess() {
        long seed = 3141;
        Random random = new Random(seed);
        for (int round = 0; round < 300; round++) {
            int rows = 1 + random.nextInt(6);
            int columns = rows + random.nextInt(3);
            double[][] cost = new double[rows][columns];
            for (double[] row : cost) {
                Arrays.setAll(row, i -> random.nextInt(20));
            }
            int[] found = LeastAssignment.of(cost);
            assertEquals(rows, Arrays.stream(found).distinct().count(), "a column of its own each");
            double sum = 0;
            for (int i = 0; i < rows; i++) {
                sum += cost[i][found[i]];
            }
            assertEquals(least(cost, 0, new boolean[columns]), sum, 1e-9, "seed " + seed + " round " + round);
        }
    }

    @Test
    void moreRowsThanColumnsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> LeastAssignment.of(new double[][] {{1}, {2}}));
    }

    private static double least(double[][] cost, int row, boolean[] taken) {
        if (row == cost.length) {
            return 0;
        }
        double best = Double.POSITIVE_INFINITY;
        for (int column = 0; column < taken.length; column++) {
            if (!taken[column]) {
                taken[column] = true;
                best = Math.min(best, cost[row][column] + least(cost, row + 1, taken));
                taken[column] = false;
            }
        }
        return best;
    }
}
