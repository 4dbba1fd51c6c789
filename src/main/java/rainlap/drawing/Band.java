package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;

/** A strip of even width along a line, as an area: sheets cut through in sections. */
final class Band {
    private static final double SAME = 0.01;
    /** A sharp bend is cut off at this many half widths. */
    private static final double LONGEST_MITRE = 2;

    private Band() {}

    /** @param line at least two points apart */
    static PaperRegion along(List<PaperPoint> line, double width) {
        List<PaperPoint> path = new ArrayList<>();
        for (PaperPoint p : line) {
            if (path.isEmpty() || path.get(path.size() - 1).distance(p) > SAME) {
                path.add(p);
            }
        }
        if (path.size() == 1) {
            path.add(path.get(0).plus(0, SAME));
        }
        List<PaperPoint> ring = new ArrayList<>();
        for (int i = 0; i < path.size(); i++) {
            ring.add(offset(path, i, width / 2));
        }
        for (int i = path.size() - 1; i >= 0; i--) {
            ring.add(offset(path, i, -width / 2));
        }
        return PaperRegion.of(ring);
    }

    private static PaperPoint offset(List<PaperPoint> path, int i, double by) {
        double[] before = normal(path, Math.max(0, i - 1)), after = normal(path, Math.min(path.size() - 2, i));
        double x = before[0] + after[0], y = before[1] + after[1], l = Math.hypot(x, y);
        if (l < 1e-6) {
            return path.get(i).plus(before[0] * by, before[1] * by);
        }
        double stretch = Math.min(LONGEST_MITRE, 2 / l);
        return path.get(i).plus(x / l * stretch * by, y / l * stretch * by);
    }

    private static double[] normal(List<PaperPoint> path, int i) {
        PaperPoint a = path.get(i), b = path.get(i + 1);
        double l = a.distance(b);
        return new double[] {-(b.y() - a.y()) / l, (b.x() - a.x()) / l};
    }
}
