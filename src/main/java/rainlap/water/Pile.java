package rainlap.water;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The pieces over one another at a place, by number, from the frame outwards. Equal piles of one surface are one object, whichever thread comes to them first. */
final class Pile {
    /** So many piles next to it are remembered at most: the bare frame has as many as there are pieces. */
    private static final int MOST = 6;

    private final int[] pieces;
    /** What was found of piles next to it. Whoever is overwritten by another thread is found again. */
    private Next next;

    /** The pile with a piece added, or taken away if it is there. */
    private record Next(int piece, Pile pile, Next rest, int count) {}

    /** Makes piles: knows who lies outside whom. */
    static final class Source {
        private final Ordered order;
        private final Map<Key, Pile> known;
        private final Pile empty = new Pile(new int[0]);

        /** @param many about as many piles as will be made */
        Source(Ordered order, int many) {
            this.order = order;
            this.known = new ConcurrentHashMap<>(many);
        }

        Pile empty() {
            return empty;
        }

        /** The pile with a piece added, or taken away if it is there. */
        Pile toggle(Pile pile, int piece) {
            Next known = pile.next;
            for (Next n = known; n != null; n = n.rest) {
                if (n.piece == piece) {
                    return n.pile;
                }
            }
            Pile found = of(pile.holds(piece) ? pile.without(piece) : with(pile.pieces, piece));
            int count = known == null ? 0 : known.count;
            if (count < MOST) {
                pile.next = new Next(piece, found, known, count + 1);
            }
            return found;
        }

        private Pile of(int[] pieces) {
            return pieces.length == 0 ? empty : known.computeIfAbsent(new Key(pieces), k -> new Pile(pieces));
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
