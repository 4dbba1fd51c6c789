package rainlap.drawing;

import java.util.List;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.stack.Stack;
import rainlap.wall.Piece;
import rainlap.wall.Stage;

/**
 * What a page shows of a check: the elevation in groups that can be shown and hidden one by one, and a picture for each weak point.
 *
 * @param box all of the elevation, printed mm at its scale
 * @param paper the same with the name of the view and its scale bar, which stand on paper only
 * @param scale the number after 1 to
 * @param wall groups with {@code data-layer} and {@code data-step}: from which step of the laying order on they are there
 * @param weak groups with {@code data-weak}: marks with their places, in front of all else
 * @param ways groups with {@code data-way}: the water's way to each of them, a group for each step
 * @param pieces one for each step of the laying order
 * @param ignored layers of which the stage looks at nothing
 */
public record PageDrawing(PaperBox box, PaperBox paper, int scale, List<Mark> wall, List<Mark> weak, List<Mark> ways, List<Piece> pieces, List<PageLayer> layers,
        List<PageLayer> ignored, List<Weak> points) {
    public PageDrawing {
        wall = List.copyOf(wall);
        weak = List.copyOf(weak);
        ways = List.copyOf(ways);
        pieces = List.copyOf(pieces);
        layers = List.copyOf(layers);
        ignored = List.copyOf(ignored);
        points = List.copyOf(points);
    }

    /**
     * A weak point by itself.
     *
     * @param focus its place with its mark and the water's way to it, on the elevation
     * @param mark as in lists, its middle at 0, 0
     * @param section a cut or view of it
     * @param mended whether {@link PageSections#should} has the same as it should be, or why not
     */
    public record Weak(WeakPoint point, PaperBox focus, List<Mark> mark, SectionPicture section, boolean mended) {
        public Weak {
            mark = List.copyOf(mark);
        }
    }

    /**
     * Draws a check for a page.
     *
     * @throws Sheets.TooLarge when the wall cannot be drawn at any scale we know
     */
    public static PageDrawing of(CheckResult result) {
        boolean finished = result.evidence().stage() == Stage.FINISHED;
        Stack all = finished ? result.evidence().stack() : Stack.of(result.evidence().elevation(), Stage.FINISHED);
        return new PageElevation(result, all).drawing();
    }
}
