package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.material.Layer;
import rainlap.paper.Area;
import rainlap.paper.Edge;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperRegion;
import rainlap.paper.SheetSize;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.wall.Stage;

/** The title block of ISO 7200 (read in secondary text), 180 wide, in the lower right corner of an A3 sheet. */
final class TitleBlockMarks {
    private static final String ID = "title-block";
    private static final double LEFT = 230;
    private static final double TOP = 253;
    private static final double INSET = 1.2;
    /** Width of the cell for the sheet's number. */
    private static final double NUMBER = 12;

    private final List<Mark> marks = new ArrayList<>();

    private TitleBlockMarks() {}

    /**
     * What the cells say that changes from sheet to sheet.
     *
     * @param scale as printed: {@code 1:20 (1:5)}
     */
    record Filling(Subject subject, TitleBlock title, SheetSize size, String scale, int sheet, int sheets) {}

    /**
     * What the drawing is of.
     *
     * @param type of the document
     * @param second beneath the name
     */
    record Subject(String name, String type, String second, String practice) {

        static Subject of(Evidence e) {
            return new Subject(e.elevation().name(), "Marked-up elevation", stage(e), e.practice().id());
        }

        private static String stage(Evidence e) {
            return e.stage() == Stage.WRAP ? "Wrap stage: hold point before cladding" : finished(e);
        }
    }

    static Group of(Filling f) {
        TitleBlockMarks block = new TitleBlockMarks();
        block.marks.add(Area.of(PaperRegion.of(PaperBox.ofSize(LEFT, TOP, 180, 34)), Tone.WHITE, Looks.OUTLINE));
        block.upper(f);
        block.middle(f);
        block.lower(f);
        return Group.of(ID, block.marks);
    }

    /** The mark itself, or, if it is a title block, the same with another number of the sheet, which is what it says last. */
    static Mark numbered(Mark mark, int sheet, int sheets) {
        if (!(mark instanceof Group g) || !g.id().equals(Optional.of(ID))) {
            return mark;
        }
        List<Mark> out = new ArrayList<>(g.marks());
        Text last = (Text) out.remove(out.size() - 1);
        out.add(new Text(last.at(), number(sheet, sheets), last.style()));
        return Group.of(ID, out);
    }

    /** With blanks where there is room for them. */
    private static String number(int sheet, int sheets) {
        String wide = sheet + " / " + sheets;
        return TextMetrics.width(wide, Looks.STRONG) <= NUMBER - 2 * INSET ? wide : sheet + "/" + sheets;
    }

    private void upper(Filling f) {
        PaperBox title = cell(48, 0, 84, 12.4, "Title");
        String name = f.subject().name();
        TextStyle large = TextStyle.of(5).bold();
        TextStyle style = TextMetrics.width(name, large) <= title.width() - 2 * INSET ? large : TextStyle.of(3.5).bold();
        value(title, name, style, 10.5);
        value(cell(0, 0, 48, 12.4, "Legal owner"), f.title().owner(), Looks.STRONG, 10.5);
        value(cell(132, 0, 48, 12.4, "Document type"), f.subject().type(), Looks.STRONG, 10.5);
    }

    private void middle(Filling f) {
        value(cell(0, 12.4, 26, 10.8, "Drawn up by"), f.title().creator(), Looks.STRONG, 8.9);
        value(cell(26, 12.4, 22, 10.8, "Date of issue"), f.title().date(), Looks.STRONG, 8.9);
        value(cell(48, 12.4, 84, 10.8, "Supplementary title"), f.subject().second(), TextStyle.of(3.5).medium(), 8.9);
        value(cell(132, 12.4, 26, 10.8, "Status"), f.title().status(), Looks.STRONG, 8.9);
        value(cell(158, 12.4, 22, 10.8, "Identification"), f.title().identification(), Looks.STRONG, 8.9);
    }

    /** Many a wall is drawn without its cladding; then the sheet must not claim it. */
    private static String finished(Evidence e) {
        return "Finished stage: " + (e.elevation().pieces().stream().anyMatch(p -> p.material().layer() != Layer.WRAP) ? "with cladding and trims"
                : "no cladding is drawn");
    }

    private void lower(Filling f) {
        cell(0, 23.2, 48, 10.8, "Approved by, date");
        value(cell(48, 23.2, 38, 10.8, "Practice"), f.subject().practice(), Looks.STRONG, 8.9);
        value(cell(86, 23.2, 24, 10.8, "Scale"), f.scale(), Looks.STRONG, 8.9);
        String hash = f.title().inputHash();
        value(cell(110, 23.2, 22, 10.8, "Input"), hash.substring(0, Math.min(8, hash.length())), Looks.STRONG, 8.9);
        value(cell(132, 23.2, 14, 10.8, "Size"), f.size().word(), Looks.STRONG, 8.9);
        value(cell(146, 23.2, 12, 10.8, "Rev."), f.title().revision(), Looks.STRONG, 8.9);
        value(cell(158, 23.2, 10, 10.8, "Lang."), "en", Looks.STRONG, 8.9);
        value(cell(168, 23.2, NUMBER, 10.8, "Sheet"), number(f.sheet(), f.sheets()), Looks.STRONG, 8.9);
    }

    private PaperBox cell(double x, double y, double width, double height, String heading) {
        PaperBox box = PaperBox.ofSize(LEFT + x, TOP + y, width, height);
        marks.add(Area.edged(PaperRegion.of(box), Edge.of(rainlap.paper.Pen.NARROW)));
        marks.add(Text.of(box.left() + INSET, box.top() + 3.6, heading, Looks.SECOND));
        return box;
    }

    private void value(PaperBox box, String text, TextStyle style, double drop) {
        if (!text.isBlank()) {
            marks.add(Text.of(box.left() + INSET, box.top() + drop, TextMetrics.shorten(text, box.width() - 2 * INSET, style), style));
        }
    }
}
