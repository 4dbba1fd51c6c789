package rainlap.drawing;

import java.util.List;
import rainlap.paper.Area;
import rainlap.paper.Disc;
import rainlap.paper.Edge;
import rainlap.paper.Mark;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Pen;
import rainlap.paper.Text;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;

/** How a weak point is marked, by the number of its defences: as many rings as defences, a solid diamond for none. */
enum Severity {
    NONE("#a63f00", Pen.EXTRA_WIDE, "none: leaks as drawn"), ONE("#005f96", Pen.WIDE, "one failure from the frame"),
    MORE("#00664b", Pen.MEDIUM, "two or more: fails safe");

    /** Half the height of a diamond of full size; rings are 7 wide. */
    static final double HALF = 4;
    private final Tone tone;
    private final Pen pen;
    private final String inWords;

    Severity(String tone, Pen pen, String inWords) {
        this.tone = Tone.of(tone);
        this.pen = pen;
        this.inWords = inWords;
    }

    String inWords() {
        return inWords;
    }

    static Severity of(int defences) {
        return defences == 0 ? NONE : defences == 1 ? ONE : MORE;
    }

    Tone tone() {
        return tone;
    }

    /** The line of a weak stretch. */
    Edge edge() {
        return Edge.of(pen, tone);
    }

    /** The mark beside the drawing. */
    List<Mark> mark(PaperPoint middle, int number) {
        return mark(middle, number, 1);
    }

    /** The same in tables, smaller. */
    List<Mark> smallMark(PaperPoint middle, int number) {
        return mark(middle, number, 0.84);
    }

    private List<Mark> mark(PaperPoint m, int number, double size) {
        String figure = Integer.toString(number);
        double height = figure.length() < 3 && size == 1 ? 2.9 : 2.5;
        TextStyle style = TextStyle.of(height).bold().middle();
        double r = HALF * size;
        return switch (this) {
            case NONE -> List.of(Area.filled(PaperRegion.of(m.plus(0, -r), m.plus(r, 0), m.plus(0, r), m.plus(-r, 0)), tone),
                    Text.centred(m, figure, style.with(Tone.WHITE)));
            case ONE -> List.of(Disc.of(m, 3.5 * size - 0.35, Tone.WHITE, Edge.of(Pen.EXTRA_WIDE, tone)),
                    Text.centred(m, figure, style));
            case MORE -> List.of(Disc.of(m, 3.5 * size - 0.125, Tone.WHITE, Edge.of(Pen.NARROW, tone)),
                    Disc.of(m, 3.5 * size - 0.9, Tone.WHITE, Edge.of(Pen.NARROW, tone)),
                    Text.centred(m, figure, style.with(rainlap.paper.Weight.MEDIUM)));
        };
    }
}
