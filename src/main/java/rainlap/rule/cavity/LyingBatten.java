package rainlap.rule.cavity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.material.MaterialKind;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.LevelBattens;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;
import rainlap.wall.Surface;

/**
 * A batten that lies across the cavity.
 *
 * @param top its upper edges, from left to right
 */
record LyingBatten(Face face, List<Segment> top) {
    /** A batten this near below the top of the wall, or below a flashing, has nothing above it from which water could come: 100 mm. Our own choice. */
    private static final long NEAR = Grid.of(100);
    private static final List<EdgeRole> TOPS = List.of(EdgeRole.EAVE, EdgeRole.VERGE, EdgeRole.PARAPET);

    /** Those of a wall that have cladding before them, in laying order. */
    static List<LyingBatten> of(Evidence e) {
        List<Face> sheets = Cladding.sheets(e);
        return e.onWall(MaterialKind.BATTEN).stream().filter(f -> !Battens.isUpright(f)
                && sheets.stream().anyMatch(s -> e.stack().isOutside(s, f) && s.region().overlaps(f.region())))
                .map(f -> new LyingBatten(f, top(f))).toList();
    }

    private static List<Segment> top(Face f) {
        List<Segment> edges = f.freeEdges().stream().filter(s -> s.a().x() - s.b().x() > Math.abs(s.a().y() - s.b().y())).map(Segment::reversed)
                .sorted(Comparator.comparingLong((Segment s) -> s.a().x())).toList();
        Box b = f.box();
        return edges.isEmpty() ? List.of(new Segment(new Point(b.minX(), b.maxY()), new Point(b.maxX(), b.maxY()))) : edges;
    }

    /** Its least fall, degrees from level. */
    double fallDeg() {
        return top.stream().mapToDouble(s -> Math.toDegrees(Math.atan2(Math.abs(s.b().y() - s.a().y()), s.b().x() - s.a().x()))).min().orElse(0);
    }

    /** Whether it falls to a place between its ends. */
    boolean hasLowPlace() {
        for (int i = 0; i + 1 < top.size(); i++) {
            if (top.get(i).b().y() < top.get(i).a().y() && top.get(i + 1).b().y() > top.get(i + 1).a().y()) {
                return true;
            }
        }
        return false;
    }

    /** Why water is not held up by it, however level it lies; empty where it may be. */
    Stream<String> excuses(Evidence e) {
        List<String> out = new ArrayList<>();
        if (Battens.isMesh(face)) {
            out.add("it lets water through");
        }
        if (LevelBattens.isPackedOff(e.stack(), face)) {
            out.add("it lies on other battens");
        }
        if (isAtTop(e)) {
            out.add("it lies at the top of the wall");
        }
        if (isUnderFlashing(e)) {
            out.add("a flashing leads water out over it");
        }
        return out.stream();
    }

    private boolean isAtTop(Evidence e) {
        return e.elevation().outline().edges().stream().filter(o -> TOPS.contains(o.role()))
                .anyMatch(o -> top.stream().allMatch(s -> isNearBelow(o.line(), s.a().x(), s.a().y()) && isNearBelow(o.line(), s.b().x(), s.b().y())));
    }

    private static boolean isNearBelow(Segment line, long x, long y) {
        Box b = line.box();
        if (x < b.minX() || x > b.maxX() || b.width() == 0) {
            return false;
        }
        double at = line.a().y() + (double) (line.b().y() - line.a().y()) * (x - line.a().x()) / (line.b().x() - line.a().x());
        return at - y <= NEAR;
    }

    private boolean isUnderFlashing(Evidence e) {
        Box b = face.box(), above = new Box(b.minX(), b.maxY(), b.maxX(), b.maxY() + NEAR);
        Intervals led = Intervals.unionOf(e.stack().meeting(Surface.WALL, above).stream()
                .filter(f -> Cladding.isOf(f, MaterialKind.FLASHING) && f.piece().material().profile().fallDeg().orElse(0) > 0)
                .map(f -> Cladding.across(f, above)).toList());
        return Intervals.of(b.minX(), b.maxX()).minus(led).isEmpty();
    }

    /** How far the nearer of the next battens stands from one of its ends, within a distance; empty where none stands there. */
    OptionalLong gap(Evidence e, long within) {
        Box b = face.box(), left = end(b.minX()), right = end(b.maxX());
        return Stream.of(gap(e, new Box(b.minX() - within, left.minY(), b.minX(), left.maxY()), true),
                gap(e, new Box(b.maxX(), right.minY(), b.maxX() + within, right.maxY()), false)).flatMapToLong(OptionalLong::stream).min();
    }

    /** What of it lies within 1 mm of an end. */
    private Box end(long x) {
        return Box.of(face.region().shell().points().stream().filter(p -> Math.abs(p.x() - x) <= Grid.of(1)).toList());
    }

    private OptionalLong gap(Evidence e, Box beside, boolean left) {
        return e.stack().meeting(Surface.WALL, beside).stream()
                .filter(f -> f != face && Cladding.isOf(f, MaterialKind.BATTEN) && !Battens.isMesh(f)).map(f -> Cladding.across(f, beside)).filter(i -> !i.isEmpty())
                .mapToLong(i -> Math.round(left ? beside.maxX() - i.to(i.count() - 1) : i.from(0) - beside.minX())).min();
    }
}
