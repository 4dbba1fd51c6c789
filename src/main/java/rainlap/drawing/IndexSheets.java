package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rainlap.check.WeakPoint;
import rainlap.check.WorstFirst;
import rainlap.paper.Frame;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Sheet;
import rainlap.paper.SheetSize;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.rule.Evidence;
import rainlap.wall.Stage;

/** The index of several elevations on A3 that lies or A4 that stands: each wall small, worst first, with what is weak on it and where its sheets are. */
final class IndexSheets {
    /** How a sheet is laid out: room for the walls clear of the centring marks at the sides, at most so many of them, what the marks mean. */
    private record Form(SheetSize size, PaperBox room, int most, double key, double notes, double notesWidth) {
        private static final Form A3 = new Form(SheetSize.A3, new PaperBox(29, 27, 401, 247), 12, 257, 110, 112);
        /** The title block takes all of the width, so the key stands above it. */
        private static final Form A4 = new Form(SheetSize.A4, new PaperBox(29, 28, 191, 212), 6, 220, 88, 103);

        static Form of(Sheets.Paper paper) {
            return paper == Sheets.Paper.A3 ? A3 : A4;
        }

        int columns(int walls) {
            return size == SheetSize.A4 ? walls <= 2 ? 1 : 2 : walls <= 3 ? walls : walls == 4 ? 2 : walls <= 9 ? 3 : 4;
        }
    }

    private static final double GAP = 6;
    private static final double TALLY_GAP = 4;

    private final Form form;
    private final String name;
    private final TitleBlock title;
    private final List<Entry> entries;
    private final int all;

    /** @param first the number of its first sheet */
    record Entry(SheetSet.Wall wall, int first) {}

    /** @param all how many sheets the set has */
    IndexSheets(Sheets.Paper paper, String name, TitleBlock title, List<Entry> entries, int all) {
        this.form = Form.of(paper);
        this.name = name;
        this.title = title;
        this.entries = new ArrayList<>(entries);
        this.entries.sort(Comparator.comparing(e -> e.wall().result(), WorstFirst.ORDER));
        this.all = all;
    }

    static int count(Sheets.Paper paper, int walls) {
        int most = Form.of(paper).most;
        return (walls + most - 1) / most;
    }

    List<Sheet> sheets() {
        List<Sheet> out = new ArrayList<>();
        for (int from = 0; from < entries.size(); from += form.most) {
            out.add(sheet(entries.subList(from, Math.min(entries.size(), from + form.most)), out.size() + 1));
        }
        return out;
    }

    private Sheet sheet(List<Entry> shown, int number) {
        PaperBox room = form.room;
        int most = Math.min(form.most, entries.size()), columns = form.columns(most), rows = (most + columns - 1) / columns;
        double width = (room.width() - (columns - 1) * GAP) / columns, height = (room.height() - (rows - 1) * GAP) / rows;
        List<IndexCell> cells = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            cells.add(new IndexCell(shown.get(i), PaperBox.ofSize(room.left() + i % columns * (width + GAP), room.top() + i / columns * (height + GAP), width, height)));
        }
        List<Mark> marks = new ArrayList<>(List.of(Frame.of(form.size), heading(number)));
        for (int i = 0; i < cells.size(); i++) {
            marks.add(cells.get(i).marks("wall-" + (i + 1)));
        }
        marks.add(key());
        marks.add(new Slots(form.size).inCorner(TitleBlockMarks.of(new TitleBlockMarks.Filling(subject(), title, form.size, "as stated", number, all))));
        return new Sheet(form.size, name + ": index of elevations", "en", marks);
    }

    private Group heading(int number) {
        List<WeakPoint> points = entries.stream().flatMap(e -> e.wall().result().weakPoints().stream()).toList();
        String part = entries.size() <= form.most ? "" : ", part " + number;
        String after = ": index, worst first" + part, tally = Tally.counted(points);
        boolean beside = form.size == SheetSize.A3;
        double room = form.room.width() - TextMetrics.width(after, Looks.LARGE) - (beside ? TALLY_GAP + TextMetrics.width(tally, Looks.SECOND) : 0);
        String large = TextMetrics.shorten(name, room, Looks.LARGE) + after;
        Text heading = Text.of(form.room.left(), 20.5, large, Looks.LARGE);
        PaperPoint second = beside ? heading.at().plus(TextMetrics.width(large, Looks.LARGE) + TALLY_GAP, 0) : heading.at().plus(0, 4);
        double rule = beside ? 23.5 : 26;
        return Group.of("index", List.of(heading, Text.of(second.x(), second.y(), tally, Looks.SECOND),
                Polyline.line(form.room.left(), rule, form.room.right(), rule, Looks.WIDE)));
    }

    /** What the marks mean and how the walls are ranked, left of the title block or above it. */
    private Group key() {
        double x = form.room.left(), y = form.key;
        List<Mark> out = new ArrayList<>(List.of(Text.of(x, y, "Defences of a weak point", Looks.TITLE)));
        for (Severity s : Severity.values()) {
            double at = y + 6.5 + s.ordinal() * 8;
            out.addAll(s.smallMark(new PaperPoint(x + 4, at), s.ordinal()));
            out.add(Text.of(x + 10, at + 1.2, s.inWords(), Looks.PLAIN));
        }
        List<String> notes = TextMetrics.wrap("Walls stand by the fewest defences, then by how many weak points have as few; weak points of a wall by defences, then by litres an hour. A stretch or area that stands without a number has no room for it here: the wall's own sheets number them all. Numbers are those"
                + " of the sheets. What could not be checked is no weak point and is counted beside them. This sheet advises, it certifies nothing: local code"
                + " and licensed people decide.", form.notesWidth, Looks.PLAIN);
        for (int i = 0; i < notes.size(); i++) {
            out.add(Text.of(form.notes, y + i * Looks.LINE, notes.get(i), Looks.PLAIN));
        }
        return Group.of("key", out);
    }

    /** What is the same for all of them. */
    private static String only(Stream<String> words) {
        List<String> distinct = words.distinct().toList();
        return distinct.size() == 1 ? distinct.get(0) : "see each sheet";
    }

    private TitleBlockMarks.Subject subject() {
        List<Evidence> each = entries.stream().map(e -> e.wall().result().evidence()).toList();
        String practice = only(each.stream().map(e -> e.practice().id()));
        String stage = only(each.stream().map(e -> (e.stage() == Stage.WRAP ? "Wrap" : "Finished") + " stage"));
        return new TitleBlockMarks.Subject(name, "Index of elevations", stage, practice);
    }
}
