package rainlap.wall;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import rainlap.geom.Overlay;
import rainlap.geom.Region;

/** Which of two pieces lies outside the other. Pieces are named by their number in the file's order, from 0. */
public final class LayingOrder {
    private final List<Piece> pieces;
    /** By number: under which earlier pieces a piece is tucked; null for most. */
    private final int[][] over;

    public LayingOrder(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
        Map<String, Integer> number = new HashMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            number.put(pieces.get(i).id(), i);
        }
        over = new int[pieces.size()][];
        for (int i = 0; i < pieces.size(); i++) {
            List<String> under = pieces.get(i).under();
            over[i] = under.isEmpty() ? null : under.stream().mapToInt(number::get).toArray();
        }
    }

    /** Whether piece a lies outside piece b where they overlap. */
    public boolean isOutside(int a, int b) {
        return isTucked(Math.min(a, b), Math.max(a, b)) ? a < b : a > b;
    }

    private boolean isTucked(int earlier, int later) {
        if (over[later] != null) {
            for (int o : over[later]) {
                if (o == earlier) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Three pieces that would each lie outside the next at one and the same point: inner, tucked piece's cover, and the third. */
    public record Knot(Piece tucked, Piece over, Piece third) {}

    /**
     * The first impossible stacking: a tournament has a cycle only if it has one of three, and such a cycle holds at least one tuck.
     *
     * @param neighbours the numbers of the pieces whose boxes meet a given piece's
     */
    public Optional<Knot> findKnot(Function<Integer, List<Integer>> neighbours) {
        for (Tuck t : tucks()) {
            for (int third : neighbours.apply(t.in)) {
                if (third != t.over && third != t.in && goesRound(t.over, t.in, third) && meetAtOnePoint(t.over, t.in, third)) {
                    return Optional.of(new Knot(pieces.get(t.in), pieces.get(t.over), pieces.get(third)));
                }
            }
        }
        return Optional.empty();
    }

    private record Tuck(int over, int in) {}

    private List<Tuck> tucks() {
        return IntStream.range(0, over.length).filter(in -> over[in] != null).boxed().flatMap(in -> IntStream.of(over[in]).mapToObj(o -> new Tuck(o, in)))
                .sorted(Comparator.comparingInt(Tuck::over).thenComparingInt(Tuck::in)).toList();
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
