package rainlap.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * An area on the sheet, bounded by closed rings under the even-odd rule: a ring inside another is a hole. The last
 * point of a ring is not repeated.
 */
public record PaperRegion(List<List<PaperPoint>> rings) {

    public PaperRegion {
        List<List<PaperPoint>> copies = new ArrayList<>();
        for (List<PaperPoint> ring : rings) {
            List<PaperPoint> points = new ArrayList<>(ring);
            if (points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
                points.remove(points.size() - 1);
            }
            if (points.size() < 3) {
                throw new IllegalArgumentException("a ring needs three points, not " + points.size());
            }
            copies.add(List.copyOf(points));
        }
        if (copies.isEmpty()) {
            throw new IllegalArgumentException("a region needs a ring");
        }
        rings = List.copyOf(copies);
    }

    public static PaperRegion of(List<PaperPoint> ring) {
        return new PaperRegion(List.of(ring));
    }

    public static PaperRegion of(PaperPoint... ring) {
        return of(List.of(ring));
    }

    public static PaperRegion of(PaperBox box) {
        return of(box.corners());
    }

    /**
     * The strip of a line drawn with a width, as an area: for solid layers in sections, whose widths are no pens. Corners
     * are mitred, at most to twice the width; ends are cut square.
     *
     * @param line two or more points, no two neighbours equal
     * @param width in millimetres
     */
    public static PaperRegion along(List<PaperPoint> line, double width) {
        List<PaperPoint> there = new ArrayList<>();
        List<PaperPoint> back = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            PaperPoint at = line.get(i);
            double[] in = direction(line.get(Math.max(i - 1, 0)), line.get(Math.max(i, 1)));
            double[] out = direction(line.get(Math.min(i, line.size() - 2)), line.get(Math.min(i + 1, line.size() - 1)));
            double x = -in[1] - out[1];
            double y = in[0] + out[0];
            double scale = width / Math.max(x * x + y * y, 0.25);
            there.add(at.plus(x * scale, y * scale));
            back.add(0, at.plus(-x * scale, -y * scale));
        }
        there.addAll(back);
        return of(there);
    }

    private static double[] direction(PaperPoint from, PaperPoint to) {
        double length = from.distance(to);
        return new double[] {(to.x() - from.x()) / length, (to.y() - from.y()) / length};
    }

    PaperRegion moved(double dx, double dy) {
        return new PaperRegion(rings.stream().map(ring -> ring.stream().map(p -> p.plus(dx, dy)).toList()).toList());
    }

    public PaperBox box() {
        return rings.stream().map(PaperBox::of).reduce(PaperBox::with).orElseThrow();
    }

    /** True when the point is inside by the even-odd rule. */
    public boolean holds(PaperPoint p) {
        boolean inside = false;
        for (List<PaperPoint> ring : rings) {
            PaperPoint a = ring.get(ring.size() - 1);
            for (PaperPoint b : ring) {
                if (a.y() > p.y() != b.y() > p.y()
                        && p.x() < a.x() + (p.y() - a.y()) * (b.x() - a.x()) / (b.y() - a.y())) {
                    inside = !inside;
                }
                a = b;
            }
        }
        return inside;
    }
}
