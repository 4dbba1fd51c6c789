package rainlap.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rainlap.check.CheckResult;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;
import rainlap.rule.Finding;
import rainlap.wall.Elevation;
import rainlap.wall.Outline;

/** One wall on the index: its name and where its sheets are, how many weak points and which is the worst, and beneath it the wall itself. */
final class IndexCell {
    /** What stands above the wall; with the tallest letters the place of the sheets, which have their numbers, has no room left there. */
    private static final double WORDS = 25;
    private static final double FIRST_LINE = 9.2;
    /** Round the wall: half a mark, and the ground beneath it. */
    private static final double MARGIN = 4;
    private static final double MARK = 7.4;
    private static final int WORST_LINES = 2;
    /** After ISO 5455, and beyond it for what is very long. */
    private static final int[] SCALES = {10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000};

    private final SheetSet.Wall wall;
    private final int first;
    private final CheckResult result;
    private final PaperBox box;

    IndexCell(IndexSheets.Entry entry, PaperBox box) {
        this.wall = entry.wall();
        this.first = entry.first();
        this.result = wall.result();
        this.box = box;
    }

    /** The outline, the ground and every weak place. */
    private Box shown() {
        Outline o = result.evidence().elevation().outline();
        Box outline = o.ground().isEmpty() ? o.box() : o.box().join(new Box(o.box().minX(), o.ground().getAsLong(), o.box().maxX(), o.ground().getAsLong()));
        return result.weakPoints().stream().map(w -> w.finding().where().box()).reduce(outline, Box::join);
    }

    private PaperBox room() {
        return new PaperBox(box.left() + MARGIN, box.top() + WORDS + lower() + MARGIN, box.right() - MARGIN, box.bottom() - MARGIN);
    }

    /** The largest at which the wall fits. */
    private int scale() {
        return Arrays.stream(SCALES).filter(this::fits).findFirst().orElse(SCALES[SCALES.length - 1]);
    }

    private boolean fits(int scale) {
        View view = new View(scale, 0, 0);
        return view.length(shown().width()) <= room().width() && view.length(shown().height()) <= room().height();
    }

    Group marks(String id) {
        int scale = scale();
        List<Mark> out = new ArrayList<>(words(scale));
        PaperBox room = room();
        View flat = new View(scale, 0, 0);
        double x = room.middle().x() - flat.length((shown().minX() + shown().maxX()) / 2.0), y = room.middle().y() + flat.length((shown().minY() + shown().maxY()) / 2.0);
        out.addAll(drawn(new View(scale, x, y)));
        out.add(Polyline.line(box.left(), box.bottom(), box.right(), box.bottom(), Looks.RULE));
        return Group.of(id, out);
    }

    private List<Mark> words(int scale) {
        List<Mark> out = new ArrayList<>();
        String sheets = "1:" + scale + ", " + sheets();
        out.add(Text.of(box.left(), box.top() + 4.5, TextMetrics.shorten(wall.name(), box.width(), Looks.TITLE), Looks.TITLE));
        out.add(lower() == 0 ? Text.of(box.right(), box.top() + 4.5, sheets, Looks.STRONG.end()) : Text.of(box.left(), box.top() + FIRST_LINE, sheets, Looks.STRONG));
        List<Line> lines = new ArrayList<>(lines(Tally.counted(result.weakPoints()) + notChecked(), Looks.STRONG, WORST_LINES));
        result.weakPoints().stream().findFirst().ifPresent(worst -> lines.addAll(lines(worst(worst), Looks.PLAIN, WORST_LINES)));
        lines.addAll(lines(wall.place(), Looks.SECOND, 1));
        double pitch = Words.pitch(lines.stream().map(Line::text).toList());
        for (int i = 0; i < lines.size(); i++) {
            double y = FIRST_LINE + lower() + i * pitch;
            if (y <= WORDS + lower()) {
                out.add(Text.of(box.left(), box.top() + y, lines.get(i).text(), lines.get(i).style()));
            }
        }
        return out;
    }

    /** How much lower all stands beneath a name that takes the whole width, so that where its sheets are stands on a line of its own. */
    private double lower() {
        double beside = TextMetrics.width("1:10000, " + sheets(), Looks.STRONG) + 3;
        return TextMetrics.width(wall.name(), Looks.TITLE) > box.width() - beside ? Looks.LINE : 0;
    }

    private record Line(String text, TextStyle style) {}

    /** Lines of text, the last one cut short if need be. */
    private List<Line> lines(String text, TextStyle style, int most) {
        List<String> lines = new ArrayList<>(TextMetrics.wrap(text, box.width(), style));
        if (lines.size() > most) {
            String rest = String.join(" ", lines.subList(most - 1, lines.size()));
            lines = new ArrayList<>(lines.subList(0, most - 1));
            lines.add(TextMetrics.shorten(rest, box.width(), style));
        }
        return lines.stream().map(l -> new Line(l, style)).toList();
    }

    private String sheets() {
        int last = first + wall.sheets().size() - 1;
        return last == first ? "sheet " + first : "sheets " + first + " to " + last;
    }

    private String notChecked() {
        int n = result.unchecked().size(), failed = result.crashes().size();
        return "; not checked: " + n + (failed == 0 ? "" : "; rules that FAILED: " + failed);
    }

    private static String worst(WeakPoint p) {
        Finding f = p.finding();
        String title = Rules.find(f.rule()).map(r -> r.info().title()).orElse(f.rule());
        String asked = f.drawn().isBlank() || f.asked().isBlank() ? "" : "; drawn: " + f.drawn() + ", asked: " + f.asked();
        return "Worst, " + p.number() + ": " + title + (f.pieces().isEmpty() ? "" : ", " + String.join(", ", f.pieces())) + ", at " + f.where().inWords() + asked;
    }

    private List<Mark> drawn(View view) {
        Elevation e = result.evidence().elevation();
        PaperBox extent = view.box(shown());
        List<Mark> out = new ArrayList<>();
        Region outline = e.outline().region();
        out.add(Area.of(view.region(outline), Looks.MEMBRANE, Looks.WIDE));
        e.openings().forEach(o -> out.add(Area.of(view.region(Region.of(o.rect())), Tone.WHITE, Looks.MEDIUM)));
        e.penetrations().forEach(p -> out.add(Area.of(view.region(p.region()), Tone.WHITE, Looks.NARROW)));
        e.outline().ground().ifPresent(g -> out.add(Polyline.line(extent.left() - 3, view.y(g), extent.right() + 3, view.y(g), Looks.WIDE)));
        e.outline().abutting().forEach(a -> out.add(Polyline.line(view.at(a.line().a()).x(), view.at(a.line().a()).y(), view.at(a.line().b()).x(),
                view.at(a.line().b()).y(), Looks.WIDE)));
        List<WeakPlaces.Drawn> places = new WeakPlaces(view, extent).draw(result.weakPoints(), new Occupied());
        places.forEach(p -> out.addAll(p.marks()));
        out.addAll(numbers(places));
        return out;
    }

    /** A number on each place, the worst first, while there is room for it. */
    private List<Mark> numbers(List<WeakPlaces.Drawn> places) {
        Occupied taken = new Occupied();
        List<Mark> out = new ArrayList<>();
        for (WeakPlaces.Drawn p : places) {
            Optional<PaperPoint> at = p.sites().stream().filter(s -> taken.isFree(PaperBox.around(s, MARK, MARK))).findFirst();
            at.ifPresent(m -> {
                taken.add(PaperBox.around(m, MARK, MARK));
                out.addAll(Severity.of(p.point().finding().defences()).smallMark(m, p.point().number()));
            });
        }
        return out;
    }
}
