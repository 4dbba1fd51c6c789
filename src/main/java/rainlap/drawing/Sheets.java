package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.check.CheckResult;
import rainlap.paper.Frame;
import rainlap.paper.Mark;
import rainlap.paper.Sheet;
import rainlap.paper.SheetSize;

/** The marked-up elevation of a check, on as many A3 sheets as its findings need. */
public final class Sheets {
    private Sheets() {}

    /**
     * The sheets in order.
     *
     * @throws TooLarge when the wall does not fit an A3 sheet at 1:100
     */
    public static List<Sheet> of(CheckResult result, TitleBlock title) {
        Extents extents = Extents.of(result.evidence().stack());
        Placing placing = Placing.of(extents).orElseThrow(() -> new TooLarge(extents));
        List<Mark> marks = new ArrayList<>();
        marks.add(Frame.of(SheetSize.A3));
        marks.add(new ElevationView(result.evidence(), extents, placing).marks());
        marks.add(TitleBlockMarks.of(new TitleBlockMarks.Filling(result.evidence(), title, "1:" + placing.view().scale(), 1, 1)));
        return List.of(new Sheet(SheetSize.A3, result.evidence().elevation().name() + ": marked-up elevation", "en", marks));
    }

    /** The wall does not fit the largest sheet at the smallest scale. */
    public static final class TooLarge extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        TooLarge(Extents extents) {
            super("a wall of " + extents.sheets().width() / 100 + " x " + extents.sheets().height() / 100
                    + " mm with its folds does not fit an A3 sheet at 1:100; give it as several elevations");
        }
    }
}
