package rainlap.paper;

import java.util.ArrayList;
import java.util.List;

/** An open line through two or more points. */
public record Polyline(List<PaperPoint> points, Edge edge) implements Mark {

    public Polyline {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a line needs two points, not " + points.size());
        }
    }

    public static Polyline of(Edge edge, PaperPoint... points) {
        return new Polyline(List.of(points), edge);
    }

    public static Polyline line(double x1, double y1, double x2, double y2, Edge edge) {
        return of(edge, new PaperPoint(x1, y1), new PaperPoint(x2, y2));
    }

    @Override
    public Polyline moved(double dx, double dy) {
        return new Polyline(points.stream().map(p -> p.plus(dx, dy)).toList(), edge);
    }

    @Override
    public PaperBox box() {
        return PaperBox.of(points);
    }

    /** Its straight pieces, in order. */
    public List<PaperSegment> segments() {
        List<PaperSegment> segments = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            segments.add(new PaperSegment(points.get(i - 1), points.get(i)));
        }
        return segments;
    }

    /** Length along the line in millimetres. */
    public double length() {
        return segments().stream().mapToDouble(PaperSegment::length).sum();
    }
}
