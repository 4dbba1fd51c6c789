package rainlap.rule.tape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.joint.Sheets;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * The strips round one opening: adhered tapes that run along at least half of one of its sides, on the reveal or on the wall no further
 * than {@link #NEAR} from its edge. Shorter ones are corner patches and belong to no side.
 */
final class OpeningStrips {
    /** 50 mm: past the flange of a window. Our own choice: common practice, no source. */
    static final long NEAR = 5_000;
    /** How far outside the edge one looks for a strip; any strip of 25 mm and more within {@link #NEAR} meets one of these lines. */
    private static final double[] LOOK = {0.5, NEAR / 2.0, NEAR + 0.5};
    private static final List<Side> SIDES = List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD);

    /** From the lowest to the highest: the order of laying, the reverse of the order in which water comes by. */
    enum Level {
        SILL("sill"), JAMB("jamb"), HEAD("head");

        private final String word;

        Level(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }

        static Level of(Side side) {
            return side.isJamb() ? JAMB : side == Side.SILL ? SILL : HEAD;
        }
    }

    /** One strip with its faces at the opening and the levels it runs along. */
    record Strip(List<Face> faces, Set<Level> levels) {
        Strip {
            faces = List.copyOf(faces);
            levels = Collections.unmodifiableSet(EnumSet.copyOf(levels));
        }

        String id() {
            return faces.get(0).piece().id();
        }

        Level lowest() {
            return levels.iterator().next();
        }

        Level highest() {
            return List.copyOf(levels).get(levels.size() - 1);
        }
    }

    private OpeningStrips() {}

    /** In laying order. */
    static List<Strip> of(Stack stack, Opening o) {
        Map<Integer, List<Face>> byPiece = new TreeMap<>();
        stack.meeting(Surface.WALL, o.rect().grow(NEAR)).forEach(f -> add(f, byPiece));
        SIDES.forEach(side -> stack.on(new Surface(o.id(), side)).forEach(f -> add(f, byPiece)));
        List<Strip> out = new ArrayList<>();
        for (List<Face> faces : byPiece.values()) {
            Set<Level> levels = EnumSet.noneOf(Level.class);
            for (Side s : SIDES) {
                if (2 * reach(o, s, faces) >= o.along(s) && 2 * along(o, s, faces) >= o.along(s)) {
                    levels.add(Level.of(s));
                }
            }
            if (!levels.isEmpty()) {
                out.add(new Strip(faces, levels));
            }
        }
        return out;
    }

    private static void add(Face f, Map<Integer, List<Face>> byPiece) {
        if (Sheets.isStrip(f) && f.kind() == MaterialKind.TAPE) {
            byPiece.computeIfAbsent(f.number(), n -> new ArrayList<>()).add(f);
        }
    }

    /** No less than how much of a side's length these faces accompany: as much of it as they lie beside, near or far. */
    private static long reach(Opening o, Side side, List<Face> faces) {
        long out = 0;
        for (Face f : faces) {
            Box b = f.box(), r = o.rect();
            if (f.surface().side() == side) {
                out += b.width();
            } else if (f.surface().isWall()) {
                out += Math.max(0, side.isJamb() ? Math.min(b.maxY(), r.maxY()) - Math.max(b.minY(), r.minY()) : Math.min(b.maxX(), r.maxX()) - Math.max(b.minX(), r.minX()));
            }
        }
        return out;
    }

    /** How much of a side's length these faces accompany, grid units. */
    private static double along(Opening o, Side side, List<Face> faces) {
        EdgeFrame edge = EdgeFrame.of(o.edge(side));
        double outwards = side == Side.HEAD || side == Side.LEFT ? 1 : -1;
        Intervals out = Intervals.NONE;
        for (Face f : faces) {
            if (f.surface().isWall()) {
                for (double t : LOOK) {
                    out = out.union(edge.inside(f.region(), outwards * t));
                }
            } else if (f.surface().side() == side) {
                Box b = f.box();
                out = out.union(Intervals.of(Math.max(0, b.minX()), Math.min(o.along(side), b.maxX())));
            }
        }
        return out.total();
    }
}
