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

/** The index of several elevations on A3: each wall small, worst first, with what is weak on it and where its sheets are. */
final class IndexSheets {
    /** More on one sheet would be too small to see. */
    private static final int MOST = 12;
    /** Clear of the centring marks at the sides. */
    private static final PaperBox ROOM = new PaperBox(29, 27, 401, 247);
    private static final double GAP = 6;
    private static final double TALLY_GAP = 4;

    private final String name;
    private final TitleBlock title;
    private final List<Entry> entries;
    private final int all;

    /** @param first the number of its first sheet */
    record Entry(SheetSet.Wall wall, int first) {}

    /** @param all how many sheets the set has */
    IndexSheets(String name, TitleBlock title, List<Entry> entries, int all) {
        this.name = name;
        this.title = title;
        this.entries = new ArrayList<>(entries);
        this.entries.sort(Comparator.comparing(e -> e.wall().result(), WorstFirst.ORDER));
        this.all = all;
    }

    static int count(int walls) {
        return (walls + MOST - 1) / MOST;
    }

    List<Sheet> sheets() {
        List<Sheet> out = new ArrayList<>();
        for (int from = 0; from < entries.size(); from += MOST) {
            out.add(sheet(entries.subList(from, Math.min(entries.size(), from + MOST)), out.size() + 1));
        }
        return out;
    }

    private Sheet sheet(List<Entry> shown, int number) {
        int columns = columns(Math.min(MOST, entries.size())), rows = (Math.min(MOST, entries.size()) + columns - 1) / columns;
        double width = (ROOM.width() - (columns - 1) * GAP) / columns, height = (ROOM.height() - (rows - 1) * GAP) / rows;
        List<IndexCell> cells = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            cells.add(new IndexCell(shown.get(i), PaperBox.ofSize(ROOM.left() + i % columns * (width + GAP), ROOM.top() + i / columns * (height + GAP), width, height)));
        }
        List<Mark> marks = new ArrayList<>(List.of(Frame.of(SheetSize.A3), heading(number)));
        for (int i = 0; i < cells.size(); i++) {
            marks.add(cells.get(i).marks("wall-" + (i + 1)));
        }
        marks.add(key());
        marks.add(TitleBlockMarks.of(new TitleBlockMarks.Filling(subject(), title, SheetSize.A3, "as stated", number, all)));
        return new Sheet(SheetSize.A3, name + ": index of elevations", "en", marks);
    }

    private static int columns(int walls) {
        return walls <= 3 ? walls : walls == 4 ? 2 : walls <= 9 ? 3 : 4;
    }

    private Group heading(int number) {
        List<WeakPoint> points = entries.stream().flatMap(e -> e.wall().result().weakPoints().stream()).toList();
        String part = count(entries.size()) == 1 ? "" : ", part " + number;
        String after = ": index, worst first" + part, tally = Tally.counted(points);
        double room = ROOM.width() - TextMetrics.width(after, Looks.LARGE) - TALLY_GAP - TextMetrics.width(tally, Looks.SECOND);
        String large = TextMetrics.shorten(name, room, Looks.LARGE) + after;
        return Group.of("index", List.of(Text.of(ROOM.left(), 20.5, large, Looks.LARGE),
                Text.of(ROOM.left() + TextMetrics.width(large, Looks.LARGE) + TALLY_GAP, 20.5, tally, Looks.SECOND),
                Polyline.line(ROOM.left(), 23.5, ROOM.right(), 23.5, Looks.WIDE)));
    }

    /** What the marks mean, left of the title block. */
    private static Group key() {
        double x = ROOM.left(), y = 257;
        List<Mark> out = new ArrayList<>(List.of(Text.of(x, y, "Defences of a weak point", Looks.TITLE)));
        for (Severity s : Severity.values()) {
            double at = y + 6.5 + s.ordinal() * 8;
            out.addAll(s.smallMark(new PaperPoint(x + 4, at), s.ordinal() + 1));
            out.add(Text.of(x + 10, at + 1.2, s.inWords(), Looks.PLAIN));
        }
        List<String> notes = TextMetrics.wrap("A stretch or area that stands without a number has no room for it here: the wall's own sheets number them all. Numbers are those"
                + " of the sheets. What could not be checked is no weak point and is counted beside them. This sheet advises, it certifies nothing: local code"
                + " and licensed people decide.", 112, Looks.PLAIN);
        for (int i = 0; i < notes.size(); i++) {
            out.add(Text.of(110, y + i * Looks.LINE, notes.get(i), Looks.PLAIN));
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
