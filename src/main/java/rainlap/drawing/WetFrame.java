package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.paper.Mark;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.wall.Opening;
import rainlap.wall.Surface;
import rainlap.water.Reach;

/** The frame that water reaches as drawn, on the wall and on the reveals laid flat into their openings. */
final class WetFrame {
    private final Evidence evidence;
    private final View view;

    WetFrame(Evidence evidence, View view) {
        this.evidence = evidence;
        this.view = view;
    }

    static boolean isWet(Evidence evidence) {
        return evidence.trace().reach().stream().anyMatch(r -> r.defences() == 0 && !r.where().isEmpty());
    }

    List<Mark> onWall() {
        List<Mark> out = new ArrayList<>();
        at(Surface.WALL).forEach(r -> out.addAll(WaterSigns.wet(view.region(r))));
        return out;
    }

    /** What shows of the reveals, each cut along the angles' bisectors. */
    List<Mark> onReveals() {
        List<Mark> out = new ArrayList<>();
        for (Opening o : evidence.elevation().openings()) {
            for (Surface s : evidence.stack().surfaces()) {
                if (s.opening().equals(o.id()) && o.reveal() > 0) {
                    List<Region> zone = List.of(OpeningMarks.zone(o, s.side()));
                    at(s).forEach(r -> Overlay.intersection(List.of(r), zone).forEach(p -> out.addAll(WaterSigns.wet(view.region(p)))));
                }
            }
        }
        return out;
    }

    private List<Region> at(Surface s) {
        return evidence.trace().reach().stream().filter(r -> r.defences() == 0 && r.surface().equals(s) && !r.where().isEmpty())
                .map(Reach::where).flatMap(w -> Place.area(evidence.elevation(), s, w).area().stream()).toList();
    }
}
