package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.paper.Area;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** The wrap within a window of the wall, in the layers of an elevation. */
final class FrontLayers {
    /** Pieces are cut off so far outside the window, so that no edge shows where none is, printed mm. */
    private static final double BEYOND = 4;

    private FrontLayers() {}

    static List<Mark> of(Evidence evidence, View view, PaperBox picture) {
        Visibility visibility = new Visibility(evidence.stack());
        Region outline = evidence.elevation().outline().region();
        PieceMarks pieces = new PieceMarks(visibility, view, outline);
        LapBands laps = new LapBands(evidence, visibility, view);
        OpeningMarks openings = new OpeningMarks(evidence, visibility, laps, view);
        Box window = window(view, picture.grown(BEYOND));
        List<Mark> out = new ArrayList<>(pieces(visibility, pieces, window, 0));
        out.addAll(laps.onWall());
        out.addAll(openings.all());
        out.addAll(pieces(visibility, pieces, window, 1));
        out.addAll(pieces.edgesUnderTape());
        out.addAll(openings.edges());
        out.addAll(pieces(visibility, pieces, window, 2));
        out.addAll(PenetrationMarks.of(evidence.elevation(), view));
        out.add(Area.edged(view.region(outline), Looks.OUTLINE));
        return out;
    }

    private static Box window(View view, PaperBox b) {
        return Box.of(List.of(view.onWall(new PaperPoint(b.left(), b.bottom())), view.onWall(new PaperPoint(b.right(), b.top()))));
    }

    private static List<Mark> pieces(Visibility visibility, PieceMarks pieces, Box window, int rank) {
        List<Mark> out = new ArrayList<>();
        for (Face f : visibility.on(Surface.WALL)) {
            if (Visibility.rank(f.kind()) == rank && f.box().overlaps(window)) {
                visibility.painted(f).forEach(r -> Overlay.intersection(List.of(r), List.of(Region.of(window))).forEach(part -> out.addAll(pieces.marks(f, part))));
            }
        }
        return out;
    }
}
