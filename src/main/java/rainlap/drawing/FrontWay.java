package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;

/** The water's way as far as a view from outside shows it: its lines run level and plumb, and are cut off at the view's edges. */
final class FrontWay {
    private static final double PITCH = 7;
    /** A shorter piece would be hidden by its arrow. */
    private static final double SHORTEST = 2.2;
    private static final double EDGE = 0.6;
    private static final double SAME = 1e-6;
    private final List<List<PaperPoint>> free;
    private final List<List<PaperPoint>> failed;
    private final PaperPoint end;

    FrontWay(WaterSigns.Way way, PaperBox picture) {
        PaperBox in = picture.grown(-EDGE);
        this.free = inside(way.free(), in);
        this.failed = inside(way.failed(), in);
        this.end = way.points().isEmpty() ? picture.middle() : way.points().get(way.points().size() - 1);
    }

    /** How much of it shows, printed mm. */
    double seen() {
        return java.util.stream.Stream.of(free, failed).flatMap(List::stream).mapToDouble(l -> new Polyline(l, Looks.WIDE).length()).sum();
    }

    void draw(Occupied taken, List<Mark> out) {
        free.forEach(l -> piece(new WaterSigns.Way(l, List.of()), taken, out));
        failed.forEach(l -> piece(new WaterSigns.Way(List.of(), l), taken, out));
    }

    private void piece(WaterSigns.Way way, Occupied taken, List<Mark> out) {
        List<PaperPoint> points = way.points();
        taken.add(new Polyline(points, Looks.WIDE));
        boolean arrives = points.get(points.size() - 1).distance(end) < SAME;
        out.add(WaterSigns.named(way, arrives ? WaterSigns.arriving(way, PITCH) : WaterSigns.way(way, PITCH, true)));
    }

    /** The pieces of a line inside a box. */
    private static List<List<PaperPoint>> inside(List<PaperPoint> line, PaperBox in) {
        List<List<PaperPoint>> out = new ArrayList<>();
        List<PaperPoint> piece = new ArrayList<>();
        for (int i = 0; i + 1 < line.size(); i++) {
            PaperPoint a = line.get(i), b = line.get(i + 1), from = within(a, in), to = within(b, in);
            boolean meets = isOn(from, a, b) && isOn(to, a, b) && from.distance(to) > SAME;
            if (!meets || piece.isEmpty() || piece.get(piece.size() - 1).distance(from) > SAME) {
                close(piece, out);
                piece = new ArrayList<>(meets ? List.of(from) : List.of());
            }
            if (meets) {
                piece.add(to);
            }
        }
        close(piece, out);
        return out;
    }

    private static void close(List<PaperPoint> piece, List<List<PaperPoint>> out) {
        if (piece.size() > 1 && new Polyline(piece, Looks.WIDE).length() > SHORTEST) {
            out.add(List.copyOf(piece));
        }
    }

    private static PaperPoint within(PaperPoint p, PaperBox in) {
        return new PaperPoint(Math.max(in.left(), Math.min(in.right(), p.x())), Math.max(in.top(), Math.min(in.bottom(), p.y())));
    }

    /** Whether a point moved into the box is still on its level or plumb line. */
    private static boolean isOn(PaperPoint p, PaperPoint a, PaperPoint b) {
        return Math.abs(a.x() - b.x()) < SAME ? Math.abs(p.x() - a.x()) < SAME : Math.abs(p.y() - a.y()) < SAME;
    }
}
