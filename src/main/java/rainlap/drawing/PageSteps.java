package rainlap.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.rule.Evidence;
import rainlap.wall.Piece;

/** The steps of the laying order on a page: one for each piece that the stage looks at. What it ignores comes with the last. */
final class PageSteps {
    private final Map<String, Integer> byPiece = new HashMap<>();
    private final List<Piece> seen;

    PageSteps(Evidence evidence) {
        this.seen = evidence.elevation().pieces().stream().filter(p -> evidence.stage().sees(p.material().layer())).toList();
        for (int i = 0; i < seen.size(); i++) {
            byPiece.put(seen.get(i).id(), i + 1);
        }
    }

    List<Piece> pieces() {
        return seen;
    }

    int last() {
        return seen.size();
    }

    /** The step at which a piece is laid, from 1. */
    int of(String piece) {
        return byPiece.getOrDefault(piece, last());
    }
}
