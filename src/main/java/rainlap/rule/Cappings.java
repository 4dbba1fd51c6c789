package rainlap.rule;

import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.OutlineEdge;

/** Which trims and flashings cap a parapet: those that cross its edge and run along it, and do not only end there as a corner trim does. */
public final class Cappings {
    private Cappings() {}

    /** Whether a flashing caps a parapet: it is judged as a capping and not as a flashing. */
    public static boolean isCapping(Elevation e, Face flashing) {
        if (flashing.surface().isWall()) {
            for (OutlineEdge o : e.outline().edges()) {
                if (o.role() == EdgeRole.PARAPET && isAlong(flashing, EdgeFrame.of(o.line()))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether it is a trim or flashing that crosses an edge and runs along it for longer than it comes down from it. */
    public static boolean isAlong(Face f, EdgeFrame edge) {
        MaterialKind kind = f.kind();
        if (kind != MaterialKind.TRIM && kind != MaterialKind.FLASHING) {
            return false;
        }
        Intervals across = f.across(edge, 0, edge.length());
        return !across.isEmpty() && across.total() > down(f, edge).least();
    }

    /** How far it comes down over the wall's face, square to the edge. */
    public static Profile down(Face f, EdgeFrame edge) {
        Profile.Builder out = new Profile.Builder();
        Intervals across = f.across(edge, 0, edge.length());
        for (int i = 0; i < across.count(); i++) {
            out.add(f.runsOn(edge, across.from(i), across.to(i)));
        }
        return out.build();
    }
}
