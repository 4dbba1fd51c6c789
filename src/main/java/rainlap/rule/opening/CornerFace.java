package rainlap.rule.opening;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.joint.OpeningCorner;
import rainlap.joint.OpeningEdge;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * One of the two faces of an opening's corner.
 *
 * @param returned how deep the return beside the corner goes; 0 where there is none, or no wall to turn from
 * @param deep how deep the corner is looked at
 * @param along length of the face's edge
 * @param atStart whether the corner lies at the edge's start
 * @param bare what lies bare in the square as deep as {@code deep}, without parts thinner than 1 mm
 */
record CornerFace(Side side, AskedReturn asked, long returned, long deep, long along, boolean atStart, List<Region> bare) {

    /** Sill or head first, then the jamb. */
    static List<CornerFace> both(Evidence e, OpeningCorner c) {
        return List.of(of(e, c, c.level(), c.onLevel()), of(e, c, c.jamb(), c.onJamb()));
    }

    private static CornerFace of(Evidence e, OpeningCorner c, Side side, List<Region> bare) {
        Opening o = c.opening();
        AskedReturn asked = AskedReturn.of(e, o, side);
        long along = o.along(side), beside = Math.min(o.reveal(), along / 2);
        boolean atStart = side.isJamb() ? c.level() == Side.SILL : c.jamb() == Side.LEFT;
        double place = atStart ? beside : along - beside;
        boolean hasWall = asked.wall().contains(place);
        long returned = hasWall ? Math.round(edge(e, o, side).depth().leastWithin(place, place)) : 0;
        long deep = Math.min(o.reveal(), Math.max(asked.deep(), returned));
        return new CornerFace(side, asked, returned, deep, along, atStart, within(bare, deep, along, atStart));
    }

    private static OpeningEdge edge(Evidence e, Opening o, Side side) {
        for (OpeningEdge edge : e.edges(o)) {
            if (edge.side() == side) {
                return edge;
            }
        }
        throw new IllegalArgumentException(o.id() + " has no reveal");
    }

    private static List<Region> within(List<Region> bare, long deep, long along, boolean atStart) {
        if (bare.isEmpty() || deep <= 0) {
            return List.of();
        }
        Box square = new Box(atStart ? 0 : along - deep, 0, atStart ? deep : along, deep);
        List<Region> out = new ArrayList<>();
        for (Region r : bare.stream().flatMap(b -> Overlay.intersection(List.of(b), List.of(Region.of(square))).stream()).toList()) {
            if (!Overlay.vanishes(r, AskedReturn.LEAST / 2)) {
                out.add(r);
            }
        }
        return List.copyOf(out);
    }

    /** Whether a return lies beside the corner on this face, so that a bare part of it is the corner's own fault. */
    boolean isTurned() {
        return returned > 0;
    }

    /** How deep, from the wall's face, the whole width of the square is covered. */
    long covered() {
        return bare.stream().mapToLong(r -> r.box().minY()).min().orElse(deep);
    }

    /** How far from the corner the bare part reaches along the edge. */
    long reach() {
        return bare.stream().mapToLong(r -> atStart ? r.box().maxX() : along - r.box().minX()).max().orElse(0);
    }

    /** {@code 90 × 90}: along the edge by inwards. */
    String size() {
        Box b = bare.stream().map(Region::box).reduce(Box::join).orElseThrow();
        return LengthText.mm(b.width()) + " × " + LengthText.mm(b.height());
    }
}
