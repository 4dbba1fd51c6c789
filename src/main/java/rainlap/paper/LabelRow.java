package rainlap.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Places things in a given order along a line, each as near to where it wants to be as the gaps between neighbours and
 * the ends of the line allow: least sum of distances, by pooling adjacent violators with medians, so that as many as can
 * stand exactly where they want to.
 */
final class LabelRow {

    private static final double ROUNDING = 1e-7;

    private LabelRow() {
    }

    /**
     * @param wanted where each would stand
     * @param gaps least distance from each to the next, one fewer
     * @param from least place of the first
     * @param to greatest place of the last
     * @return the places, or empty when the line is too short
     */
    static Optional<double[]> places(double[] wanted, double[] gaps, double from, double to) {
        int n = wanted.length;
        double[] before = new double[n];
        for (int i = 1; i < n; i++) {
            before[i] = before[i - 1] + gaps[i - 1];
        }
        double last = n == 0 ? to : to - before[n - 1];
        if (last < from - ROUNDING) {
            return Optional.empty();
        }
        List<List<Double>> pools = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            List<Double> pool = new ArrayList<>(List.of(wanted[i] - before[i]));
            while (!pools.isEmpty() && median(pools.get(pools.size() - 1)) > median(pool)) {
                pool.addAll(pools.remove(pools.size() - 1));
                Collections.sort(pool);
            }
            pools.add(pool);
        }
        double[] places = new double[n];
        int i = 0;
        for (List<Double> pool : pools) {
            double at = Math.max(from, Math.min(last, median(pool)));
            for (int k = 0; k < pool.size(); k++, i++) {
                places[i] = at + before[i];
            }
        }
        return Optional.of(places);
    }

    private static double median(List<Double> sorted) {
        return sorted.get((sorted.size() - 1) / 2);
    }
}
