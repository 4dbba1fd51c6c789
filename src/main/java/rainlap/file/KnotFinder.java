package rainlap.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.wall.LayingOrder;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** Refuses a stacking that goes round in a circle at one point. */
final class KnotFinder {
    private final List<Piece> pieces;
    private final Map<Surface, BoxTree> trees = new HashMap<>();
    private final Map<Surface, List<Integer>> owners = new TreeMap<>();

    private KnotFinder(List<Piece> pieces) {
        this.pieces = pieces;
        Map<Surface, List<Box>> boxes = new HashMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            for (Shape s : pieces.get(i).shapes()) {
                boxes.computeIfAbsent(s.on(), k -> new ArrayList<>()).add(s.box());
                owners.computeIfAbsent(s.on(), k -> new ArrayList<>()).add(i);
            }
        }
        boxes.forEach((surface, list) -> trees.put(surface, new BoxTree(list)));
    }

    static void refuseKnots(List<Piece> pieces, Ids<Piece> ids, Problems problems) {
        find(pieces).ifPresent(k -> {
            String in = Quoted.text(k.tucked().id()), over = Quoted.text(k.over().id()), third = Quoted.text(k.third().id());
            problems.add(ids.places().get(k.tucked().id()), "pieces " + in + ", " + over + " and " + third
                    + " lie round in a circle at one point: " + in + " under " + over + ", " + over + " under " + third + ", "
                    + third + " under " + in,
                    k.third().under().contains(k.tucked().id())
                            ? "no longer tuck " + in + " under " + over + ", or no longer " + third + " under " + in
                            : "tuck " + in + " under " + third + " too, or no longer under " + over
                                    + (isLater(pieces, k.third(), k.over()) ? ", or " + third + " under " + over + " as well" : ""));
        });
    }

    static Optional<LayingOrder.Knot> find(List<Piece> pieces) {
        return pieces.stream().allMatch(p -> p.under().isEmpty()) ? Optional.empty()
                : new LayingOrder(pieces).findKnot(new KnotFinder(pieces)::neighbours);
    }

    private static boolean isLater(List<Piece> pieces, Piece a, Piece b) {
        return pieces.indexOf(a) > pieces.indexOf(b);
    }

    private List<Integer> neighbours(int piece) {
        TreeSet<Integer> found = new TreeSet<>();
        for (Shape s : pieces.get(piece).shapes()) {
            List<Integer> owner = owners.get(s.on());
            trees.get(s.on()).query(s.box(), i -> found.add(owner.get(i)));
        }
        return List.copyOf(found);
    }
}
