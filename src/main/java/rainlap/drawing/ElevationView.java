package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.wall.Penetration;

/** The elevation in its slot: layers from the sheets outwards, then what is written on and round it. */
final class ElevationView {
    private final Evidence evidence;
    private final Extents extents;
    private final Placing placing;
    private final View view;
    private final Occupied taken = new Occupied();

    ElevationView(Evidence evidence, Extents extents, Placing placing) {
        this.evidence = evidence;
        this.extents = extents;
        this.placing = placing;
        this.view = placing.view();
    }

    Group marks() {
        List<Mark> out = new ArrayList<>();
        Region outline = evidence.elevation().outline().region();
        Visibility visibility = new Visibility(evidence.stack());
        PieceMarks pieces = new PieceMarks(visibility, view, outline);
        LapBands laps = new LapBands(evidence, visibility, view);
        out.add(layer("sheets", pieces.ofRank(0)));
        out.add(layer("laps", laps.onWall()));
        out.add(layer("openings", new OpeningMarks(evidence, visibility, laps, view).all()));
        List<Mark> strips = new ArrayList<>(pieces.ofRank(1));
        strips.addAll(pieces.edgesUnderTape());
        out.add(layer("tapes", strips));
        out.add(layer("flashings", pieces.ofRank(2)));
        out.add(layer("battens", pieces.ofRank(3)));
        out.add(layer("cladding", pieces.ofRank(4)));
        out.add(layer("trims", pieces.ofRank(5)));
        out.add(layer("penetrations", penetrations()));
        out.add(layer("wall", List.of(Area.edged(view.region(outline), Looks.OUTLINE))));
        PaperBox drawn = view.box(extents.sheets());
        extents.ground().ifPresent(g -> out.add(ViewTitle.ground(drawn.left() - 4, drawn.right() + 4, view.y(g))));
        out.add(new Levels(view, taken).marks(evidence));
        out.add(new Dimensions(placing, taken).marks(evidence.elevation(), extents.wall()));
        out.add(ViewTitle.marks(evidence.elevation().name(), "", evidence.stage(), view.scale()));
        return Group.of("elevation", out);
    }

    private static Group layer(String id, List<Mark> marks) {
        return Group.of(id, marks).withClass("layer");
    }

    private List<Mark> penetrations() {
        List<Mark> out = new ArrayList<>();
        for (Penetration p : evidence.elevation().penetrations()) {
            PaperBox b = view.box(p.region().box());
            PaperPoint m = b.middle();
            out.add(Area.of(view.region(p.region()), Tone.WHITE, Looks.WIDE));
            out.add(Polyline.line(b.left() - 2, m.y(), b.right() + 2, m.y(), Looks.CENTRE));
            out.add(Polyline.line(m.x(), b.top() - 2, m.x(), b.bottom() + 2, Looks.CENTRE));
        }
        return out;
    }
}
