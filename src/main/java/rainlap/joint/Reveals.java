package rainlap.joint;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Box;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * The edges and corners of all openings with a reveal, opening by opening in the file's order: what lies in one reveal is looked at for all of them together.
 *
 * @param edges sill, left, right, head of each
 * @param corners lower left, lower right, upper left, upper right of each
 */
public record Reveals(List<OpeningEdge> edges, List<OpeningCorner> corners) {
    private static final List<Side> SIDES = List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD);

    public static Reveals of(Stack stack) {
        List<OpeningEdge> edges = new ArrayList<>();
        List<OpeningCorner> corners = new ArrayList<>();
        for (Opening o : stack.elevation().openings()) {
            if (o.reveal() > 0) {
                One one = One.of(stack, o);
                SIDES.forEach(side -> edges.add(OpeningEdge.of(one, side)));
                for (Side level : List.of(Side.SILL, Side.HEAD)) {
                    corners.add(OpeningCorner.of(one, level, Side.LEFT));
                    corners.add(OpeningCorner.of(one, level, Side.RIGHT));
                }
            }
        }
        return new Reveals(List.copyOf(edges), List.copyOf(corners));
    }

    /** What covers the sides of one opening's reveal, in laying order. */
    record One(Opening opening, Map<Side, List<Face>> covers) {
        private static One of(Stack stack, Opening o) {
            Map<Side, List<Face>> covers = new EnumMap<>(Side.class);
            SIDES.forEach(side -> covers.put(side, stack.on(new Surface(o.id(), side)).stream().filter(Sheets::covers).toList()));
            return new One(o, covers);
        }

        List<Face> on(Side side) {
            return covers.get(side);
        }

        /** Whether one cover lies over all of a part of a side. */
        boolean isWhole(Side side, Box part) {
            for (Face f : on(side)) {
                if (f.region().isBox() && f.box().contains(part)) {
                    return true;
                }
            }
            return false;
        }
    }
}
