package rainlap.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.BoxCut;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.wall.Cut;
import rainlap.wall.CutPattern;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * The part of an opening's area, laid flat, that folds about one of its edges.
 *
 * @param depth how far it reaches into the opening, grid units; nothing is left where it is 0
 */
record Flap(Opening opening, Side side, CutPattern pattern, long depth) {
    static final List<Side> SIDES = List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD);

    static Flap of(Opening o, Side side, Optional<Cut> cut) {
        CutPattern pattern = cut.map(Cut::pattern).orElse(CutPattern.DIAGONAL);
        long depth = Math.min(o.reveal(), cut.map(Cut::returned).orElse(o.reveal()));
        return new Flap(o, side, pattern, pattern.leaves(side) ? Math.min(depth, reach(o)) : 0);
    }

    /** Half the way across, and no further than where two bisectors meet. */
    private static long reach(Opening o) {
        return Math.min(o.rect().width(), o.rect().height()) / 2;
    }

    /** The side met at u = 0. */
    private Side atStart() {
        return side.isJamb() ? Side.SILL : Side.LEFT;
    }

    private Side atEnd() {
        return side.isJamb() ? Side.HEAD : Side.RIGHT;
    }

    private Point at(long u, long v) {
        return opening.toWall(side, new Point(u, v));
    }

    private Region zone() {
        long along = opening.along(side);
        return Region.of(List.of(at(0, 0), at(along, 0), at(along - (pattern.leaves(atEnd()) ? depth : 0), depth),
                at(pattern.leaves(atStart()) ? depth : 0, depth)));
    }

    /** What of this flap a sheet really fills. */
    List<Region> within(List<Region> sheet) {
        if (depth <= 0) {
            return List.of();
        }
        for (Region r : sheet) {
            if (!r.isBox() && !r.isConvex()) {
                return Overlay.intersection(sheet, List.of(zone()));
            }
        }
        Box box = new Segment(at(0, 0), at(opening.along(side), depth)).box();
        List<Region> out = new ArrayList<>(1);
        for (Region r : sheet) {
            if (r.isBox() && r.box().contains(box)) {
                out.add(zone());
            } else if (r.box().overlaps(box)) {
                out.addAll(BoxCut.within(zone().shell(), r.shell()));
            }
        }
        return out;
    }
}
