package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Point;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.wall.EdgeRole;
import rainlap.wall.Opening;
import rainlap.wall.OutlineEdge;

/** Levels at the left of the elevation, from the base; where two stand too close, the less weighty is left out. A name that does not fit whole is left out too: cut off it would name another piece. */
final class Levels {
    private record Level(long y, String name) {}

    /** Shorter laps get no level. */
    private static final double LONG_MM = 300;
    private final View view;
    private final PaperBox slot;
    private final double centring;
    private final Occupied taken;

    /**
     * @param slot what belongs to the elevation stays in here
     * @param centring height of the sheet's centring mark, which runs into the frame
     */
    Levels(View view, PaperBox slot, double centring, Occupied taken) {
        this.view = view;
        this.slot = slot;
        this.centring = centring;
        this.taken = taken;
    }

    Group marks(Evidence evidence) {
        List<Mark> out = new ArrayList<>();
        List<Long> seen = new ArrayList<>();
        for (Level l : wanted(evidence)) {
            PaperBox box = new PaperBox(Slots.LEVELS_LEFT, view.y(l.y()) - 3.6, Slots.LEVELS_RIGHT, view.y(l.y()) + 0.2);
            if (!seen.contains(l.y()) && slot.holds(box) && taken.isFree(box)) {
                seen.add(l.y());
                taken.add(box);
                out.addAll(one(l));
            }
        }
        return Group.of("levels", out);
    }

    /** The weightiest first. */
    private static List<Level> wanted(Evidence evidence) {
        List<Level> out = new ArrayList<>();
        long base = evidence.elevation().outline().box().minY(), top = evidence.elevation().outline().box().maxY();
        out.add(new Level(base, "base"));
        evidence.elevation().outline().ground().ifPresent(g -> out.add(new Level(g, "ground")));
        evidence.elevation().outline().abutting().forEach(a -> out.add(new Level(a.line().box().minY(), a.kind().word())));
        out.add(new Level(top, evidence.elevation().outline().edges().stream().filter(e -> e.line().isLevel() && e.line().a().y() == top)
                .map(OutlineEdge::role).filter(r -> r != EdgeRole.FREE).map(EdgeRole::word).findFirst().orElse("top")));
        for (Opening o : evidence.elevation().openings()) {
            out.add(new Level(o.rect().maxY(), "head"));
            out.add(new Level(o.rect().minY(), "sill"));
        }
        for (OutlineEdge e : evidence.elevation().outline().edges()) {
            if (e.role().isCorner()) {
                out.add(new Level(Math.max(e.line().a().y(), e.line().b().y()), "side"));
            }
        }
        for (Joint j : evidence.joints().all()) {
            List<Point> line = j.line();
            if (j.surface().isWall() && j.kind() == JointKind.COURSE_LAP && Visibility.isMembrane(j.outer()) && j.lengthMm() >= LONG_MM
                    && line.get(0).y() == line.get(line.size() - 1).y()) {
                out.add(new Level(line.get(0).y(), j.outer().piece().id()));
            }
        }
        return out;
    }

    private List<Mark> one(Level l) {
        double y = view.y(l.y());
        PaperPoint tip = new PaperPoint(Slots.LEVELS_RIGHT - 2.1, y);
        String figure = Place.level(l.y());
        boolean atCentring = Math.abs(y - centring) < 5;
        double left = atCentring ? Slots.LEVELS_LEFT + 4 : Slots.LEVELS_LEFT;
        double room = Slots.LEVELS_RIGHT - 4.9 - left - TextMetrics.width(figure, Looks.STRONG);
        List<Mark> out = new ArrayList<>();
        out.add(Polyline.line(left, y, Slots.LEVELS_RIGHT, y, Looks.THIN));
        out.add(Area.of(PaperRegion.of(tip, tip.plus(-1.4, -1.9), tip.plus(1.4, -1.9)), Tone.WHITE, Looks.NARROW));
        out.add(Text.of(Slots.LEVELS_RIGHT - 4.5, y - 0.9, figure, Looks.STRONG.end()));
        if (TextMetrics.width(l.name(), Looks.SECOND) <= room) {
            out.add(Text.of(left, y - 0.9, l.name(), Looks.SECOND));
        }
        return out;
    }
}
