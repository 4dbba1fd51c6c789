package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Box;

/** How much water runs, on the outermost layer, over and beside each edge of each piece, whether that lies open or under a tape. */
final class Met {
    private final Map<Integer, List<Part>> over = new HashMap<>();
    private final Map<Integer, List<Part>> beside = new HashMap<>();

    private record Part(double from, double to, double low, double high, boolean right, double litres) {}

    /** Water crosses from one pile to the next below. */
    void add(Pile above, Pile below, long from, long to, Line line, double litres) {
        double y = line.at(from), z = line.at(to);
        note(over, above, below, new Part(from, to, Math.min(y, z), Math.max(y, z), false, litres));
    }

    /** Water runs down next to a plumb line between one pile and the next. */
    void addBeside(Pile here, Pile there, Flank f, double litres) {
        note(beside, here, there, new Part(f.x(), f.x(), f.from(), f.to(), f.aRight(), litres));
    }

    private static void note(Map<Integer, List<Part>> in, Pile a, Pile b, Part p) {
        if (p.litres > 0) {
            noteEnds(in, a, b, p);
            noteEnds(in, b, a, p);
        }
    }

    private static void noteEnds(Map<Integer, List<Part>> in, Pile a, Pile b, Part p) {
        for (int i = 0; i < a.depth(); i++) {
            if (!b.holds(a.at(i))) {
                in.computeIfAbsent(a.at(i), k -> new ArrayList<>(2)).add(p);
            }
        }
    }

    /** What meets an edge of a piece along a line: all that runs over it; where it is plumb, the most that runs down on either side. */
    double at(int piece, Box line) {
        return line.width() > 1 ? over(piece, line) : beside(piece, line);
    }

    private double over(int piece, Box line) {
        double sum = 0;
        for (Part p : over.getOrDefault(piece, List.of())) {
            double a = Math.max(p.from, line.minX()), b = Math.min(p.to, line.maxX());
            if (a < b && p.high >= line.minY() - 1 && p.low <= line.maxY() + 1) {
                sum += p.litres * (b - a) / (p.to - p.from);
            }
        }
        return sum;
    }

    private double beside(int piece, Box line) {
        double left = 0, right = 0;
        for (Part p : beside.getOrDefault(piece, List.of())) {
            if (p.from >= line.minX() - 1 && p.from <= line.maxX() + 1 && p.low < line.maxY() && p.high > line.minY()) {
                left = p.right ? Math.max(left, p.litres) : left;
                right = p.right ? right : Math.max(right, p.litres);
            }
        }
        return left + right;
    }
}
