package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.rule.Finding;

/** What all sections share: letter, name, scale, marks, and the sentence on what is wrong. */
final class SectionCell {
    static final double HEAD = 13;
    /** From line to line of a title. */
    private static final double BETWEEN = 3.7;
    private static final int MOST_MARKS = 3;

    private SectionCell() {}

    /** Letter and title, marks on the right, the scale beneath. */
    static List<Mark> head(PaperBox cell, String letter, String name, String scale, List<WeakPoint> points) {
        return head(cell, letter, name, scale, points, cell.right());
    }

    /** @param beside where a picture begins beside the scale: a title that goes on over it stands higher */
    static List<Mark> head(PaperBox cell, String letter, String name, String scale, List<WeakPoint> points, double beside) {
        List<Mark> out = new ArrayList<>();
        double x = cell.left() + TextMetrics.width(letter, Looks.LARGE) + 2, right = marks(cell, x, name, points, out);
        out.add(Text.of(cell.left(), cell.top() + 6.6, letter, Looks.LARGE));
        List<String> lines = TextMetrics.wrap(name, right - x - 0.5, Looks.STRONG);
        if (lines.size() == 1) {
            out.add(Text.of(x, cell.top() + (x + TextMetrics.width(name, Looks.STRONG) > beside ? 4.6 : 6.6), name, Looks.STRONG));
        } else {
            out.add(Text.of(x, cell.top() + 3.4, lines.get(0), Looks.STRONG));
            out.add(Text.of(x, cell.top() + 7.1, TextMetrics.shorten(String.join(" ", lines.subList(1, lines.size())), right - x - 0.5,
                    Looks.STRONG), Looks.STRONG));
        }
        out.add(Text.of(cell.left(), cell.top() + 11.6, scale, Looks.SECOND));
        return out;
    }

    /** The same over two cuts, which have names of their own beneath it. */
    static List<Mark> pairHead(PaperBox cell, String letter, String name, String scale, List<WeakPoint> points) {
        List<Mark> out = new ArrayList<>();
        double x = cell.left() + TextMetrics.width(letter, Looks.LARGE) + 2, right = marks(cell, x, name, points, out);
        out.add(Text.of(cell.left(), cell.top() + 6.6, letter, Looks.LARGE));
        double y = cell.top() + 3.4;
        for (String line : TextMetrics.wrap(name, right - x - 0.5, Looks.STRONG)) {
            out.add(Text.of(x, y, line, Looks.STRONG));
            y += BETWEEN;
        }
        for (String line : TextMetrics.wrap(scale, right - x - 0.5, Looks.SECOND)) {
            out.add(Text.of(x, y, line, Looks.SECOND));
            y += BETWEEN;
        }
        return out;
    }

    /** Marks from the right, as many as leave room for the title; returns where they begin. */
    private static double marks(PaperBox cell, double x, String name, List<WeakPoint> points, List<Mark> out) {
        int shown = Math.min(MOST_MARKS, points.size());
        while (shown > 1 && TextMetrics.wrap(name, cell.right() - 7 * shown - x - 0.5, Looks.STRONG).size() > 2) {
            shown--;
        }
        double right = cell.right();
        for (int i = shown - 1; i >= 0; i--) {
            right -= 7;
            out.addAll(Severity.of(points.get(i).finding().defences()).smallMark(new PaperPoint(right + 3.5, cell.top() + 4.4), points.get(i).number()));
        }
        return right;
    }

    static String title(Finding f) {
        return Rules.find(f.rule()).map(r -> r.info().title()).orElse(f.rule().replace('-', ' '));
    }

    static List<Mark> text(List<String> lines, double x, double y) {
        List<Mark> out = new ArrayList<>();
        double pitch = Words.pitch(lines);
        for (int i = 0; i < lines.size(); i++) {
            out.addAll(Words.at(x, y + i * pitch, lines.get(i), Looks.PLAIN));
        }
        return out;
    }
}
