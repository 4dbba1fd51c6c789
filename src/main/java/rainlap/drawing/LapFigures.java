package rainlap.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.paper.Clip;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Strokes;
import rainlap.paper.Text;
import rainlap.paper.TextStyle;
import rainlap.rule.Evidence;
import rainlap.rule.Place;

/** The figure of each lap, in its band or beside it: {@code lap 100}. */
final class LapFigures {
    private static final double IN_BAND = 5;
    private static final double BESIDE = 2.4;
    private static final double[] SHARES = {0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.22, 0.78, 0.08, 0.92};
    private static final double[] FINE = IntStream.rangeClosed(1, 59).mapToDouble(i -> 0.5 + (i % 2 == 0 ? i : -i) / 120.0).toArray();
    private static final double SHORTEST_MM = 300;
    /** Wider, one sheet lies over the other altogether and its figure says nothing. */
    private static final long WIDEST = 600_00;
    private final View view;
    private final Room room;
    private final Occupied dashes;
    private final Map<Joint, List<Mark>> byJoint = new LinkedHashMap<>();

    /** @param dashes edges hidden beneath later pieces, which no figure stands on if it can be helped: {@link #dashes} */
    LapFigures(View view, Room room, Occupied dashes) {
        this.view = view;
        this.room = room;
        this.dashes = dashes;
    }

    /** The hidden edges among what is drawn. */
    static Occupied dashes(List<Mark> drawn) {
        Occupied out = new Occupied();
        dashes(drawn, out);
        return out;
    }

    private static void dashes(List<Mark> drawn, Occupied out) {
        for (Mark m : drawn) {
            if (m instanceof Group g) {
                dashes(g.marks(), out);
            } else if (m instanceof Clip c) {
                dashes(c.marks(), out);
            } else if (m instanceof Strokes s && s.edge().equals(Looks.HIDDEN)) {
                s.segments().stream().filter(line -> line.length() > 0).forEach(line -> out.add(Polyline.of(Looks.HIDDEN, line.from(), line.to())));
            }
        }
    }

    Group marks(Evidence evidence) {
        List<Joint> laps = evidence.joints().all().stream().filter(j -> j.surface().isWall() && j.kind().isLap() && Visibility.isMembrane(j.outer())
                && j.lengthMm() >= SHORTEST_MM && j.lap() <= WIDEST).toList();
        laps.forEach(j -> clear(j, view.length(j.lap())).ifPresent(marks -> byJoint.put(j, marks)));
        laps.stream().filter(j -> !byJoint.containsKey(j) && byJoint.keySet().stream().noneMatch(o -> isInLine(o, j)))
                .forEach(j -> anywhere(j, view.length(j.lap())).ifPresent(marks -> byJoint.put(j, marks)));
        return Group.of("lap-figures", laps.stream().flatMap(j -> byJoint.getOrDefault(j, List.of()).stream()).toList());
    }

    /** Whether a figure of one tells that of the other too: both are as wide and lie in one level or plumb line. */
    private static boolean isInLine(Joint a, Joint b) {
        Box both = Box.of(a.line()).join(Box.of(b.line()));
        return words(a).equals(words(b)) && Math.min(both.width(), both.height()) < Grid.MM;
    }

    /** The marks of each figure; known once {@link #marks} has been asked. */
    Map<Joint, List<Mark>> byJoint() {
        return byJoint;
    }

    /** In the band where it is wide enough, else past the end of the sheet beneath, else past the ticks. */
    private Optional<List<Mark>> clear(Joint j, double band) {
        return placed(clear(in(j, band, SHARES)), clear(beside(j, band, SHARES))).or(() -> placed(clear(in(j, band, FINE)), clear(beside(j, band, FINE))));
    }

    /** The same over the dashes of other edges. */
    private Optional<List<Mark>> anywhere(Joint j, double band) {
        return placed(in(j, band, SHARES), beside(j, band, SHARES));
    }

    private List<Text> in(Joint j, double band, double[] shares) {
        return band < IN_BAND ? List.of() : along(j, band / 2, shares);
    }

    private List<Text> beside(Joint j, double band, double[] shares) {
        return Stream.concat(along(j, band + BESIDE, shares).stream(), along(j, -BESIDE - 2, shares).stream()).toList();
    }

    private List<Text> clear(List<Text> texts) {
        return texts.stream().filter(t -> dashes.isFree(t.box().grown(-Occupied.CLEARANCE))).toList();
    }

    private Optional<List<Mark>> placed(List<Text> in, List<Text> beside) {
        return room.first(in).map(t -> Symbols.haloed(t, Looks.LAP)).or(() -> room.first(beside).map(t -> Symbols.haloed(t, Looks.MEMBRANE)));
    }

    private List<Text> along(Joint j, double away, double[] shares) {
        Run longest = j.runs().stream().max(java.util.Comparator.comparingDouble(Run::length)).orElseThrow();
        PaperPoint a = view.at(longest.line().a()), b = view.at(longest.line().b());
        List<Text> out = new ArrayList<>();
        for (double share : shares) {
            out.add(text(j, a.towards(b, share), a, b, away));
        }
        return out;
    }

    /** The figure at a distance to the left of the edge, that is, on to the outer piece. */
    private Text text(Joint j, PaperPoint on, PaperPoint a, PaperPoint b, double away) {
        double l = a.distance(b), ux = (b.x() - a.x()) / l, uy = (b.y() - a.y()) / l;
        double angle = Math.toDegrees(Math.atan2(uy, ux));
        double upright = angle > 90 - 1e-6 ? angle - 180 : angle <= -90 - 1e-6 ? angle + 180 : angle;
        TextStyle style = Looks.STRONG.middle().rotated(upright == 0 ? 0 : upright);
        return Text.centred(on.plus(uy * away, -ux * away), words(j), style);
    }

    private static String words(Joint j) {
        double most = j.runs().stream().mapToDouble(r -> r.lap().greatest()).max().orElse(0);
        String figure = Place.mm(j.lap());
        boolean varies = !Double.isInfinite(most) && most - j.lap() > 100;
        return "lap " + figure + (varies ? " to " + Place.mm(Math.round(most)) : "") + (j.kind() == JointKind.REVERSE_LAP ? " reversed" : "");
    }
}
