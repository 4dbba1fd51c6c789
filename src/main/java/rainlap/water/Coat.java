package rainlap.water;

import java.util.OptionalDouble;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.joint.Sheets;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.EndDams;
import rainlap.material.Layer;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.LayingOrder;
import rainlap.wall.Piece;

/** What the trace asks of each piece, by number. */
final class Coat {
    private final Elevation elevation;
    private final LayingOrder order;
    private final Bond[] bonds;
    private final boolean[] adhered;
    private final boolean[] strips;

    Coat(Stack stack) {
        this.order = stack.order();
        this.elevation = stack.elevation();
        int n = elevation.pieces().size();
        bonds = new Bond[n];
        adhered = new boolean[n];
        strips = new boolean[n];
        for (int i = 0; i < n; i++) {
            Piece p = elevation.pieces().get(i);
            bonds[i] = p.bond();
            adhered[i] = p.bond().isFull();
            strips[i] = Sheets.isStrip(p);
        }
    }

    Piece piece(int n) {
        return elevation.pieces().get(n);
    }

    boolean isAdhered(int n) {
        return adhered[n];
    }

    boolean isStrip(int n) {
        return strips[n];
    }

    /** Whether piece a lies outside piece b where they overlap. */
    boolean isOutside(int a, int b) {
        return order.isOutside(a, b);
    }

    boolean seals(int n, Edge e) {
        return bonds[n].seals(e);
    }

    /** Whether it is held to a pipe that passes it: adhered, or a collar, whose lip grips the pipe. */
    boolean isHeldToPipe(int n) {
        return adhered[n] || piece(n).material().kind() == MaterialKind.COLLAR;
    }

    boolean isBatten(int n) {
        return piece(n).material().kind() == MaterialKind.BATTEN;
    }

    /** How far the ledge of a flashing lies below its highest point, grid units; empty for what holds none. */
    OptionalDouble upstand(int n) {
        Piece p = piece(n);
        OptionalDouble up = p.material().profile().upstandMm();
        return p.material().kind() == MaterialKind.FLASHING && up.orElse(0) > 0 ? OptionalDouble.of(up.getAsDouble() * Grid.MM)
                : OptionalDouble.empty();
    }

    boolean isDammed(int n, boolean right) {
        Profile p = piece(n).material().profile();
        EndDams dams = p.endDams().orElse(EndDams.NONE);
        return right ? dams.atRight() : dams.atLeft();
    }

    /** The level at which a flashing's upstand ends, not below its lowest point. */
    double ledge(int n, double upstand) {
        Box b = piece(n).wallBox().orElseThrow();
        return Math.max(b.minY(), b.maxY() - upstand);
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
