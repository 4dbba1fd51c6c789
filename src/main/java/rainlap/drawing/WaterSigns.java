package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Area;
import rainlap.paper.Clip;
import rainlap.paper.Edge;
import rainlap.paper.Fill;
import rainlap.paper.Group;
import rainlap.paper.Halo;
import rainlap.paper.Hatch;
import rainlap.paper.Mark;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Pen;
import rainlap.paper.Polyline;
import rainlap.paper.Strokes;
import rainlap.paper.Tone;

/** How water looks: its way as a line with drops and an arrow, dashed from the first failure on; the frame it reaches as a tone with level dashes. */
final class WaterSigns {
    static final Tone WATER = Tone.of("#0072b2");
    private static final Edge LINE = Edge.of(Pen.WIDE, WATER);
    private static final Edge AFTER_FAILURE = Edge.of(Pen.WIDE_DASHED, WATER);
    private static final Tone WET = Tone.of("#a63f00");
    private static final double WET_OPACITY = 0.11;
    private static final Edge WET_DASH = Edge.of(Pen.THIN, Tone.of("#9a5a3a"));
    private static final double ROW = 2;
    private static final double DASH = 1.3;
    private static final double PERIOD = 4;
    private static final double ARROW = 2;
    private static final double ARROW_HALF = 0.62;

    /** Classes of the groups that hold ways, so that the legend finds them. */
    static final String FREE = "water-free";
    static final String FAILED = "water-failed";

    private WaterSigns() {}

    /** Whether some way of this class is among these marks. */
    static boolean areIn(List<Mark> marks, String kind) {
        return marks.stream().anyMatch(m -> m instanceof Group g && (g.classes().contains(kind) || areIn(g.marks(), kind))
                || m instanceof Clip c && areIn(c.marks(), kind));
    }

    /** The marks of a way as a group of its classes. */
    static Group named(Way way, List<Mark> marks) {
        Group g = Group.of(marks);
        g = way.free().size() > 1 ? g.withClass(FREE) : g;
        return way.failed().size() > 1 ? g.withClass(FAILED) : g;
    }

    /**
     * The way of water on paper.
     *
     * @param free as it goes for nothing; fewer than two points where it needs a failure from the start
     * @param failed from the first failure on; fewer than two points where it needs none
     */
    record Way(List<PaperPoint> free, List<PaperPoint> failed) {
        Way {
            free = List.copyOf(free);
            failed = List.copyOf(failed);
        }

        List<PaperPoint> points() {
            List<PaperPoint> out = new ArrayList<>(free);
            out.addAll(failed.size() > 1 && !free.isEmpty() ? failed.subList(1, failed.size()) : failed);
            return out;
        }
    }

    /** @param pitch distance of drops along the line, printed mm */
    static List<Mark> way(Way way, double pitch, boolean halo) {
        List<Mark> lines = new ArrayList<>();
        if (way.free().size() > 1) {
            lines.add(new Polyline(way.failed().size() > 1 ? way.free() : shortened(way.free()), LINE));
        }
        if (way.failed().size() > 1) {
            lines.add(new Polyline(shortened(way.failed()), AFTER_FAILURE));
        }
        List<Mark> out = new ArrayList<>();
        if (halo) {
            lines.forEach(l -> out.add(new Halo(l, Tone.WHITE, 1.1)));
        }
        out.addAll(lines);
        List<PaperPoint> all = way.points();
        drops(way.free(), pitch, out);
        out.add(arrow(all.get(all.size() - 1), before(all)));
        return out;
    }

    /** The same with room kept round it and a drop where it comes onto the frame. */
    static List<Mark> arriving(Way way, double pitch) {
        List<Mark> out = new ArrayList<>(way(way, pitch, true));
        List<PaperPoint> all = way.points();
        PaperPoint tip = all.get(all.size() - 1), from = before(all);
        double l = tip.distance(from);
        PaperPoint at = tip.plus((tip.x() - from.x()) / l * 1.4, (tip.y() - from.y()) / l * 1.4 + 0.3);
        out.add(new Halo(drop(at, 1.2), Tone.WHITE, 0.9));
        out.add(drop(at, 1.2));
        return out;
    }

    private static PaperPoint before(List<PaperPoint> line) {
        PaperPoint tip = line.get(line.size() - 1);
        for (int i = line.size() - 2; i >= 0; i--) {
            if (line.get(i).distance(tip) > 0.3) {
                return line.get(i);
            }
        }
        return tip.plus(0, -1);
    }

    /** A line that ends inside its arrowhead, so that the point stays sharp. */
    private static List<PaperPoint> shortened(List<PaperPoint> line) {
        List<PaperPoint> out = new ArrayList<>(line);
        PaperPoint tip = out.get(out.size() - 1), last = out.get(out.size() - 2);
        double l = tip.distance(last);
        if (l > ARROW) {
            out.set(out.size() - 1, tip.towards(last, (ARROW - 0.6) / l));
        }
        return out;
    }

    static Area arrow(PaperPoint tip, PaperPoint from) {
        double l = tip.distance(from), ux = (tip.x() - from.x()) / l, uy = (tip.y() - from.y()) / l;
        return Area.filled(PaperRegion.of(tip, tip.plus(-ARROW * ux - ARROW_HALF * uy, -ARROW * uy + ARROW_HALF * ux),
                tip.plus(-ARROW * ux + ARROW_HALF * uy, -ARROW * uy - ARROW_HALF * ux)), WATER);
    }

    /** Drops on the plumb stretches of a line. */
    private static void drops(List<PaperPoint> line, double pitch, List<Mark> out) {
        for (int i = 0; i + 1 < line.size(); i++) {
            PaperPoint a = line.get(i), b = line.get(i + 1);
            double l = a.distance(b);
            if (Math.abs(a.x() - b.x()) < 0.01 && b.y() > a.y() && l > 0.6 * pitch) {
                int n = (int) Math.max(1, Math.round(l / pitch));
                for (int k = 0; k < n; k++) {
                    out.add(drop(a.towards(b, (k + 0.5) / n), 1));
                }
            }
        }
    }

    /** A drop with its point up. */
    static Area drop(PaperPoint middle, double size) {
        double r = 0.55 * size;
        List<PaperPoint> ring = new ArrayList<>(List.of(middle.plus(0, -2.6 * r)));
        for (int degrees = -25; degrees <= 205; degrees += 23) {
            double a = Math.toRadians(degrees);
            ring.add(middle.plus(r * Math.cos(a), r * Math.sin(a)));
        }
        return Area.filled(PaperRegion.of(ring), WATER);
    }

    /** The frame that water reaches as drawn. */
    static List<Mark> wet(PaperRegion r) {
        List<PaperSegment> dashes = new ArrayList<>();
        for (PaperSegment s : Hatch.lines(r, 0, ROW)) {
            dash(s, dashes);
        }
        return List.of(new Area(r, java.util.Optional.of(new Fill(WET, WET_OPACITY)), java.util.Optional.empty()), new Strokes(dashes, WET_DASH));
    }

    /** Dashes of a level line, their phase fixed to the sheet, every other row between those of the next. */
    private static void dash(PaperSegment s, List<PaperSegment> out) {
        double left = Math.min(s.from().x(), s.to().x()), right = Math.max(s.from().x(), s.to().x()), y = s.from().y();
        double phase = Math.floorMod(Math.round(y / ROW), 2L) * PERIOD / 2;
        for (double k = Math.floor((left - phase) / PERIOD); phase + k * PERIOD < right; k++) {
            double from = Math.max(left, phase + k * PERIOD), to = Math.min(right, phase + k * PERIOD + DASH);
            if (to - from > 0.1) {
                out.add(PaperSegment.of(from, y, to, y));
            }
        }
    }
}
