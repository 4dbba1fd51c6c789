package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.paper.Mark;
import rainlap.rule.Evidence;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/** The frame that a leak wets as drawn, on the wall and on the reveals laid flat into their openings. */
final class WetFrame {
    private final Evidence evidence;
    private final WetPlaces wet;
    private final View view;

    WetFrame(Evidence evidence, WetPlaces wet, View view) {
        this.evidence = evidence;
        this.wet = wet;
        this.view = view;
    }

    List<Mark> onWall() {
        List<Mark> out = new ArrayList<>();
        wet.painted(Surface.WALL).forEach(r -> out.addAll(WaterSigns.wet(view.region(r))));
        return out;
    }

    /** What shows of the reveals, each cut along the angles' bisectors. */
    List<Mark> onReveals() {
        List<Mark> out = new ArrayList<>();
        for (Opening o : evidence.elevation().openings()) {
            for (Surface s : wet.surfaces()) {
                if (s.opening().equals(o.id()) && o.reveal() > 0) {
                    List<Region> zone = List.of(OpeningMarks.zone(o, s.side()));
                    wet.painted(s).forEach(r -> Overlay.intersection(List.of(r), zone).forEach(p -> out.addAll(WaterSigns.wet(view.region(p)))));
                }
            }
        }
        return out;
    }
}
