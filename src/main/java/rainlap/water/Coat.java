package rainlap.water;

import java.util.OptionalDouble;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.joint.Sheets;
import rainlap.material.Edge;
import rainlap.material.EndDams;
import rainlap.material.Layer;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.LayingOrder;
import rainlap.wall.Piece;
import rainlap.water.How.Move;

/** What the trace asks of each piece, by number. */
final class Coat {
    private static final int MOVES = Move.values().length;
    private static final int ADHERED = 1, STRIP = 2, BATTEN = 4, SEALED = 8;

    private final Elevation elevation;
    private final LayingOrder order;
    private final Flush flush;
    /** What is asked of a piece at each line water crosses, side by side: a bit each, those of sealed edges from {@link #SEALED} on. */
    private final byte[] traits;
    /** Of flashings, grid units; 0 for what holds no ledge. */
    private final long[] upstands;
    /** By piece and move, as they are asked for; whoever makes one first, they are alike. */
    private final How[] hows;
    /** Of what holds one, its level. */
    private final long[] ledges;

    Coat(Stack stack) {
        this.order = stack.order();
        this.elevation = stack.elevation();
        this.flush = new Flush(elevation.openings());
        int n = elevation.pieces().size();
        traits = new byte[n];
        upstands = new long[n];
        ledges = new long[n];
        hows = new How[(n + 1) * MOVES];
        for (int i = 0; i < n; i++) {
            Piece p = elevation.pieces().get(i);
            traits[i] = traits(p);
            long upstand = p.material().kind() == MaterialKind.FLASHING ? Grid.of(p.material().profile().upstandMm().orElse(0)) : 0;
            if (upstand > 0) {
                upstands[i] = upstand;
                ledges[i] = p.wallBox().map(b -> Math.max(b.minY(), b.maxY() - upstand)).orElse(0L);
            }
        }
    }

    private static byte traits(Piece p) {
        int all = (p.bond().isFull() ? ADHERED : 0) | (Sheets.isStrip(p) ? STRIP : 0) | (p.material().kind() == MaterialKind.BATTEN ? BATTEN : 0);
        for (Edge e : p.bond().sealedEdges()) {
            all |= SEALED << e.ordinal();
        }
        return (byte) all;
    }

    private boolean has(int n, int trait) {
        return (traits[n] & trait) != 0;
    }

    Piece piece(int n) {
        return elevation.pieces().get(n);
    }

    /** Where the wall ends at openings. */
    Flush flush() {
        return flush;
    }

    boolean isAdhered(int n) {
        return has(n, ADHERED);
    }

    boolean isStrip(int n) {
        return has(n, STRIP);
    }

    /** Whether piece a lies outside piece b where they overlap. */
    boolean isOutside(int a, int b) {
        return order.isOutside(a, b);
    }

    boolean seals(int n, Edge e) {
        return has(n, SEALED << e.ordinal());
    }

    How how(Move move, int under) {
        int at = (under + 1) * MOVES + move.ordinal();
        How known = hows[at];
        if (known == null) {
            known = new How(move, under);
            hows[at] = known;
        }
        return known;
    }

    /** Whether it is held to a pipe that passes it: adhered, or a collar, whose lip grips the pipe. */
    boolean isHeldToPipe(int n) {
        return isAdhered(n) || piece(n).material().kind() == MaterialKind.COLLAR;
    }

    boolean isBatten(int n) {
        return has(n, BATTEN);
    }

    /** Whether its lower edge lets water go clear of what is below. */
    boolean hasDrip(int n) {
        return piece(n).material().profile().dripMm().orElse(0) > 0;
    }

    boolean isDammed(int n, boolean right) {
        Profile p = piece(n).material().profile();
        EndDams dams = p.endDams().orElse(EndDams.NONE);
        return right ? dams.atRight() : dams.atLeft();
    }

    /** Whether a piece, or the frame, may hold a ledge: an upstand does. */
    boolean hasLedge(int n) {
        return n >= 0 && upstands[n] > 0;
    }

    /** The level of the ledge that a cell's water stands on, where the cell reaches across it: a flashing's, at the end of its upstand. */
    OptionalDouble ledge(Cell c) {
        if (!hasLedge(c.on) || !c.ground.isWall()) {
            return OptionalDouble.empty();
        }
        double y = ledges[c.on], mid = (c.x0 + c.x1) / 2.0;
        return c.lower.at(mid) <= y && y < c.upper.at(mid) ? OptionalDouble.of(y) : OptionalDouble.empty();
    }

    /** Whether cladding lies over the piece outside this gap, which is none itself. */
    boolean isSheltered(Pile pile, int gap) {
        if (piece(pile.at(gap)).material().layer() == Layer.FACE) {
            return false;
        }
        for (int k = gap + 1; k < pile.depth(); k++) {
            if (piece(pile.at(k)).material().kind() == MaterialKind.CLADDING) {
                return true;
            }
        }
        return false;
    }
}
