package rainlap.drawing;

import java.util.List;
import java.util.stream.Stream;
import rainlap.measure.LengthText;
import rainlap.paper.Halo;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;

/** Dimensions of a view from outside: beneath it what is level, in it what runs aslant. */
final class FrontGauge {
    /** What two rows take beneath the view, printed mm. */
    static final double ROOM = 10.9;
    private static final double FIRST = 4.5;
    private static final double NEXT = 5.3;
    private static final double PAST = 1.4;
    private static final double OVER = 0.9;
    private final View view;
    private final PaperBox picture;
    private final PaperBox field;
    private final Occupied taken;

    FrontGauge(View view, PaperBox picture, PaperBox field, Occupied taken) {
        this.view = view;
        this.picture = picture;
        this.field = field;
        this.taken = taken;
    }

    /** What is measured and, beneath it, what is asked. */
    void draw(FrontSpan g, List<Mark> out) {
        String words = g.asked() > 0 ? LengthText.mmBeside(Math.abs(g.measured()), g.asked()) + (g.measured() < 0 ? " short" : "") : LengthText.mm(g.measured());
        PaperPoint from = view.at(g.from()), to = view.at(g.to());
        double row = picture.bottom() + FIRST;
        PaperPoint asked = from.plus(g.sign() * view.length(g.asked()), 0);
        String both = words + (g.asked() > 0 ? ", " + LengthText.mm(g.asked()) + " asked" : "");
        if (!Stream.of(from, to, g.isLevel() ? asked : to).allMatch(picture::holds)) {
            words(both, row, out);
            return;
        }
        if (!g.isLevel()) {
            aslant(from, to, out);
            words(both + (g.asked() > 0 ? ", both straight" : ", straight"), row, out);
            return;
        }
        if (g.measured() != 0) {
            row(from, to, words, row, out);
            row += NEXT;
        }
        if (g.asked() > 0) {
            row(from, asked, LengthText.mm(g.asked()) + " asked", row, out);
        }
    }

    private void row(PaperPoint a, PaperPoint b, String words, double y, List<Mark> out) {
        double left = Math.min(a.x(), b.x()), right = Math.max(a.x(), b.x()), width = TextMetrics.width(words, Looks.PLAIN);
        Stream.of(a, b).forEach(p -> {
            Polyline line = Polyline.line(p.x(), p.y(), p.x(), y + PAST, Looks.THIN);
            out.add(new Halo(Polyline.line(p.x(), p.y(), p.x(), picture.bottom(), Looks.THIN), Tone.WHITE, 0.9));
            out.add(line);
            taken.add(line);
        });
        out.add(Polyline.line(left - PAST, y, right + PAST, y, Looks.THIN));
        out.add(Symbols.stroke(left, y));
        out.add(Symbols.stroke(right, y));
        boolean inside = width + 1.6 <= right - left, onRight = right + PAST + 1 + width <= picture.right();
        double x = inside ? (left + right - width) / 2 : onRight ? right + PAST + 1 : left - PAST - 1 - width;
        TextStyle style = Looks.PLAIN;
        out.add(Text.of(x, inside ? y - OVER : y + 1.25, words, style));
    }

    private void aslant(PaperPoint a, PaperPoint b, List<Mark> out) {
        Polyline line = Polyline.of(Looks.THIN, a, b);
        out.add(new Halo(line, Tone.WHITE, 0.9));
        out.add(line);
        taken.add(line);
        out.add(Symbols.stroke(a.x(), a.y()));
        out.add(Symbols.stroke(b.x(), b.y()));
    }

    /** Figures without a line, under the view's right end. */
    private void words(String words, double y, List<Mark> out) {
        out.add(Text.of(Math.max(field.left(), picture.right() - TextMetrics.width(words, Looks.PLAIN)), y, words, Looks.PLAIN));
    }
}
