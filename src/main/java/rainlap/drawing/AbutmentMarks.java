package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Strokes;
import rainlap.paper.Text;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;
import rainlap.wall.Abutment;

/** Decks and roofs that meet the wall: their upper side, hatched beneath like the ground, and what they are. */
final class AbutmentMarks {
    private static final double APART = 4;

    private final List<Abutment> all;
    private final View view;

    AbutmentMarks(List<Abutment> all, View view) {
        this.all = all;
        this.view = view;
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    /** The lines; names are to keep clear of them. */
    Group lines(Occupied taken) {
        List<Mark> out = new ArrayList<>();
        for (Abutment a : all) {
            PaperPoint from = view.at(a.line().a()), to = view.at(a.line().b());
            Polyline line = Polyline.line(from.x(), from.y(), to.x(), to.y(), Looks.OUTLINE);
            List<PaperSegment> strokes = new ArrayList<>();
            double l = from.distance(to), ux = (to.x() - from.x()) / l, uy = (to.y() - from.y()) / l;
            for (double s = APART / 2; s < l; s += APART) {
                PaperPoint on = from.towards(to, s / l);
                strokes.add(PaperSegment.of(on.x(), on.y(), on.x() - 1.6 * ux - 1.9 * uy, on.y() - 1.6 * uy + 1.9 * ux));
            }
            out.add(line);
            out.add(new Strokes(strokes, Looks.THIN));
            taken.add(line);
            if (a.line().isLevel()) {
                taken.add(new PaperBox(from.x(), from.y(), to.x(), from.y() + 1.9));
            }
        }
        return Group.of("abutting", out);
    }

    /** The words, along the lines where there is room beneath or above. */
    Group words(Room room) {
        List<Mark> out = new ArrayList<>();
        for (Abutment a : all) {
            PaperPoint from = view.at(a.line().a()), to = view.at(a.line().b());
            double l = from.distance(to), ux = (to.x() - from.x()) / l, uy = (to.y() - from.y()) / l;
            TextStyle style = Looks.STRONG.middle().rotated(Math.toDegrees(Math.atan2(uy, ux)));
            List<Text> candidates = new ArrayList<>();
            for (double off : new double[] {4.2, -2.6, 6}) {
                for (double share : new double[] {0.5, 0.25, 0.75, 0.35, 0.65, 0.15, 0.85}) {
                    candidates.add(Text.centred(from.towards(to, share).plus(-uy * off, ux * off), a.kind().word(), style));
                }
            }
            room.first(candidates).ifPresent(t -> out.addAll(Symbols.haloed(t, Tone.WHITE)));
        }
        return Group.of("abutting-words", out);
    }
}
