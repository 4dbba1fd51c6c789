package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.measure.LitresText;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperPoint;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.source.Source;

/** One weak point in the table: every text whole, broken to its column. */
final class FindingRow {
    private static final double ABOVE = 4.3;
    private static final double BELOW = 2.1;
    private static final double LEAST = 10.3;
    private static final double SPACE = 1.4;
    /** Longest a single piece's name may get before it is cut short. */
    private static final double LONGEST_NAME = 22;
    private final TableColumns columns;
    private final Evidence evidence;

    FindingRow(TableColumns columns, Evidence evidence) {
        this.columns = columns;
        this.evidence = evidence;
    }

    /** One line, and what follows it in plain letters. */
    private record Line(String text, TextStyle style, String after) {
        Line(String text, TextStyle style) {
            this(text, style, "");
        }
    }

    TableRow of(WeakPoint p) {
        Finding f = p.finding();
        List<List<Line>> cells = List.of(what(f), lines(f.drawn(), Looks.STRONG, columns.width(1)), lines(f.asked(), Looks.PLAIN, columns.width(2)),
                litres(f), source(f), lines(f.remedy(), Looks.PLAIN, columns.width(5)));
        int most = cells.stream().mapToInt(List::size).max().orElse(1);
        double pitch = Words.pitch(cells.stream().flatMap(List::stream).map(l -> l.text() + l.after()).toList());
        double height = Math.max(LEAST, ABOVE + (most - 1) * pitch + BELOW);
        return new TableRow(height, y -> draw(p, cells, y, pitch));
    }

    private List<Mark> draw(WeakPoint p, List<List<Line>> cells, double top, double pitch) {
        List<Mark> out = new ArrayList<>(Severity.of(p.finding().defences())
                .smallMark(new PaperPoint(columns.markX(), top + LEAST / 2), p.number()));
        for (int c = 0; c < cells.size(); c++) {
            double y = top + ABOVE;
            for (Line l : cells.get(c)) {
                out.addAll(Words.at(columns.at(c), y, l.text(), l.style()));
                if (!l.after().isEmpty()) {
                    out.add(Text.of(columns.x(c) + TextMetrics.width(l.text(), l.style()) + SPACE, y, l.after(), Looks.PLAIN));
                }
                y += pitch;
            }
        }
        return List.of(Group.of("row-" + p.number(), out).withData("weak", Integer.toString(p.number())));
    }

    private static List<Line> lines(String text, TextStyle style, double width) {
        return text.isBlank() ? List.of() : TextMetrics.wrap(text, width, style).stream().map(t -> new Line(t, style)).toList();
    }

    private static List<Line> litres(Finding f) {
        return List.of(new Line(f.litresPerHour().stream().mapToObj(LitresText::perHour).findFirst().orElse("–"), Looks.PLAIN.end()));
    }

    /** The rule's id and its pieces, on one line where they fit, then the place. */
    private List<Line> what(Finding f) {
        double width = columns.width(0);
        TextStyle bold = Looks.PLAIN.bold();
        String pieces = pieces(f);
        double room = width - TextMetrics.width(f.rule(), bold) - SPACE;
        List<Line> out = new ArrayList<>();
        if (TextMetrics.width(pieces, Looks.PLAIN) <= room) {
            out.add(new Line(f.rule(), bold, pieces));
        } else {
            out.addAll(lines(f.rule(), bold, width));
            out.addAll(lines(pieces, Looks.PLAIN, width));
        }
        out.addAll(lines(f.where().inWords(), Looks.SECOND, width));
        return out;
    }

    private String pieces(Finding f) {
        List<String> names = f.pieces().stream().map(n -> TextMetrics.shorten(n, LONGEST_NAME, Looks.PLAIN)).toList();
        Optional<Joint> joint = f.joint().flatMap(id -> evidence.joints().all().stream().filter(j -> j.id().equals(id)).findFirst());
        if (names.size() == 2 && joint.isPresent()) {
            return names.get(0) + (joint.get().kind().isLap() ? " over " : joint.get().kind() == JointKind.BUTT ? " against " : " beside ") + names.get(1);
        }
        return String.join(", ", names);
    }

    /** The document, then clause and how well it is known; named after the practice that spoke where the chosen one is silent. */
    private List<Line> source(Finding f) {
        Source s = f.source();
        String spoke = f.spokenBy().filter(p -> f.isUnspokenBy(evidence.practice().id())).map(p -> p + ": ").orElse("");
        if (s.document().equals(Source.commonPractice().document())) {
            return lines(s.known().text(), Looks.PLAIN, columns.width(4));
        }
        String document = s.edition().isBlank() ? s.document() : s.document() + " " + s.edition();
        String known = s.clause().isBlank() ? s.known().text() : s.clause() + ", " + s.known().text();
        List<Line> out = new ArrayList<>(lines(spoke + document, Looks.PLAIN, columns.width(4)));
        out.addAll(lines(known, Looks.SECOND, columns.width(4)));
        return out;
    }
}
