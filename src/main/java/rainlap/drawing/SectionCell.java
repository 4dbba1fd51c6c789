package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        out.add(Text.of(x, cell.top() + 3.4, TextMetrics.shorten(name, right - x - 0.5, Looks.STRONG), Looks.STRONG));
        out.add(Text.of(x, cell.top() + 7.1, scale, Looks.SECOND));
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

    /** The first sentence of what a finding says, broken to a width; at most so many lines, of a longer one the clauses that fit. */
    static List<String> sentence(Finding f, double width, int most) {
        String says = f.says();
        int stop = says.indexOf(". ");
        List<String> lines = TextMetrics.wrap(says, width, Looks.PLAIN);
        if (lines.size() > most && stop > 0) {
            lines = TextMetrics.wrap(says.substring(0, stop + 1), width, Looks.PLAIN);
        }
        for (int end = clause(says, says.length()); lines.size() > most && end > 0; end = clause(says, end)) {
            lines = TextMetrics.wrap(says.substring(0, end) + ".", width, Looks.PLAIN);
        }
        if (lines.size() > most && most == 1) {
            return List.of(TextMetrics.shorten(lines.get(0) + " " + lines.get(1), width, Looks.PLAIN));
        }
        if (lines.size() > most) {
            List<String> cut = new ArrayList<>(lines.subList(0, most - 1));
            cut.add(TextMetrics.shorten(lines.get(most - 1) + " " + lines.get(most), width, Looks.PLAIN));
            return cut;
        }
        return lines;
    }

    /**
     * What a finding says as far as notes leave room, and the notes; of notes without room the end is cut off.
     *
     * @param spare a note that is left out first
     */
    static List<String> told(Finding f, List<String> notes, Optional<String> spare, double width, int most) {
        List<String> lines = notes.stream().flatMap(n -> TextMetrics.wrap(n, width, Looks.PLAIN).stream()).toList();
        List<String> first = spare.map(n -> TextMetrics.wrap(n, width, Looks.PLAIN)).filter(n -> n.size() + lines.size() < most).orElse(List.of());
        int left = most - first.size() - lines.size();
        List<String> out = new ArrayList<>(left > 0 ? sentence(f, width, left) : List.of());
        out.addAll(first);
        out.addAll(lines.subList(0, Math.min(lines.size(), most)));
        if (lines.size() > most) {
            out.set(most - 1, TextMetrics.shorten(lines.get(most - 1) + " " + lines.get(most), width, Looks.PLAIN));
        }
        return out;
    }

    /** Where the last clause before a place begins; -1 where there is none. A place in figures, {@code +320, x 1800}, is no clause. */
    private static int clause(String says, int before) {
        int end = Math.max(says.lastIndexOf(": ", before - 1), says.lastIndexOf("; ", before - 1)), comma = says.lastIndexOf(", ", before - 1);
        while (comma > 0 && says.startsWith(", x ", comma)) {
            comma = says.lastIndexOf(", ", comma - 1);
        }
        return Math.max(end, comma);
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
