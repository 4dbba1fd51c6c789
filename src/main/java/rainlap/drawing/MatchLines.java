package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;

/** The lines at which sheets with bays of one wall meet, each with the bay that goes on there. */
final class MatchLines {
    /** How far they stand out over and under the wall, printed mm. */
    private static final double OUT = 2.6;
    private static final double GAP = 0.8;
    private static final TextStyle STYLE = Looks.STRONG;

    private final Bay bay;
    private final View view;
    private final PaperBox drawn;

    MatchLines(Bay bay, View view, PaperBox drawn) {
        this.bay = bay;
        this.view = view;
        this.drawn = drawn;
    }

    /** Keeps their places free of names. */
    void take(Occupied taken) {
        bay.matches().forEach(m -> taken.add(line(m)));
    }

    private Polyline line(Bay.Match m) {
        double x = view.x(m.x());
        return Polyline.line(x, drawn.top() - OUT, x, drawn.bottom() + OUT, Looks.MATCH);
    }

    /** The lines, and beside each what goes on there where that has room: under the wall, over it, on the overall dimension, beyond the cut, or along the line. */
    Group marks(Room room) {
        List<Mark> out = new ArrayList<>();
        for (Bay.Match m : bay.matches()) {
            out.add(line(m));
            room.first(candidates(m)).ifPresent(t -> out.addAll(Symbols.haloed(t, Tone.WHITE)));
        }
        return Group.of("match-lines", out);
    }

    private List<Text> candidates(Bay.Match m) {
        String words = "match line, bay " + m.bay();
        double x = view.x(m.x()), half = Text.of(0, 0, words, STYLE).width() / 2, high = STYLE.capHeight() / 2;
        boolean atRight = x > drawn.middle().x();
        double inwards = atRight ? x - half - GAP : x + half + GAP, beyond = atRight ? drawn.right() + high + GAP : drawn.left() - high - GAP;
        List<Text> out = new ArrayList<>();
        for (double y : new double[] {drawn.bottom() + GAP + high, drawn.bottom() + 2 * GAP + 3 * high, drawn.top() - GAP - high, bay.placing().overall() - GAP - high}) {
            out.add(Text.centred(new PaperPoint(inwards, y), words, STYLE));
        }
        for (double at : new double[] {beyond, atRight ? x - high - GAP : x + high + GAP}) {
            for (int k = 1; k < 20; k++) {
                out.add(Text.centred(new PaperPoint(at, drawn.bottom() - drawn.height() * k / 20), words, STYLE.rotated(-90)));
            }
        }
        return out;
    }
}
