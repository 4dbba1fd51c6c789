package rainlap.building;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rainlap.building.Sheet.Part;
import rainlap.building.View.Flat;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.Layer;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.wall.Cut;
import rainlap.wall.Elevation;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/**
 * One wall of a building, in its own coordinates: as it is built, with what comes round its corners, and laid flat with the walls beside it.
 *
 * @param asBuilt the wall alone; pieces of its neighbours that come round lie on it, membranes that end at the fold beside it
 * @param flat the wall and its neighbours side by side as one elevation, the joined corners within it
 * @param left the joined corner at its left end, as its outline runs, if one is joined
 * @param right the joined corner at its right end
 * @param together pieces that it and a neighbour draw from both sides of a corner, each as this wall and the neighbour call it
 * @param round ids of the pieces of neighbours that come round onto it
 * @param leftOut ids of its own pieces that are drawn wholly beyond a joined corner
 */
public record Unfolded(Elevation asBuilt, Elevation flat, Optional<OutlineEdge> left, Optional<OutlineEdge> right,
        List<List<String>> together, List<String> round, List<String> leftOut) {
    /** How far beyond a fold pieces of a neighbour are carried along: as its own commonly are, 300 mm. */
    private static final long BESIDE = 300 * Grid.MM;

    public Unfolded {
        together = together.stream().map(List::copyOf).toList();
        round = List.copyOf(round);
        leftOut = List.copyOf(leftOut);
    }

    /** A wall of a building, by its number. */
    public static Unfolded of(Building building, int wall) {
        View view = View.of(building, wall);
        Laying laying = new Laying(view);
        Names names = new Names(view, laying);
        List<Corner> corners = view.corners();
        int own = view.own();
        Elevation e = view.wall().elevation();
        List<Piece> asBuilt = asBuilt(view, laying, names);
        List<Piece> flat = laying.order().stream().map(s -> names.piece(s, s.shapes(corners), s.cuts(), laying.order())).toList();
        return new Unfolded(e.withPieces(asBuilt), flat(view, corners, flat),
                own > 0 ? Optional.of(edge(corners.get(own - 1), false)) : Optional.empty(),
                own < corners.size() ? Optional.of(edge(corners.get(own), true)) : Optional.empty(),
                together(laying, names, own), round(e, asBuilt),
                laying.leftOut());
    }

    private static List<String> round(Elevation wall, List<Piece> asBuilt) {
        Set<String> own = wall.pieces().stream().map(Piece::id).collect(Collectors.toSet());
        Box w = wall.outline().box();
        return asBuilt.stream().filter(p -> !own.contains(p.id()) && p.wallBox().filter(b -> b.maxX() > w.minX() && b.minX() < w.maxX()).isPresent())
                .map(Piece::id).toList();
    }

    /** The joined corners, left before right. */
    public List<OutlineEdge> corners() {
        List<OutlineEdge> out = new ArrayList<>();
        left.ifPresent(out::add);
        right.ifPresent(out::add);
        return out;
    }

    /** What of a side of its outline no corner is joined along. */
    public List<OutlineEdge> unjoined(OutlineEdge side) {
        return corners().stream().filter(c -> side.line().isPlumb() && side.line().a().x() == c.line().a().x()).findFirst()
                .map(c -> apart(side, c.line().box().minY(), c.line().box().maxY())).orElse(List.of(side));
    }

    private static OutlineEdge edge(Corner c, boolean right) {
        return new OutlineEdge(Corner.line(c.left(), c.from(), c.to(), right), c.role(), Optional.empty());
    }

    /** What pieces are called, here and in the files. */
    private static final class Names {
        private final int own;
        private final List<Flat> flats;
        private final Map<String, Sheet> byName = new HashMap<>();

        Names(View view, Laying laying) {
            this.own = view.own();
            this.flats = view.flats();
            laying.order().forEach(s -> s.parts().forEach(p -> byName.put(p.piece().id(), s)));
        }

        String id(Sheet s) {
            return s.of(own).orElseGet(() -> s.parts().get(0)).piece().id();
        }

        /** @param laid the sheets that are laid, in order */
        Piece piece(Sheet s, List<Shape> shapes, List<Cut> cuts, List<Sheet> laid) {
            Piece p = s.parts().get(0).piece();
            return new Piece(id(s), p.material(), shapes, under(s, laid).stream().map(this::id).toList(), p.bond(), cuts);
        }

        /** What its own wall tucks it under, and what of other walls went on over that before it. */
        private List<Sheet> under(Sheet s, List<Sheet> laid) {
            List<Sheet> out = new ArrayList<>(s.parts().stream().flatMap(part -> part.piece().under().stream()
                    .map(u -> byName.get(flats.get(part.flat()).moved().name().apply(u)))).filter(laid::contains).distinct().toList());
            if (!out.isEmpty()) {
                int from = out.stream().mapToInt(laid::indexOf).min().getAsInt();
                laid.subList(from, laid.indexOf(s)).stream().filter(x -> x.parts().stream().allMatch(p -> s.of(p.flat()).isEmpty())).forEach(out::add);
            }
            return out;
        }
    }

    private static List<Piece> asBuilt(View view, Laying laying, Names names) {
        Map<Sheet, List<Shape>> lying = new LinkedHashMap<>();
        for (Sheet s : laying.order()) {
            List<Shape> shapes = s.of(view.own()).map(p -> p.piece().shapes()).orElseGet(() -> comingRound(view, s));
            if (!shapes.isEmpty()) {
                lying.put(s, shapes);
            }
        }
        List<Sheet> laid = List.copyOf(lying.keySet());
        return laid.stream().map(s -> names.piece(s, lying.get(s), s.of(view.own()).map(p -> p.piece().cuts()).orElse(List.of()), laid)).toList();
    }

    /** What a neighbour's piece has on this wall, and of the wrap close beside it; of a membrane also where it ends at the fold. */
    private static List<Shape> comingRound(View view, Sheet s) {
        Material m = s.parts().get(0).piece().material();
        Box wall = view.wall().elevation().outline().box();
        long beside = m.layer() == Layer.WRAP ? BESIDE : 0, touching = m.kind() == MaterialKind.MEMBRANE ? 0 : 1;
        Box near = new Box(wall.minX() - beside, wall.minY(), wall.maxX() + beside, wall.maxY());
        List<Region> here = s.shapes(view.corners()).stream().filter(x -> x.on().isWall()).flatMap(x -> x.regions().stream())
                .filter(r -> r.box().minX() <= wall.maxX() - touching && r.box().maxX() >= wall.minX() + touching)
                .flatMap(r -> Sheet.within(r, near).stream()).toList();
        return here.isEmpty() ? List.of() : List.of(new Shape(Surface.WALL, here));
    }

    private static Elevation flat(View view, List<Corner> corners, List<Piece> pieces) {
        Elevation e = view.wall().elevation();
        List<Region> outlines = view.flats().stream().map(f -> f.moved().region(f.wall().elevation().outline().region())).toList();
        List<OutlineEdge> edges = new ArrayList<>();
        for (int i = 0; i < view.flats().size(); i++) {
            Flat f = view.flats().get(i);
            for (OutlineEdge edge : f.wall().elevation().outline().edges()) {
                edges.addAll(left(f.moved().edge(edge), corners));
            }
        }
        return new Elevation(e.name(), e.practice(), e.exposure(), new Outline(Overlay.union(outlines).get(0), edges, e.outline().ground()),
                view.flats().stream().flatMap(f -> f.wall().elevation().openings().stream().map(f.moved()::opening)).toList(),
                view.flats().stream().flatMap(f -> f.wall().elevation().penetrations().stream().map(f.moved()::penetration)).toList(),
                e.materials(), pieces, List.of());
    }

    /** What of an edge is not within the unfolded walls. */
    private static List<OutlineEdge> left(OutlineEdge edge, List<Corner> corners) {
        return corners.stream().filter(c -> edge.line().isPlumb() && edge.line().a().x() == c.left()).findFirst()
                .map(c -> apart(edge, c.from(), c.to())).orElse(List.of(edge));
    }

    /** What of a plumb edge lies below and above a stretch. */
    private static List<OutlineEdge> apart(OutlineEdge edge, long from, long to) {
        Box b = edge.line().box();
        boolean up = edge.line().a().y() < edge.line().b().y();
        List<OutlineEdge> out = new ArrayList<>();
        for (Box part : List.of(new Box(0, b.minY(), 0, Math.max(b.minY(), Math.min(b.maxY(), from))),
                new Box(0, Math.min(b.maxY(), Math.max(b.minY(), to)), 0, b.maxY()))) {
            if (part.height() > 0) {
                out.add(new OutlineEdge(Corner.line(b.minX(), part.minY(), part.maxY(), up), edge.role(), edge.neighbour()));
            }
        }
        return out;
    }

    private static List<List<String>> together(Laying laying, Names names, int own) {
        List<List<String>> out = new ArrayList<>();
        for (Sheet s : laying.order()) {
            if (s.parts().size() > 1 && s.of(own).isPresent()) {
                List<String> all = new ArrayList<>(List.of(names.id(s)));
                s.parts().stream().filter(p -> p.flat() != own).map(Part::piece).map(Piece::id).forEach(all::add);
                out.add(all);
            }
        }
        return out;
    }
}
