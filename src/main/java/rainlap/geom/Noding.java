package rainlap.geom;

import java.util.List;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.IntersectionAdder;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.union.UnionStrategy;

/**
 * How the edges of an overlay are split where they meet. Level and plumb edges meet on the grid, so crossing them once is exact; where any edge slopes, crossings are
 * rounded to the grid, and what that moves is split anew (snap rounding, several times as dear). Both give the same areas where no edge slopes.
 */
enum Noding {
    ONCE {
        @Override
        Geometry overlay(Geometry a, Geometry b, int op) {
            LineIntersector crossing = new RobustLineIntersector();
            crossing.setPrecisionModel(GRID);
            return OverlayNG.overlay(a, b, op, GRID, new MCIndexNoder(new IntersectionAdder(crossing)));
        }

        @Override
        Geometry union(List<Geometry> parts, GeometryFactory by) {
            UnaryUnionOp all = new UnaryUnionOp(parts, by);
            all.setUnionFunction(new ByOverlay());
            return all.union();
        }
    },
    SNAP_ROUNDED {
        @Override
        Geometry overlay(Geometry a, Geometry b, int op) {
            return OverlayNG.overlay(a, b, op, GRID);
        }

        @Override
        Geometry union(List<Geometry> parts, GeometryFactory by) {
            return UnaryUnionNG.union(parts, by, GRID);
        }
    };

    /** JTS coordinates are grid units. */
    static final PrecisionModel GRID = new PrecisionModel(1);

    /** The dearer one only where it is needed. */
    static Noding of(List<Region> regions) {
        for (Region r : regions) {
            if (!r.isUpright()) {
                return SNAP_ROUNDED;
            }
        }
        return ONCE;
    }

    Noding and(Noding other) {
        return this == ONCE ? other : this;
    }

    abstract Geometry overlay(Geometry a, Geometry b, int op);

    abstract Geometry union(List<Geometry> parts, GeometryFactory by);

    private static final class ByOverlay implements UnionStrategy {
        @Override
        public Geometry union(Geometry a, Geometry b) {
            return ONCE.overlay(a, b, OverlayNG.UNION);
        }

        @Override
        public boolean isFloatingPrecision() {
            return false;
        }
    }
}
