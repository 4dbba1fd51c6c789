package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Region;
import rainlap.joint.Sheets;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.rule.Evidence;
import rainlap.wall.Surface;

/** What on the wall itself is in the way of words and leaders. */
record Obstacles(Evidence evidence, Visibility visibility, View view) {
    /** Hatched strips, openings and the outline, over which no loose text can be read; for words on the wrap also what hides it. */
    Occupied toText(boolean onWrap) {
        Occupied out = new Occupied();
        visibility.on(Surface.WALL).stream().filter(f -> Sheets.isStrip(f) || onWrap && Visibility.hidesWrap(f))
                .forEach(f -> out.add(view.box(f.box())));
        evidence.elevation().openings().forEach(o -> out.add(view.box(o.rect())));
        evidence.elevation().outline().region().edges().forEach(s -> out.add(Polyline.of(Looks.OUTLINE, view.at(s.a()), view.at(s.b()))));
        return out;
    }

    /** What leaders should go round: a window's own lines and words stand there. */
    List<PaperBox> openings() {
        return evidence.elevation().openings().stream().map(o -> view.box(o.rect())).toList();
    }

    /** Lines of the drawing that a leader should not run along. */
    List<PaperSegment> edges() {
        List<PaperSegment> out = new ArrayList<>();
        evidence.elevation().outline().region().edges().forEach(s -> out.add(view.segment(s)));
        evidence.elevation().openings().forEach(o -> Region.of(o.rect()).edges().forEach(s -> out.add(view.segment(s))));
        evidence.stack().on(Surface.WALL).forEach(f -> f.freeEdges().forEach(s -> out.add(view.segment(s))));
        return out;
    }
}
