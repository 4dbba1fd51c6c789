package rainlap.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperPoint;
import rainlap.paper.Text;
import rainlap.paper.TextStyle;
import rainlap.rule.Evidence;
import rainlap.rule.Place;

/** The figure of each lap, in its band or beside it: {@code lap 100}. */
final class LapFigures {
    private static final double IN_BAND = 5;
    private static final double BESIDE = 2.4;
    private static final double SHORTEST_MM = 300;
    /** Wider, one sheet lies over the other altogether and its figure says nothing. */
    private static final long WIDEST = 600_00;
    private final View view;
    private final Room room;
    private final Map<Joint, List<Mark>> byJoint = new LinkedHashMap<>();

    LapFigures(View view, Room room) {
        this.view = view;
        this.room = room;
    }

    Group marks(Evidence evidence) {
        List<Mark> out = new ArrayList<>();
        for (Joint j : evidence.joints().all()) {
            if (j.surface().isWall() && j.kind().isLap() && Visibility.isMembrane(j.outer()) && j.lengthMm() >= SHORTEST_MM && j.lap() <= WIDEST) {
                place(j, view.length(j.lap())).ifPresent(marks -> {
                    out.addAll(marks);
                    byJoint.put(j, marks);
                });
            }
        }
        return Group.of("lap-figures", out);
    }

    /** The marks of each figure; known once {@link #marks} has been asked. */
    Map<Joint, List<Mark>> byJoint() {
        return byJoint;
    }

    /** In the band where it is wide enough, else past the end of the sheet beneath, else past the ticks. */
    private Optional<List<Mark>> place(Joint j, double band) {
        Optional<Text> in = band < IN_BAND ? Optional.empty() : room.first(along(j, band / 2));
        if (in.isPresent()) {
            return in.map(t -> Symbols.haloed(t, Looks.LAP));
        }
        return room.first(along(j, band + BESIDE)).or(() -> room.first(along(j, -BESIDE - 2)))
                .map(t -> Symbols.haloed(t, Looks.MEMBRANE));
    }

    private List<Text> along(Joint j, double away) {
        Run longest = j.runs().stream().max(java.util.Comparator.comparingDouble(Run::length)).orElseThrow();
        PaperPoint a = view.at(longest.line().a()), b = view.at(longest.line().b());
        List<Text> out = new ArrayList<>();
        for (double share : new double[] {0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.22, 0.78, 0.08, 0.92}) {
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
