package rainlap.water;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The pieces over one another at a place, by number, from the frame outwards. Equal piles of one surface are one object, whichever thread comes to them first. */
final class Pile {
    private final int[] pieces;
    /** Those that it was turned into before, while its surface is cut. */
    private Toggled toggled = Toggled.NONE;

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
            Pile next = pile.toggled.get(piece);
            if (next == null) {
                next = of(pile.holds(piece) ? pile.without(piece) : with(pile.pieces, piece));
                pile.toggled = pile.toggled.with(piece, next);
            }
            return next;
        }

        /** Once a surface is cut: gives back the room that finding piles again took. */
        void letGo() {
            known.values().forEach(p -> p.toggled = Toggled.NONE);
            empty.toggled = Toggled.NONE;
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

    /** What a pile becomes by which piece: one of two threads that add to it at once may be forgotten, and is found anew. */
    private record Toggled(int[] by, Pile[] to) {
        private static final Toggled NONE = new Toggled(new int[0], new Pile[0]);
        /** A sweep asks again for what it asked for lately; on a bare frame each sheet begins once. */
        private static final int MANY = 16;

        Pile get(int piece) {
            for (int i = 0; i < by.length; i++) {
                if (by[i] == piece) {
                    return to[i];
                }
            }
            return null;
        }

        Toggled with(int piece, Pile next) {
            int n = by.length < MANY ? by.length : 0;
            int[] pieces = Arrays.copyOf(by, n + 1);
            Pile[] piles = Arrays.copyOf(to, n + 1);
            pieces[n] = piece;
            piles[n] = next;
            return new Toggled(pieces, piles);
        }
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
