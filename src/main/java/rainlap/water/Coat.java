package rainlap.water;

import java.util.OptionalDouble;
import rainlap.geom.Grid;
import rainlap.joint.Sheets;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.EndDams;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;

/** What the trace asks of each piece, by number. */
final class Coat {
    private final Elevation elevation;
    private final Bond[] bonds;
    private final boolean[] adhered;
    private final boolean[] strips;

    Coat(Elevation elevation) {
        this.elevation = elevation;
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

    boolean seals(int n, Edge e) {
        return bonds[n].seals(e);
    }

    boolean isBatten(int n) {
        return piece(n).material().kind() == MaterialKind.BATTEN;
    }

    /** How far the ledge of a flashing lies below its highest point, grid units; empty for what holds none. */
    OptionalDouble upstand(int n) {
        Piece p = piece(n);
        OptionalDouble up = p.profile().upstandMm();
        return p.material().kind() == MaterialKind.FLASHING && up.orElse(0) > 0 ? OptionalDouble.of(up.getAsDouble() * Grid.MM)
                : OptionalDouble.empty();
    }

    boolean isDammed(int n, boolean right) {
        Profile p = piece(n).profile();
        EndDams dams = p.endDams().orElse(EndDams.NONE);
        return right ? dams.atRight() : dams.atLeft();
    }
}
