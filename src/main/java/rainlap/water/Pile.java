package rainlap.water;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The pieces over one another at a place, by number, from the frame outwards. Equal piles of one surface are one object, whichever thread comes to them first. */
final class Pile {
    private final int[] pieces;
    private final Source source;
    private final Map<Integer, Pile> toggled = new ConcurrentHashMap<>(4);

    /** Makes piles: knows who lies outside whom. */
    static final class Source {
        private final Ordered order;
        private final Map<Key, Pile> known = new ConcurrentHashMap<>();
        private final Pile empty = new Pile(new int[0], this);

        Source(Ordered order) {
            this.order = order;
        }

        Pile empty() {
            return empty;
        }

        private Pile of(int[] pieces) {
            return known.computeIfAbsent(new Key(pieces), k -> new Pile(pieces, this));
        }
    }

    interface Ordered {
        boolean isOutside(int a, int b);
    }

    private record Key(int[] pieces) {
        @Override
        public boolean equals(Object o) {
            return o instanceof Key k && Arrays.equals(pieces, k.pieces);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(pieces);
        }
    }

    private Pile(int[] pieces, Source source) {
        this.pieces = pieces;
        this.source = source;
    }

    int depth() {
        return pieces.length;
    }

    /** The piece on the outside of gap i; gap 0 is the one on the frame. */
    int at(int i) {
        return pieces[i];
    }

    /** The place of a piece in the pile, or -1. */
    int find(int piece) {
        for (int i = 0; i < pieces.length; i++) {
            if (pieces[i] == piece) {
                return i;
            }
        }
        return -1;
    }

    boolean holds(int piece) {
        return find(piece) >= 0;
    }

    /** The pile with a piece added, or taken away if it is there. */
    Pile toggle(int piece) {
        Pile next = toggled.get(piece);
        if (next == null) {
            next = source.of(holds(piece) ? without(piece) : with(piece));
            toggled.put(piece, next);
        }
        return next;
    }

    private int[] without(int piece) {
        return Arrays.stream(pieces).filter(p -> p != piece).toArray();
    }

    private int[] with(int piece) {
        int at = 0;
        for (int p : pieces) {
            at += source.order.isOutside(piece, p) ? 1 : 0;
        }
        int[] out = new int[pieces.length + 1];
        System.arraycopy(pieces, 0, out, 0, at);
        out[at] = piece;
        System.arraycopy(pieces, at, out, at + 1, pieces.length - at);
        return out;
    }
}
