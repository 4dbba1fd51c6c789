package rainlap.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;

/** Running text from its start, with a little room between a closing and an opening bracket, which would else touch. */
final class Words {
    private static final double BRACKETS = 0.4;

    private Words() {}

    /** From line to line: more where letters with accents, or of another typeface, are taller. */
    static double pitch(Collection<String> lines) {
        double up = 0, down = 0;
        for (String line : lines) {
            PaperBox ink = Text.of(0, 0, line, Looks.STRONG).box();
            up = Math.max(up, -ink.top());
            down = Math.max(down, ink.bottom());
        }
        return Math.max(Looks.LINE, up + down + 0.1);
    }

    static List<Mark> at(double x, double y, String text, TextStyle style) {
        List<Mark> out = new ArrayList<>();
        double left = x;
        String rest = text;
        for (int cut = rest.indexOf(")("); cut >= 0; cut = rest.indexOf(")(")) {
            String part = rest.substring(0, cut + 1);
            out.add(Text.of(left, y, part, style));
            left += TextMetrics.width(part, style) + BRACKETS;
            rest = rest.substring(cut + 1);
        }
        out.add(Text.of(left, y, rest, style));
        return out;
    }
}
