package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/** A line that ascends along the wall raised over others: nowhere nearer to them than asked, and where they allow it as it was. */
final class Over {
    /** Beyond the end of what stands out a soft piece comes down so steeply: printed mm outwards for each along. */
    private static final double STEEP = 0.9;
    /** A hundredth of a printed mm is no difference. */
    private static final double SAME = 0.01;
    /** A soft piece bridges a notch shorter than this, printed mm. */
    private static final double NOTCH = 2.2;
    /** On both sides of a sharp step, grid units. */
    private static final double BESIDE = 0.5;

    private Over() {}

    /**
     * What a line lies over.
     *
     * @param points places and distances out, along it
     * @param stands whether it stands out at its ends, so that what lies over it comes down beyond
     */
    record Beneath(List<double[]> points, boolean stands) {
        double from() {
            return points.stream().mapToDouble(p -> p[0]).min().orElseThrow();
        }

        double to() {
            return points.stream().mapToDouble(p -> p[0]).max().orElseThrow();
        }

        boolean meets(List<double[]> line) {
            return Math.min(to(), last(line)[0]) - Math.max(from(), line.get(0)[0]) > 1;
        }

        /** The furthest out at a place, or beyond an end what hangs over that; below everything where there is nothing. */
        double at(double place, SectionGrid grid) {
            if (place < from() || place > to()) {
                return stands ? at(place < from() ? from() : to(), grid) - STEEP * grid.length(Math.max(from() - place, place - to())) : Double.NEGATIVE_INFINITY;
            }
            double out = Double.NEGATIVE_INFINITY;
            for (int i = 0; i + 1 < points.size(); i++) {
                double[] a = points.get(i), b = points.get(i + 1);
                if (Math.min(a[0], b[0]) <= place && place <= Math.max(a[0], b[0])) {
                    out = Math.max(out, a[0] == b[0] ? Math.max(a[1], b[1]) : a[1] + (place - a[0]) / (b[0] - a[0]) * (b[1] - a[1]));
                }
            }
            return out;
        }
    }

    static List<double[]> all(List<double[]> line, List<Beneath> beneath, double clear, SectionGrid grid) {
        List<DoubleUnaryOperator> curves = new ArrayList<>();
        curves.add(place -> out(line, place));
        beneath.forEach(b -> curves.add(place -> b.at(place, grid) + clear));
        TreeSet<Double> places = new TreeSet<>();
        Stream.concat(line.stream(), beneath.stream().flatMap(b -> b.points.stream())).forEach(p -> Stream.of(p[0] - BESIDE, p[0], p[0] + BESIDE).forEach(places::add));
        places.removeIf(p -> p < line.get(0)[0] || p > last(line)[0]);
        crossings(curves, new ArrayList<>(places), places);
        List<double[]> out = new ArrayList<>();
        places.forEach(p -> out.add(new double[] {p, curves.stream().mapToDouble(c -> c.applyAsDouble(p)).max().orElseThrow()}));
        return out.stream().allMatch(p -> p[1] - out(line, p[0]) < SAME) ? line : straight(bridged(out, grid), grid);
    }

    /** Where two curves cross between neighbouring places, between which all are straight. */
    private static void crossings(List<DoubleUnaryOperator> curves, List<Double> at, TreeSet<Double> out) {
        for (int i = 0; i + 1 < at.size(); i++) {
            double a = at.get(i), b = at.get(i + 1);
            for (int k = 0; k < curves.size(); k++) {
                for (int m = k + 1; m < curves.size(); m++) {
                    double before = curves.get(k).applyAsDouble(a) - curves.get(m).applyAsDouble(a), after = curves.get(k).applyAsDouble(b) - curves.get(m).applyAsDouble(b);
                    if (before * after < 0 && Double.isFinite(before) && Double.isFinite(after)) {
                        out.add(a + (b - a) * before / (before - after));
                    }
                }
            }
        }
    }

    /** Over a notch so short that no soft piece is pressed into it the line goes straight on. */
    private static List<double[]> bridged(List<double[]> line, SectionGrid grid) {
        List<double[]> out = new ArrayList<>(line);
        for (int i = 1; i + 1 < out.size(); ) {
            double[] a = out.get(i - 1), m = out.get(i), b = out.get(i + 1);
            double along = b[0] - a[0], straight = along > 0 ? a[1] + (m[0] - a[0]) / along * (b[1] - a[1]) : Math.max(a[1], b[1]);
            boolean notch = grid.length(along) < NOTCH && m[1] <= straight;
            if (notch) {
                out.remove(i);
            }
            i = notch ? Math.max(1, i - 1) : i + 1;
        }
        return out;
    }

    /** Without points on a straight line between others. */
    private static List<double[]> straight(List<double[]> line, SectionGrid grid) {
        List<double[]> out = new ArrayList<>();
        for (double[] p : line) {
            while (out.size() > 1 && isBetween(out.get(out.size() - 2), out.get(out.size() - 1), p, grid)) {
                out.remove(out.size() - 1);
            }
            out.add(p);
        }
        return out;
    }

    private static boolean isBetween(double[] a, double[] m, double[] b, SectionGrid grid) {
        double along = grid.length(b[0] - a[0]), up = b[1] - a[1], l = Math.hypot(along, up);
        return l < SAME || Math.abs(grid.length(m[0] - a[0]) * up - (m[1] - a[1]) * along) / l < SAME;
    }

    private static double out(List<double[]> line, double place) {
        for (int i = 0; i + 1 < line.size(); i++) {
            double[] a = line.get(i), b = line.get(i + 1);
            if (a[0] <= place && place <= b[0]) {
                return a[0] == b[0] ? b[1] : a[1] + (place - a[0]) / (b[0] - a[0]) * (b[1] - a[1]);
            }
        }
        return line.get(line.size() - 1)[1];
    }

    /** What of a line lies between two places. */
    static List<double[]> part(List<double[]> line, double from, double to) {
        List<double[]> out = new ArrayList<>();
        double first = Math.max(from, line.get(0)[0]), end = Math.min(to, last(line)[0]);
        out.add(new double[] {first, out(line, first)});
        line.stream().filter(p -> first < p[0] && p[0] < end).forEach(out::add);
        out.add(new double[] {end, out(line, end)});
        return out;
    }

    private static double[] last(List<double[]> line) {
        return line.get(line.size() - 1);
    }
}
