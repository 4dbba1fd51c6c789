package rainlap.drawing;

import java.util.Optional;
import rainlap.paper.PaperBox;

/** Where things stand on the A3 sheet, printed mm from its upper left corner. */
final class Slots {
    /** Clear of the centring mark on the right, which reaches 5 into the frame. */
    static final PaperBox SECTIONS = new PaperBox(312, 13, 404.5, 188);
    /** Room for one row of sections beside a picture. */
    private static final PaperBox BESIDE_PICTURE = new PaperBox(0, 20, 92.5, 98);
    private static final double PICTURE_GAP = 6;
    static final PaperBox TABLE = new PaperBox(22, 191, 226, 282.6);
    static final PaperBox NOTES = new PaperBox(230, 239, 408, 252.4);
    /** On a sheet of its own the table takes the whole width, and sections stand in four columns. */
    static final PaperBox FULL = new PaperBox(26, 14, 404, 249);
    static final double LEVELS_LEFT = 21;
    static final double LEVELS_RIGHT = 44.5;
    /** Labels on the left stand right of the levels. */
    static final double LABELS_LEFT = 46.5;

    private static final double BENEATH = 6;
    private static final double BENEATH_TITLE = 4;

    private Slots() {}

    /** The table on a sheet without an elevation: from beneath the sections there, if any, down to where it always ends; clear of the centring mark. */
    static PaperBox tableBeneath(Optional<Double> sections) {
        double top = Math.min(TABLE.top(), sections.map(s -> s + BENEATH).orElse(FULL.top()));
        return new PaperBox(FULL.left(), top, TABLE.right() + 2, TABLE.bottom());
    }

    /** The table beneath a view's title: no higher than it must be to hold all, so that it stands in line with the legend where it can. */
    static PaperBox table(double title, double height) {
        double highest = Math.min(TABLE.top(), title + BENEATH_TITLE);
        return new PaperBox(TABLE.left(), Math.max(highest, Math.min(TABLE.top(), TABLE.bottom() - height)), TABLE.right(), TABLE.bottom());
    }

    /** How the elevation shares the upper part of the sheet. */
    enum Layout {
        /** Sections beside it. */
        BESIDE(new PaperBox(20.5, 10.5, 308, 189), new PaperBox(68, 28, 283, 181.4)),
        /** The whole width, for long walls and for walls without weak points; sections go to the next sheet. */
        WIDE(new PaperBox(20.5, 10.5, 409.5, 189), new PaperBox(49.5, 28, 403, 181.4)),
        /** The whole sheet above the title block, for high walls; sections, table and legend go to the next sheet. */
        ALONE(new PaperBox(20.5, 10.5, 409.5, 250), new PaperBox(49.5, 28, 403, 242.4)),
        /** Part of no sheet: a small picture of a wall, its name beneath it left to the page that shows it. */
        PICTURE(new PaperBox(20.5, 10.5, 226, 152), new PaperBox(68, 28, 200, 144));

        private final PaperBox elevation;
        private final PaperBox wall;

        Layout(PaperBox elevation, PaperBox wall) {
            this.elevation = elevation;
            this.wall = wall;
        }

        /** All that belongs to the elevation stays in here. */
        PaperBox elevation() {
            return elevation;
        }

        /**
         * The column of sections beside it, if there is one.
         *
         * @param reached how far to the right the elevation and its labels reach
         */
        Optional<PaperBox> sections(double reached) {
            return switch (this) {
                case BESIDE -> Optional.of(SECTIONS);
                case PICTURE -> Optional.of(BESIDE_PICTURE.moved(reached + PICTURE_GAP, 0));
                case WIDE, ALONE -> Optional.empty();
            };
        }

        /** The lowest that the view's title may stand. */
        double title() {
            return elevation.bottom() - 0.8;
        }

        /** The wall with its folds, its ground and its dimensions. */
        PaperBox wall() {
            return wall;
        }
    }
}
