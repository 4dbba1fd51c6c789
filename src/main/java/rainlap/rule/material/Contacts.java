package rainlap.rule.material;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.joint.Sheets;
import rainlap.material.Layer;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/** Which pieces touch, and where. */
final class Contacts {
    /** Half of the 1 mm that a contact must be wide, grid units. */
    private static final long HALF_A_MM = 50;

    private Contacts() {}

    /** Two pieces that touch on a surface, the outer one first. */
    record Contact(Piece outer, Piece inner, Surface on, List<Region> where) {
        Contact {
            where = List.copyOf(where);
        }
    }

    private record Pair(Piece outer, Piece inner) {}

    /** What of a piece a choice depends on: a wall has many pieces and few materials. */
    private record Kind(String material, boolean stuck) {
        static Kind of(Piece p) {
            return new Kind(p.material().id(), isStuck(p));
        }
    }

    /**
     * Those of a caller's choice, outer and inner piece, once for each two pieces: on the first surface where they touch.
     *
     * @param choice by nothing but their materials and whether they are stuck
     */
    static List<Contact> of(Evidence e, BiPredicate<Piece, Piece> choice) {
        Stack stack = e.stack();
        Map<Kind, Set<Kind>> wanted = wanted(e, choice);
        Map<Pair, Contact> out = new LinkedHashMap<>();
        for (Surface s : wanted.isEmpty() ? List.<Surface>of() : stack.surfaces()) {
            for (Face a : stack.on(s)) {
                Set<Kind> inner = wanted.getOrDefault(Kind.of(a.piece()), Set.of());
                for (Face b : inner.isEmpty() ? List.<Face>of() : stack.meeting(s, a.box())) {
                    if (a.number() != b.number() && stack.isOutside(a, b) && inner.contains(Kind.of(b.piece())) && !standsOff(stack, a, b)) {
                        add(stack, a, b, out);
                    }
                }
            }
        }
        return List.copyOf(out.values());
    }

    /** Which kinds are chosen beneath which, of those on this wall; kinds with none are left out. */
    private static Map<Kind, Set<Kind>> wanted(Evidence e, BiPredicate<Piece, Piece> choice) {
        Map<Kind, Piece> kinds = e.shared().of(Kind.class, () -> kinds(e));
        Map<Kind, Set<Kind>> out = new HashMap<>();
        kinds.forEach((a, outer) -> kinds.forEach((b, inner) -> {
            if (choice.test(outer, inner)) {
                out.computeIfAbsent(a, k -> new HashSet<>()).add(b);
            }
        }));
        return out;
    }

    private static Map<Kind, Piece> kinds(Evidence e) {
        Map<Kind, Piece> kinds = new HashMap<>();
        for (List<Piece> all : e.byMaterial()) {
            List<Piece> unlike = mayBeStuck(all.get(0).material().kind()) ? all : all.subList(0, 1);
            Stream.of(true, false).forEach(stuck -> unlike.stream().filter(p -> isStuck(p) == stuck).findFirst().ifPresent(p -> kinds.put(Kind.of(p), p)));
        }
        return kinds;
    }

    private static void add(Stack stack, Face outer, Face inner, Map<Pair, Contact> out) {
        Pair pair = new Pair(outer.piece(), inner.piece());
        if (out.containsKey(pair) && !out.get(pair).on().equals(outer.surface())) {
            return;
        }
        List<Region> there = touching(stack, outer, inner);
        if (!there.isEmpty()) {
            out.merge(pair, new Contact(outer.piece(), inner.piece(), outer.surface(), there), (x, y) -> {
                List<Region> both = new ArrayList<>(x.where());
                both.addAll(y.where());
                return new Contact(x.outer(), x.inner(), x.on(), both);
            });
        }
    }

    private static List<Region> touching(Stack stack, Face outer, Face inner) {
        if (!outer.box().overlaps(inner.box())) {
            return List.of();
        }
        List<Region> left = Overlay.intersection(List.of(outer.region()), List.of(inner.region()));
        if (left.isEmpty()) {
            return left;
        }
        List<Region> between = stack.meeting(outer.surface(), outer.box()).stream()
                .filter(f -> f != outer && f != inner && stack.isOutside(outer, f) && stack.isOutside(f, inner)).map(Face::region).toList();
        if (!between.isEmpty()) {
            left = Overlay.difference(left, Overlay.union(between));
        }
        return left.stream().filter(r -> !Overlay.vanishes(r, HALF_A_MM)).toList();
    }

    /** Whether a piece of the face lies on battens, and so clear of the wrap. */
    private static boolean standsOff(Stack stack, Face outer, Face inner) {
        return outer.piece().material().layer() == Layer.FACE && inner.piece().material().layer() == Layer.WRAP
                && stack.meeting(outer.surface(), outer.box()).stream().anyMatch(f -> f.kind() == MaterialKind.BATTEN
                        && f.box().overlaps(outer.box()) && stack.isOutside(outer, f));
    }

    /** Whether a piece of a kind may be stuck; all others are loose. */
    static boolean mayBeStuck(MaterialKind kind) {
        return Sheets.mayBeStrip(kind) || kind == MaterialKind.SEALANT;
    }

    /** Whether it is stuck down over its whole face, so that its adhesive and not its facing touches what is beneath. */
    static boolean isStuck(Piece p) {
        return Sheets.isStrip(p) || p.material().kind() == MaterialKind.SEALANT;
    }
}
