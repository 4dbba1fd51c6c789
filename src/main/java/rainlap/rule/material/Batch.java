package rainlap.rule.material;

import java.util.List;
import java.util.function.Predicate;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.material.Durability;
import rainlap.material.Material;
import rainlap.rule.Evidence;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/** All pieces of one material that are looked at: what wears the material wears them all, and is said once. */
record Batch(Material material, List<Piece> pieces) {
    /** So many pieces are named in a sentence; the finding lists all. */
    private static final int NAMED = 4;

    Batch {
        pieces = List.copyOf(pieces);
    }

    /** Those of a caller's choice at this stage, material by material in laying order. */
    static List<Batch> of(Evidence e, Predicate<Material> wanted) {
        return e.byMaterial().stream().filter(all -> wanted.test(all.get(0).material())).map(all -> new Batch(all.get(0).material(), all)).toList();
    }

    Batch only(Predicate<Piece> wanted) {
        return new Batch(material, pieces.stream().filter(wanted).toList());
    }

    Durability wear() {
        return material.durability();
    }

    List<String> ids() {
        return pieces.stream().map(Piece::id).toList();
    }

    /** {@code T1}, {@code T1 and T2}, {@code T1, T2, T3, T4 and 7 more}. */
    String named() {
        return pieces.size() <= NAMED + 1 ? PieceWords.list(ids()) : String.join(", ", ids().subList(0, NAMED)) + " and " + (pieces.size() - NAMED) + " more";
    }

    /** {@code M1 (Reflective foil membrane)}. */
    String described() {
        return named() + " (" + material.name() + ")";
    }

    /** The line along the middle of the first of them, within the wall: one mark for all. */
    Place where(Evidence e) {
        Face f = faces(e).stream().filter(g -> g.surface().isWall()).findFirst().orElseGet(() -> faces(e).get(0));
        Box b = f.surface().isWall() ? within(f.box(), e.elevation().outline().box()) : f.box();
        long x = (b.minX() + b.maxX()) / 2, y = (b.minY() + b.maxY()) / 2;
        return Place.line(e.elevation(), f.surface(), b.height() > b.width() ? List.of(new Point(x, b.minY()), new Point(x, b.maxY()))
                : List.of(new Point(b.minX(), y), new Point(b.maxX(), y)));
    }

    private List<Face> faces(Evidence e) {
        String first = pieces.get(0).id();
        return e.stack().surfaces().stream().sorted(java.util.Comparator.comparing((Surface s) -> !s.isWall()))
                .flatMap(s -> e.stack().on(s).stream()).filter(f -> f.piece().id().equals(first)).toList();
    }

    /** The part of a box that lies in another, or all of it where they do not overlap. */
    private static Box within(Box b, Box wall) {
        return !b.overlaps(wall) ? b : new Box(Math.max(b.minX(), wall.minX()), Math.max(b.minY(), wall.minY()),
                Math.min(b.maxX(), wall.maxX()), Math.min(b.maxY(), wall.maxY()));
    }
}
