package rainlap.drawing;

import rainlap.paper.PaperBox;

/** Where things stand on the A3 sheet, printed mm from its upper left corner. */
final class Slots {
    static final PaperBox ELEVATION = new PaperBox(20.5, 10.5, 308, 189);
    static final PaperBox SECTIONS = new PaperBox(314, 13, 407, 188);
    static final PaperBox TABLE = new PaperBox(22, 191, 226, 282.6);
    static final PaperBox LEGEND = new PaperBox(230, 191, 408, 239);
    static final PaperBox NOTES = new PaperBox(230, 239, 408, 252.4);
    /** The wall with its folds, between levels and labels. */
    static final PaperBox WALL = new PaperBox(64, 28, 286, 181.4);
    /** Labels on the left stand right of the levels. */
    static final double LABELS_LEFT = 46.5;
    static final double LABELS_RIGHT = 308;
    static final double LABELS_TOP = 16.5;
    static final double LEVELS_LEFT = 22;
    static final double LEVELS_RIGHT = 44.5;
    static final double VIEW_TITLE = 188.2;

    private Slots() {}
}
