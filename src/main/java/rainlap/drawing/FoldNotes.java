package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Profile;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperPoint;
import rainlap.paper.Text;
import rainlap.paper.TextStyle;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Surface;

/** Says where what runs past the outline goes: round the corner, over the top, under the base. */
final class FoldNotes {
    private static final double LEAST = 3.4;
    private final View view;
    private final Room room;

    FoldNotes(View view, Room room) {
        this.view = view;
        this.room = room;
    }

    Group marks(Evidence evidence) {
        List<Mark> out = new ArrayList<>();
        for (OutlineEdge edge : evidence.elevation().outline().edges()) {
            words(edge.role()).flatMap(w -> note(evidence, edge, w)).ifPresent(t -> out.addAll(Symbols.haloed(t, Looks.FOLDED)));
        }
        return Group.of("fold-notes", out);
    }

    private static Optional<String> words(EdgeRole role) {
        return switch (role) {
            case BASE -> Optional.of("folded under the base");
            case EAVE, VERGE, PARAPET -> Optional.of("folded over the top");
            case EXTERNAL_CORNER, INTERNAL_CORNER -> Optional.of("folded round the corner");
            case FREE -> Optional.empty();
        };
    }

    private Optional<Text> note(Evidence evidence, OutlineEdge edge, String words) {
        EdgeFrame out = EdgeFrame.of(edge.line()).turned();
        double furthest = 0;
        for (Face f : evidence.stack().meeting(Surface.WALL, edge.line().box())) {
            if (Visibility.isMembrane(f) && !f.across(out, 0, out.length()).isEmpty()) {
                Profile p = f.runsOn(out, 0, out.length());
                double reach = p.stretches().stream().mapToDouble(s -> Math.max(s.v0(), s.v1())).filter(Double::isFinite).max().orElse(0);
                furthest = Math.max(furthest, reach);
            }
        }
        double depth = view.length(furthest);
        if (depth < LEAST) {
            return Optional.empty();
        }
        PaperPoint a = view.at(edge.line().a()), b = view.at(edge.line().b());
        double l = a.distance(b), ux = (b.x() - a.x()) / l, uy = (b.y() - a.y()) / l;
        double angle = Math.toDegrees(Math.atan2(uy, ux));
        double upright = angle >= 90 - 1e-6 ? angle - 180 : angle < -90 - 1e-6 ? angle + 180 : angle;
        TextStyle style = Looks.SECOND.middle().rotated(upright);
        List<Text> candidates = new ArrayList<>();
        for (double share : new double[] {0.5, 0.25, 0.75, 0.35, 0.65, 0.15, 0.85}) {
            PaperPoint on = a.towards(b, share).plus(-uy * depth / 2, ux * depth / 2);
            candidates.add(Text.centred(on, words + ", " + Place.mm(Math.round(furthest)), style));
        }
        return room.first(candidates);
    }
}
