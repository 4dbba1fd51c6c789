package rainlap.stack;

import java.util.List;
import java.util.Optional;
import rainlap.geom.BoxCut;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.wall.Cut;
import rainlap.wall.CutPattern;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/** The part of an opening's area, laid flat, that folds about one of its edges. Empty where the pattern leaves nothing. */
record Flap(Optional<Region> zone) {
    static final List<Side> SIDES = List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD);

    static Flap of(Opening o, Side side, Optional<Cut> cut) {
        CutPattern pattern = cut.map(Cut::pattern).orElse(CutPattern.DIAGONAL);
        if (!pattern.leaves(side)) {
            return new Flap(Optional.empty());
        }
        long depth = Math.min(o.reveal(), cut.map(Cut::returned).orElse(o.reveal()));
        boolean slopesAtStart = pattern.leaves(atStart(side)), slopesAtEnd = pattern.leaves(atEnd(side));
        depth = Math.min(depth, reach(o));
        long along = o.along(side);
        if (depth <= 0) {
            return new Flap(Optional.empty());
        }
        List<Point> flat = List.of(new Point(0, 0), new Point(along, 0),
                new Point(along - (slopesAtEnd ? depth : 0), depth), new Point(slopesAtStart ? depth : 0, depth));
        return new Flap(Optional.of(Region.of(flat.stream().map(p -> o.toWall(side, p)).toList())));
    }

    /** Half the way across, and no further than where two bisectors meet. */
    private static long reach(Opening o) {
        return Math.min(o.rect().width(), o.rect().height()) / 2;
    }

    /** The side met at u = 0. */
    private static Side atStart(Side side) {
        return side.isJamb() ? Side.SILL : Side.LEFT;
    }

    private static Side atEnd(Side side) {
        return side.isJamb() ? Side.HEAD : Side.RIGHT;
    }

    /** What of this flap a sheet really fills. */
    List<Region> within(List<Region> sheet) {
        if (zone.isEmpty()) {
            return List.of();
        }
        Region z = zone.get();
        if (sheet.stream().allMatch(Region::isConvex)) {
            return sheet.stream().flatMap(r -> BoxCut.within(z.shell(), r.shell()).stream()).toList();
        }
        return Overlay.intersection(sheet, List.of(z));
    }
}
