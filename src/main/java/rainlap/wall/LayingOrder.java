package rainlap.wall;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rainlap.geom.Overlay;
import rainlap.geom.Region;

/** Which of two pieces lies outside the other. Pieces are named by their number in the file's order, from 0. */
public final class LayingOrder {
    private final List<Piece> pieces;
    private final Set<Long> tucked = new HashSet<>();
    /** By number: whether a piece is tucked under any other. */
    private final BitSet isTucked = new BitSet();

    public LayingOrder(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
        Map<String, Integer> number = new HashMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            number.put(pieces.get(i).id(), i);
        }
        for (int i = 0; i < pieces.size(); i++) {
            for (String over : pieces.get(i).under()) {
                tucked.add(pair(number.get(over), i));
                isTucked.set(i);
            }
        }
    }

    private static long pair(int earlier, int later) {
        return ((long) earlier << 32) | later;
    }

    /** Whether piece a lies outside piece b where they overlap. */
    public boolean isOutside(int a, int b) {
        int last = Math.max(a, b);
        return isTucked.get(last) && tucked.contains(pair(Math.min(a, b), last)) ? a < b : a > b;
    }

    /** Three pieces that would each lie outside the next at one and the same point: inner, tucked piece's cover, and the third. */
    public record Knot(Piece tucked, Piece over, Piece third) {}

    /**
     * The first impossible stacking: a tournament has a cycle only if it has one of three, and such a cycle holds at least one tuck.
     *
     * @param neighbours the numbers of the pieces whose boxes meet a given piece's
     */
    public Optional<Knot> findKnot(Function<Integer, List<Integer>> neighbours) {
        List<Long> pairs = new ArrayList<>(tucked);
        pairs.sort(null);
        for (long p : pairs) {
            int over = (int) (p >> 32), in = (int) p;
            for (int third : neighbours.apply(in)) {
                if (third != over && third != in && goesRound(over, in, third) && meetAtOnePoint(over, in, third)) {
                    return Optional.of(new Knot(pieces.get(in), pieces.get(over), pieces.get(third)));
                }
            }
        }
        return Optional.empty();
    }

    /** Over lies outside in; the three go round when in lies outside the third and the third outside over. */
    private boolean goesRound(int over, int in, int third) {
        return isOutside(in, third) && isOutside(third, over);
    }

    private boolean meetAtOnePoint(int a, int b, int c) {
        for (Shape s : pieces.get(a).shapes()) {
            List<Region> both = Overlay.intersection(s.regions(), on(b, s.on()));
            if (!Overlay.intersection(both, on(c, s.on())).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private List<Region> on(int piece, Surface surface) {
        return pieces.get(piece).shapes().stream().filter(s -> s.on().equals(surface))
                .flatMap(s -> s.regions().stream()).toList();
    }
}
