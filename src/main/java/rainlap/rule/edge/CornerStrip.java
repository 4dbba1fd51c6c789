package rainlap.rule.edge;

import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.Sheets;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.MendSizes;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;
import rainlap.wall.Surface;

/**
 * The strip of membrane that mends a stretch of a building corner: over the sheet below, in behind the one above, and past the ends of the wall. No longer than the stretch, its upper
 * edge would lie open to what runs down, and a stretch of a millimetre could not be wrapped at all.
 *
 * @param fold the stretch
 * @param onWall what it covers, to both sides of the fold as laid flat
 * @param below the sheet that goes round below, which it laps; empty at the foot of the corner
 * @param above the outermost sheet that goes round above, behind which it is tucked in; empty at the top of the corner
 */
public record CornerStrip(Evidence evidence, Box fold, Box onWall, List<Face> below, List<Face> above) {
    /** The drawing's own tolerance: 1 mm. So near to an end of the stretch what goes round there is looked for. */
    private static final long NEAR = 100;
    /** No strip goes further, whatever a practice asks: 10 m. */
    private static final long MOST = 1_000_000;
    private static final Set<EdgeRole> TOPS = Set.of(EdgeRole.EAVE, EdgeRole.VERGE, EdgeRole.PARAPET);

    /** For a stretch of a fold of the building. */
    public static CornerStrip at(Evidence e, Box fold) {
        Box corner = e.buildingCorners().stream().map(c -> c.edge().line().box()).filter(b -> b.contains(fold)).findFirst().orElse(fold);
        long lap = MendSizes.lap(e), wrap = Math.min(MOST, e.practice().get(Limit.CORNER_WRAP).hundredths());
        Box beside = new Box(fold.minX() - wrap, fold.minY(), fold.maxX() + wrap, fold.maxY());
        boolean atFoot = fold.minY() <= corner.minY() + NEAR, atTop = fold.maxY() >= corner.maxY() - NEAR;
        List<Face> below = atFoot ? List.of() : round(e, fold, fold.minY() - NEAR), above = atTop ? List.of() : round(e, fold, fold.maxY());
        long foot = atFoot ? pastFoot(e, beside) : fold.minY() - (below.isEmpty() ? 0 : lap);
        long head = atTop ? overTop(e, beside) : fold.maxY() + (above.isEmpty() ? 0 : lap);
        return new CornerStrip(e, fold, new Box(beside.minX(), foot, beside.maxX(), head), below, above);
    }

    /** The outermost membrane that goes round just above a level, if one does. */
    private static List<Face> round(Evidence e, Box fold, long level) {
        Box left = new Box(fold.minX() - 1, level + 1, fold.minX(), level + NEAR - 1), right = new Box(fold.maxX(), level + 1, fold.maxX() + 1, level + NEAR - 1);
        List<Face> there = membranes(e, left).filter(f -> isOver(f, right)).toList();
        return there.stream().filter(f -> there.stream().noneMatch(g -> g != f && e.stack().isOutside(g, f))).limit(1).toList();
    }

    private static Stream<Face> membranes(Evidence e, Box at) {
        return e.stack().meeting(Surface.WALL, at).stream().filter(f -> f.kind() == MaterialKind.MEMBRANE && isOver(f, at));
    }

    private static boolean isOver(Face f, Box at) {
        return f.region().overlaps(Region.of(at));
    }

    /** As far down as the sheets beside it, and no less than is asked of them. */
    private static long pastFoot(Evidence e, Box beside) {
        long end = beside.minY();
        OptionalLong foot = membranes(e, new Box(beside.minX(), end - NEAR, beside.maxX(), end - 1)).mapToLong(f -> f.box().minY()).min();
        return Math.min(foot.orElse(end), end - asked(e, beside, end, Set.of(EdgeRole.BASE), Limit.BASE_COVER));
    }

    private static long overTop(Evidence e, Box beside) {
        long end = beside.maxY();
        OptionalLong head = membranes(e, new Box(beside.minX(), end + 1, beside.maxX(), end + NEAR)).mapToLong(f -> f.box().maxY()).max();
        return Math.max(head.orElse(end), end + asked(e, beside, end, TOPS, Limit.TOP_TURN));
    }

    /** What practice asks past the end of the corner, where a side of the wall with such a role meets it. */
    private static long asked(Evidence e, Box beside, long end, Set<EdgeRole> roles, Limit limit) {
        Point at = new Point((beside.minX() + beside.maxX()) / 2, end);
        return e.elevation().outline().edges().stream().anyMatch(s -> roles.contains(s.role()) && s.line().box().grow(NEAR).contains(at))
                ? e.practice().get(limit).hundredths() : 0;
    }

    /** What is stuck over the fold already, or over the foot of the sheet above, and sealed anywhere there: it comes off first, and the strip goes in behind it. */
    public List<String> stuck() {
        return evidence.stack().meeting(Surface.WALL, onWall).stream().filter(f -> isOver(f, onWall)).filter(f -> isBead(f) || Sheets.isStrip(f) && isTape(f) && isInTheWay(f))
                .map(f -> f.piece().id()).distinct().toList();
    }

    private boolean isInTheWay(Face f) {
        Box along = new Box(fold.minX() - 1, onWall.minY(), fold.maxX() + 1, onWall.maxY()), foot = new Box(onWall.minX(), fold.maxY(), onWall.maxX(), onWall.maxY());
        return isOver(f, along) || isOver(f, foot) && above.stream().anyMatch(a -> evidence.stack().isOutside(f, a) && f.region().overlaps(a.region()));
    }

    private static boolean isTape(Face f) {
        return f.kind() == MaterialKind.TAPE;
    }

    private static boolean isBead(Face f) {
        return f.kind() == MaterialKind.SEALANT;
    }

    /** The membranes it is laid over, in laying order. */
    public List<Face> beneath() {
        return membranes(evidence, onWall).filter(f -> above.stream().noneMatch(a -> a.piece().id().equals(f.piece().id()))).toList();
    }

    /** How far it goes to each side. */
    public long wrap() {
        return (onWall.width() - fold.width()) / 2;
    }

    /** Whether the sheet above goes on beside the strip further down, so that it is slit for it. */
    public boolean isSlit() {
        return above.stream().anyMatch(f -> isOver(f, new Box(onWall.minX(), fold.minY(), onWall.maxX(), fold.maxY())));
    }

    /** {@code Wrap a strip of membrane round it, 1350 long, from −40 to +1310, …}. */
    String remedy() {
        List<String> off = stuck();
        return (off.isEmpty() ? "Wrap" : "Take " + PieceWords.list(off) + " off there and wrap") + " a strip of membrane round it, " + LengthText.mm(onWall.height()) + " long, from "
                + Place.level(onWall.minY()) + " to " + Place.level(onWall.maxY()) + ", " + LengthText.mm(wrap()) + " to each side, over the sheets there" + lapped() + tucked()
                + ". Tape its edges and the fold" + (off.isEmpty() ? "" : " anew") + ".";
    }

    private String lapped() {
        return below.isEmpty() ? "" : ", lapping " + below.get(0).piece().id() + " below by " + LengthText.mm(fold.minY() - onWall.minY());
    }

    private String tucked() {
        if (above.isEmpty()) {
            return "";
        }
        String by = LengthText.mm(onWall.maxY() - fold.maxY()), sheet = above.get(0).piece().id();
        return ", its upper end tucked in by " + by + (isSlit() ? " through a slit in " + sheet + " at " + Place.level(fold.maxY()) : " behind " + sheet);
    }
}
