package rainlap.defect;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.Bond;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Shape;

/** Cuts a hole into the one piece it goes through. */
final class Cutting {
    private Cutting() {}

    /** The same wall with the hole in it. */
    static Elevation of(Elevation wall, Hole hole) {
        return wall.withPieces(wall.pieces().stream().map(p -> p.id().equals(hole.piece().id()) ? holed(p, hole.box()) : p).toList());
    }

    /** Whether anything is left of a piece when a box is cut out of what it has on the wall. */
    static boolean leavesSome(Piece p, Box hole) {
        return !without(p, hole).isEmpty();
    }

    private static Piece holed(Piece p, Box hole) {
        Bond bond = p.bond().isFull() ? Bond.FULL : Bond.LOOSE; // no seal along an edge of the piece seals the rim of a hole in it
        return new Piece(p.id(), p.material(), without(p, hole), p.under(), bond, p.cuts());
    }

    private static List<Shape> without(Piece p, Box hole) {
        List<Shape> out = new ArrayList<>();
        for (Shape s : p.shapes()) {
            boolean met = s.on().isWall() && s.box().overlaps(hole);
            List<Region> left = met ? Overlay.difference(s.regions(), List.of(Region.of(hole))) : s.regions();
            if (!left.isEmpty()) {
                out.add(met ? new Shape(s.on(), left) : s);
            }
        }
        return out;
    }
}
