package rainlap.drawing;

import java.util.List;
import rainlap.paper.Area;
import rainlap.paper.Fill;
import rainlap.paper.Halo;
import rainlap.paper.Hatch;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Strokes;
import rainlap.paper.Text;
import rainlap.paper.Tone;

/** How each kind of piece and line looks, the same in the elevation and in the legend. */
final class Symbols {
    /** Length and pitch of fall ticks, printed mm. */
    private static final double TICK = 2;
    private static final double TICK_PITCH = 3;

    private Symbols() {}

    static List<Mark> membrane(PaperRegion r) {
        return List.of(Area.of(r, Looks.MEMBRANE, Looks.MEDIUM));
    }

    static List<Mark> tape(PaperRegion r) {
        return List.of(Area.filled(r, Looks.TAPE), Hatch.of(r, 45, Looks.TAPE_PITCH, Looks.STRIP_HATCH), Area.edged(r, Looks.STRIP_EDGE));
    }

    static List<Mark> corner(PaperRegion r) {
        return List.of(Area.filled(r, Looks.CORNER), Hatch.crossed(r, 45, Looks.CORNER_PITCH, Looks.STRIP_HATCH),
                Area.edged(r, Looks.STRIP_EDGE));
    }

    static List<Mark> reversed(PaperRegion r) {
        return List.of(Area.filled(r, Looks.LAP), Hatch.of(r, 135, Looks.REVERSED_PITCH, Looks.REVERSED_HATCH));
    }

    static List<Mark> flashing(PaperRegion r) {
        return List.of(Area.of(r, Looks.FLASHING, Looks.WIDE));
    }

    /** A batten with grain along its longer side. */
    static List<Mark> batten(PaperRegion r) {
        PaperBox b = r.box();
        boolean upright = b.height() > b.width();
        List<PaperSegment> grain = new java.util.ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            double x = b.left() + b.width() * i / 4, y = b.top() + b.height() * i / 4;
            double inset = Math.min(2, (upright ? b.height() : b.width()) / 8);
            grain.add(upright ? PaperSegment.of(x, b.top() + inset, x, b.bottom() - inset)
                    : PaperSegment.of(b.left() + inset, y, b.right() - inset, y));
        }
        return List.of(Area.of(r, Looks.BATTEN, Looks.MEDIUM), new Strokes(grain, Looks.RULE));
    }

    /** Cladding: so white that what lies beneath is only just seen, ribs at their pitch in printed mm. */
    static List<Mark> cladding(PaperRegion p, double pitch) {
        return List.of(new Area(p, java.util.Optional.of(new Fill(Tone.WHITE, 0.8)), java.util.Optional.empty()),
                new Strokes(Hatch.lines(p, 90, pitch), Looks.RULE), Area.edged(p, Looks.MEDIUM));
    }

    static List<Mark> cladding(PaperBox b) {
        return cladding(PaperRegion.of(b), 2.5);
    }

    static List<Mark> trim(PaperRegion p) {
        PaperBox b = p.box();
        boolean upright = b.height() > b.width();
        return List.of(Area.of(p, Tone.WHITE, Looks.WIDE),
                upright ? Polyline.line(b.middle().x(), b.top(), b.middle().x(), b.bottom(), Looks.THIN)
                        : Polyline.line(b.left(), b.middle().y(), b.right(), b.middle().y(), Looks.THIN));
    }

    static List<Mark> trim(PaperBox b) {
        return trim(PaperRegion.of(b));
    }

    /** Ticks on the right of a line from a to b, beginning half a pitch in. */
    static Strokes ticks(List<PaperSegment> lines) {
        List<PaperSegment> out = new java.util.ArrayList<>();
        for (PaperSegment s : lines) {
            double length = s.length();
            if (length < TICK_PITCH / 2) {
                continue;
            }
            int n = (int) Math.max(1, Math.floor(length / TICK_PITCH));
            double dx = -(s.to().y() - s.from().y()) / length * TICK, dy = (s.to().x() - s.from().x()) / length * TICK;
            for (int i = 0; i < n; i++) {
                PaperPoint p = s.from().towards(s.to(), (i + 0.5) / n);
                out.add(new PaperSegment(p, p.plus(dx, dy)));
            }
        }
        return new Strokes(out, Looks.THIN);
    }

    /** A text with room kept round it. */
    static List<Mark> haloed(Text t, Tone ground) {
        return List.of(new Halo(t, ground, 0.9), t);
    }

    /** A solid triangle pointing the way of (dx, dy), its point at p. */
    static Area arrowHead(PaperPoint p, double dx, double dy) {
        return arrowHead(p, dx, dy, Tone.INK);
    }

    static Area arrowHead(PaperPoint p, double dx, double dy, Tone tone) {
        double l = Math.hypot(dx, dy), ux = dx / l, uy = dy / l;
        return Area.filled(PaperRegion.of(p, p.plus(-2.2 * ux - 0.65 * uy, -2.2 * uy + 0.65 * ux),
                p.plus(-2.2 * ux + 0.65 * uy, -2.2 * uy - 0.65 * ux)), tone);
    }

    /** An oblique stroke of a dimension. */
    static Mark stroke(double x, double y) {
        return Polyline.line(x - 1.1, y + 1.1, x + 1.1, y - 1.1, Looks.MEDIUM);
    }
}
