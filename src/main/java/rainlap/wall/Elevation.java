package rainlap.wall;

import java.util.List;
import java.util.Optional;
import rainlap.material.Catalogue;

/**
 * One elevation, read and checked: ids are unique, references resolve, shapes are sound. Pieces stand in laying order.
 *
 * @param practice the practice's id as the file names it, if it does
 */
public record Elevation(String name, Optional<String> practice, Exposure exposure, Outline outline, List<Opening> openings,
        List<Penetration> penetrations, Catalogue materials, List<Piece> pieces, List<Expectation> expected) {
    public Elevation {
        openings = List.copyOf(openings);
        penetrations = List.copyOf(penetrations);
        pieces = List.copyOf(pieces);
        expected = List.copyOf(expected);
    }

    public Optional<Opening> findOpening(String id) {
        return openings.stream().filter(o -> o.id().equals(id)).findFirst();
    }

    public Elevation withPieces(List<Piece> other) {
        return new Elevation(name, practice, exposure, outline, openings, penetrations, materials, other, expected);
    }
}
