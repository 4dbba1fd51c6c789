package rainlap.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.SheetSize;

/** Where things stand on a sheet, printed mm from its upper left corner. What stands in the lower right corner is placed as on A3 and moved with the corner. */
record Slots(SheetSize size) {
    /** Clear of the centring mark on the right, which reaches 5 into the frame. */
    static final PaperBox SECTIONS = new PaperBox(312, 13, 404.5, 188);
    /** Room for one section beside a picture, as drawn and as it should be. */
    private static final PaperBox BESIDE_PICTURE = new PaperBox(0, 20, 92.5, 124);
    private static final double PICTURE_GAP = 6;
    static final PaperBox TABLE = new PaperBox(22, 191, 226, 282.6);
    static final PaperBox NOTES = new PaperBox(230, 239, 408, 252.4);
    static final double LEVELS_LEFT = 21;
    static final double LEVELS_RIGHT = 44.5;
    /** Labels on the left stand right of the levels. */
    static final double LABELS_LEFT = 46.5;

    private static final double BENEATH = 6;
    private static final double BENEATH_TITLE = 4;

    /** The least width of a column of sections. */
    static final double COLUMN = 82;
    private static final double COLUMN_GAP = 4;
    private static final double CLOSE_GAP = 3;
    /** The legend keeps clear of the frame where it reaches from side to side. */
    private static final double INSET = 1.2;
    private static final double SECTIONS_FOOT = 188;
    private static final double LEAST_TABLE = 45;

    /** How far the lower right corner lies from that of the A3 sheet. */
    private double dx() {
        return size.width() - SheetSize.A3.width();
    }

    private double dy() {
        return size.height() - SheetSize.A3.height();
    }

    /** What is drawn for the lower right corner of an A3 sheet, in this sheet's. */
    Mark inCorner(Mark drawn) {
        return isWide() ? drawn : drawn.moved(dx(), dy());
    }

    /** Legend, notes and key plan, which stand on the title block. */
    Mark onTitleBlock(Mark drawn) {
        return isWide() ? drawn : drawn.moved(dx() + INSET, dy());
    }

    /** Whether table, legend and title block stand side by side. */
    boolean isWide() {
        return size == SheetSize.A3;
    }

    /** Above the title block the whole width: for the table on a sheet of its own, and for sections. */
    PaperBox full() {
        return new PaperBox(26, 14, 404 + dx(), 249 + dy());
    }

    /** How far down sections may reach on a sheet of their own: short of the legend, or of the title block where that is not there. */
    List<Double> feet() {
        return List.of(SECTIONS_FOOT + dy(), full().bottom());
    }

    /** As many columns of sections as fit. */
    List<PaperBox> sections(double heading, double foot) {
        PaperBox full = full();
        double gap = isWide() ? COLUMN_GAP : CLOSE_GAP;
        int columns = (int) ((full.width() + gap) / (COLUMN + gap));
        double width = (full.width() - (columns - 1) * gap) / columns;
        return IntStream.range(0, columns).mapToDouble(i -> full.left() + i * (width + gap))
                .mapToObj(left -> new PaperBox(left, full.top() + heading, left + width, foot)).toList();
    }

    /**
     * The table on a sheet without an elevation: from beneath the sections there, if any, down to where it always ends, clear of the centring mark; beside the legend
     * where the sheet is wide, and then on above legend or title block, else above it. Nowhere, if little room is left.
     */
    List<PaperBox> tableBeneath(Optional<Double> sections, boolean withKey) {
        double top = sections.map(s -> s + BENEATH).orElse(full().top());
        if (isWide()) {
            double begin = Math.min(TABLE.bottom(), top - BENEATH > SECTIONS_FOOT ? top : Math.min(TABLE.top(), top));
            PaperBox first = new PaperBox(full().left(), begin, TABLE.right() + 2, TABLE.bottom());
            PaperBox second = new PaperBox(NOTES.left() + 2, begin, full().right(), Math.max(begin, withKey ? TABLE.top() - 2 : full().bottom()));
            return Stream.of(first, second).filter(b -> b.height() >= LEAST_TABLE).toList();
        }
        PaperBox all = beneath(top - BENEATH, withKey);
        return all.height() < LEAST_TABLE ? List.of() : List.of(all);
    }

    /** All that sections leave free beneath them on a narrow sheet. */
    PaperBox beneath(double sections, boolean withKey) {
        double bottom = withKey ? TABLE.top() - BENEATH + dy() : full().bottom(), top = Math.min(bottom, sections + BENEATH);
        return new PaperBox(full().left(), top, full().right(), bottom);
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
        ALONE(new PaperBox(20.5, 10.5, 409.5, 250), new PaperBox(49.5, 26, 403, 242.4)),
        /** Above the legend of an A3 sheet that stands. */
        UPRIGHT(SheetSize.A3_UPRIGHT, 312),
        /** The whole of it. */
        UPRIGHT_ALONE(SheetSize.A3_UPRIGHT, 373),
        /** Above the legend of an A4 sheet. */
        A4(SheetSize.A4, 189),
        /** The whole of it. */
        A4_ALONE(SheetSize.A4, 250),
        /** The whole of an A4 sheet that lies; the legend goes to the next. */
        A4_LYING(SheetSize.A4_LYING, 163),
        /** Part of no sheet: a small picture of a wall, its name beneath it left to the page that shows it. */
        PICTURE(new PaperBox(20.5, 10.5, 226, 152), new PaperBox(68, 28, 200, 144));

        private final SheetSize size;
        private final PaperBox elevation;
        private final PaperBox wall;

        Layout(SheetSize size, double bottom) {
            this.size = size;
            this.elevation = new PaperBox(20.5, 10.5, size.width() - 10.5, bottom);
            this.wall = new PaperBox(49.5, 28, size.width() - 17, bottom - 7.6 - (isNarrow() ? ViewTitle.BAR_BENEATH : 0));
        }

        Layout(PaperBox elevation, PaperBox wall) {
            this.size = SheetSize.A3;
            this.elevation = elevation;
            this.wall = wall;
        }

        SheetSize size() {
            return size;
        }

        /** Whether the view's title and its scale bar stand one above the other. */
        boolean isNarrow() {
            return elevation.width() < ViewTitle.WIDTH;
        }

        /** Whether legend and table go to other sheets. */
        boolean isAlone() {
            return this == ALONE || this == UPRIGHT_ALONE || this == A4_ALONE || this == A4_LYING;
        }

        /** Those of a sheet of one size: of two that draw alike the first is taken. */
        static List<Layout> of(SheetSize size) {
            return switch (size) {
                case A3 -> List.of(WIDE, ALONE);
                case A3_UPRIGHT -> List.of(UPRIGHT, UPRIGHT_ALONE);
                case A4 -> List.of(A4, A4_ALONE);
                case A4_LYING -> List.of(A4_LYING);
            };
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
                default -> Optional.empty();
            };
        }

        /** The lowest that the view's title may stand. */
        double title() {
            return elevation.bottom() - 0.8 - (isNarrow() ? ViewTitle.BAR_BENEATH : 0);
        }

        /** The wall with its folds, its ground and its dimensions. */
        PaperBox wall() {
            return wall;
        }
    }
}
