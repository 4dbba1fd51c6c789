package rainlap.rule.material;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Piece;

/** Which pieces on the wall drain on to which. */
final class RunOff {
    /** What is still in the rain on the finished wall; membranes and tapes are behind it. */
    private static final List<MaterialKind> BARE = List.of(MaterialKind.FLASHING, MaterialKind.TRIM, MaterialKind.CLADDING, MaterialKind.FRAME);

    private RunOff() {}

    /** A piece whose water runs on to another, and where on that one. */
    record Drain(Piece above, Piece below, List<Region> where) {
        Drain {
            where = List.copyOf(where);
        }
    }

    private record Pair(Piece above, Piece below) {}

    /**
     * Those of a caller's choice, upper and lower piece.
     *
     * @param wanted by nothing but their materials: a wall has many pieces and few materials
     */
    static List<Drain> of(Evidence e, BiPredicate<Piece, Piece> wanted) {
        Map<String, List<Face>> bare = new LinkedHashMap<>();
        BARE.stream().flatMap(kind -> e.onWall(kind).stream()).sorted(Comparator.comparingInt(Face::number))
                .forEach(f -> bare.computeIfAbsent(f.piece().material().id(), k -> new ArrayList<>()).add(f));
        Map<Pair, Drain> out = new LinkedHashMap<>();
        for (List<Face> above : bare.values()) {
            for (List<Face> below : bare.values()) {
                if (wanted.test(above.get(0).piece(), below.get(0).piece())) {
                    drains(e.stack(), above, below, out);
                }
            }
        }
        return List.copyOf(out.values());
    }

    private static void drains(Stack stack, List<Face> above, List<Face> below, Map<Pair, Drain> out) {
        for (Face a : above) {
            for (Face b : below) {
                if (a.number() != b.number() && mayReach(a, b)) {
                    List<Region> there = Overlay.intersection(shadow(exposed(stack, a)), exposed(stack, b));
                    if (!there.isEmpty()) {
                        out.merge(new Pair(a.piece(), b.piece()), new Drain(a.piece(), b.piece(), there), RunOff::joined);
                    }
                }
            }
        }
    }

    private static Drain joined(Drain x, Drain y) {
        List<Region> both = new ArrayList<>(x.where);
        both.addAll(y.where);
        return new Drain(x.above, x.below, both);
    }

    private static boolean mayReach(Face above, Face below) {
        return above.box().minX() < below.box().maxX() && below.box().minX() < above.box().maxX()
                && below.box().minY() < above.box().maxY();
    }

    private static List<Region> exposed(Stack stack, Face f) {
        List<Region> over = stack.meeting(f.surface(), f.box()).stream().filter(g -> g != f && stack.isOutside(g, f)).map(Face::region).toList();
        return over.isEmpty() ? List.of(f.region()) : Overlay.difference(List.of(f.region()), Overlay.union(over));
    }

    /** All that lies plumb beneath some part of a region. */
    private static List<Region> shadow(List<Region> regions) {
        List<Region> out = new ArrayList<>();
        for (Region r : regions) {
            long foot = r.box().minY() - FAR;
            for (Segment e : r.edges()) {
                if (e.a().x() != e.b().x()) {
                    boolean rightwards = e.a().x() < e.b().x();
                    Point a = rightwards ? e.a() : e.b(), b = rightwards ? e.b() : e.a();
                    out.add(Region.of(List.of(new Point(a.x(), foot), new Point(b.x(), foot), b, a)));
                }
            }
        }
        return out.isEmpty() ? out : Overlay.union(out);
    }

    /** Further down than any wall reaches, grid units. */
    private static final long FAR = 2_000_000;
}
