package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Litres per hour that come down evenly between two x. */
record Stream(long from, long to, double litres) {
    double between(long a, long b) {
        return to == from ? 0 : litres * (b - a) / (to - from);
    }

    /**
     * The same water as streams side by side, from left to right. Without this each way that water has taken would stay a stream of its own, and where it parts
     * again and again there are more ways than anybody can count.
     */
    static List<Stream> merged(List<Stream> streams) {
        if (streams.size() < 2) {
            return List.copyOf(streams);
        }
        TreeSet<Long> ends = new TreeSet<>();
        for (Stream s : streams) {
            ends.add(s.from);
            ends.add(s.to);
        }
        List<Stream> out = new ArrayList<>();
        long from = ends.first();
        for (long to : ends.tailSet(from, false)) {
            double sum = 0;
            for (Stream s : streams) {
                sum += s.from <= from && to <= s.to ? s.between(from, to) : 0;
            }
            if (sum > 0) {
                out.add(new Stream(from, to, sum));
            }
            from = to;
        }
        return out;
    }
}
