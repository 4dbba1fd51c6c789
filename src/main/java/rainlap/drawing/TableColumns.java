package rainlap.drawing;

import java.util.List;
import rainlap.paper.PaperBox;

/** The columns of the table of weak points: rule with pieces and place, drawn, asked, litres an hour, source, remedy; the mark stands before them. */
final class TableColumns {
    static final List<String> HEADINGS = List.of("Rule, pieces, place", "Drawn", "Asked", "l/h", "Source", "Remedy");
    /** Its figures end at its right-hand edge. */
    static final int LITRES = 3;
    private static final double[] SHARES = {0.216, 0.108, 0.098, 0.042, 0.206, 0.33};
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

    /** Where text begins; figures of litres, where they end. */
    double at(int column) {
        return x(column) + (column == LITRES ? width(column) : 0);
    }

    /** Room for text. */
    double width(int column) {
        return SHARES[column] * (box.width() - MARK) - (column == SHARES.length - 1 ? 0 : GAP);
    }
}
