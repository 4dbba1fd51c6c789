package rainlap.drawing;

import java.util.List;
import rainlap.paper.PaperBox;

/** The columns of the table of weak points: rule with pieces and place, drawn, asked, source, remedy; the mark stands before them. */
final class TableColumns {
    static final List<String> HEADINGS = List.of("Rule, pieces, place", "Drawn", "Asked", "Source", "Remedy");
    private static final double[] SHARES = {0.217, 0.095, 0.1, 0.238, 0.35};
    private static final double MARK = 10;
    private static final double GAP = 2;
    private final PaperBox box;

    TableColumns(PaperBox box) {
        this.box = box;
    }

    PaperBox box() {
        return box;
    }

    double markX() {
        return box.left() + 4.2;
    }

    double x(int column) {
        double x = box.left() + MARK;
        for (int i = 0; i < column; i++) {
            x += SHARES[i] * (box.width() - MARK);
        }
        return x;
    }

    /** Room for text. */
    double width(int column) {
        return SHARES[column] * (box.width() - MARK) - (column == SHARES.length - 1 ? 0 : GAP);
    }
}
