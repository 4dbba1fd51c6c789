package rainlap.water;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** The pieces over one another at a place, by number, from the frame outwards. Equal piles of one source are one object. */
final class Pile {
    private final int[] pieces;

    /** Makes piles: knows who lies outside whom. */
    static final class Source {
        private final Ordered order;
        private final Map<Key, Pile> known;
        private final Pile empty = new Pile(new int[0]);

        /** @param pieces how many there are: there will be some three times as many piles */
        Source(Ordered order, int pieces) {
            this.order = order;
            known = new HashMap<>(4 * pieces);
        }

        Pile empty() {
            return empty;
        }

        /** The pile with a piece added, or taken away if it is there. */
        Pile toggle(Pile pile, int piece) {
            return of(pile.holds(piece) ? pile.without(piece) : with(pile.pieces, piece));
        }

        private Pile of(int[] pieces) {
            if (pieces.length == 0) {
                return empty;
            }
            Key key = new Key(pieces);
            Pile pile = known.get(key);
            if (pile == null) {
                pile = new Pile(pieces);
                known.put(key, pile);
            }
            return pile;
        }

        private int[] with(int[] pieces, int piece) {
            int at = 0;
            for (int p : pieces) {
                at += order.isOutside(piece, p) ? 1 : 0;
            }
            int[] out = new int[pieces.length + 1];
            System.arraycopy(pieces, 0, out, 0, at);
            out[at] = piece;
            System.arraycopy(pieces, at, out, at + 1, pieces.length - at);
            return out;
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

    private Pile(int[] pieces) {
        this.pieces = pieces;
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

    private int[] without(int piece) {
        int at = find(piece);
        int[] out = new int[pieces.length - 1];
        System.arraycopy(pieces, 0, out, 0, at);
        System.arraycopy(pieces, at + 1, out, at, out.length - at);
        return out;
    }
}
