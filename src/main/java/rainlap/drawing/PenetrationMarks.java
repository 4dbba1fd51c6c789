package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Area;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Tone;
import rainlap.wall.Elevation;
import rainlap.wall.Penetration;

/** Ducts and pipes with their centre lines. */
final class PenetrationMarks {
    private PenetrationMarks() {}

    static List<Mark> of(Elevation elevation, View view) {
        List<Mark> out = new ArrayList<>();
        for (Penetration p : elevation.penetrations()) {
            PaperBox b = view.box(p.region().box());
            PaperPoint m = b.middle();
            out.add(Area.of(view.region(p.region()), Tone.WHITE, Looks.WIDE));
            out.add(Polyline.line(b.left() - 2, m.y(), b.right() + 2, m.y(), Looks.CENTRE));
            out.add(Polyline.line(m.x(), b.top() - 2, m.x(), b.bottom() + 2, Looks.CENTRE));
        }
        return out;
    }
}
