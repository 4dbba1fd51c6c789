package rainlap.wall;

import java.util.List;
import rainlap.geom.Box;
import rainlap.material.Bond;
import rainlap.material.Material;

/**
 * One flat thing laid on the wall. What the file says of a flashing, batten or trim on the piece itself has been merged into its material
 * by the reader, so that {@code material} is what this piece is made of and {@code bond} how it is held.
 *
 * @param under ids of pieces laid before it that it is tucked beneath
 */
public record Piece(String id, Material material, List<Shape> shapes, List<String> under, Bond bond, List<Cut> cuts) {
    public Piece {
        shapes = List.copyOf(shapes);
        under = List.copyOf(under);
        cuts = List.copyOf(cuts);
        if (shapes.isEmpty()) {
            throw new IllegalArgumentException("piece " + id + " has no shape");
        }
    }

    /** The box of what lies on the wall's own plane, if anything does. */
    public java.util.Optional<Box> wallBox() {
        return shapes.stream().filter(s -> s.on().isWall()).map(Shape::box).reduce(Box::join);
    }
}
