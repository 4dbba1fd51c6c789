package rainlap.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.OpeningCorner;
import rainlap.joint.Sheets;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.opening.CornerLegs;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Corner pieces in corners of openings, and the strips that go down over what is turned up there. */
final class CornerMends {
    private CornerMends() {}

    /** The corner of an opening nearest to where something is. */
    static Optional<OpeningCorner> corner(Evidence e, Finding f) {
        Box b = f.where().box();
        Point m = new Point((b.minX() + b.maxX()) / 2, (b.minY() + b.maxY()) / 2);
        return e.openingCorners().stream().filter(c -> c.opening().id().equals(f.where().surface().opening()))
                .min(Comparator.comparingDouble(c -> Math.hypot(at(c).x() - m.x(), at(c).y() - m.y())));
    }

    private static Point at(OpeningCorner c) {
        Box r = c.opening().rect();
        return new Point(c.jamb() == Side.LEFT ? r.minX() : r.maxX(), c.level() == Side.SILL ? r.minY() : r.maxY());
    }

    /** One corner piece as deep as asked, its legs past what lies bare by the tape's cover, turned out onto the wall. */
    static Optional<Edited> piece(Evidence e, Finding f) {
        return corner(e, f).map(c -> {
            long lap = e.practice().get(Limit.TAPE_COVER).hundredths(), reveal = c.opening().reveal();
            boolean bare = !f.where().isLine();
            long deep = bare ? Math.min(reveal, Math.round(f.required().orElse(reveal / 100.0) * 100)) : reveal;
            CornerLegs legs = bare ? CornerLegs.overBare(e, c) : CornerLegs.upTheJamb(e, c);
            Edited out = new Edited(e.elevation().pieces());
            String name = out.free("corner piece");
            out.layAfter(c.pieces().stream().filter(id -> out.number(id) >= 0).toList(), new Piece(name, material(e), shapes(legs, deep, lap), List.of(),
                    material(e).bond(), List.of()));
            c.pieces().stream().filter(id -> out.number(id) >= 0).forEach(id -> out.bringOutside(name, id));
            if (c.level() == Side.SILL) {
                jambStrips(e, c).forEach(id -> out.bringOutside(id, name));
            }
            out.say("A corner piece " + LengthText.mm(deep) + " deep, " + legs.inWords() + ", turned " + LengthText.mm(lap) + " out onto the wall.");
            return out;
        });
    }

    private static Material material(Evidence e) {
        return Stream.concat(e.elevation().pieces().stream().map(Piece::material).filter(m -> m.kind() == MaterialKind.CORNER_PIECE),
                Catalogue.builtIn().ofKind(MaterialKind.CORNER_PIECE).stream()).findFirst().orElseGet(() -> Material.of("corner-piece", MaterialKind.CORNER_PIECE));
    }

    private static List<Shape> shapes(CornerLegs legs, long deep, long lap) {
        OpeningCorner c = legs.corner();
        Opening o = c.opening();
        Box r = o.rect();
        boolean left = c.jamb() == Side.LEFT, sill = c.level() == Side.SILL;
        long along = Math.min(legs.onLevel(), o.along(c.level())), up = Math.min(legs.onJamb(), o.along(c.jamb()));
        long x = left ? r.minX() - lap : r.maxX(), foot = sill ? r.minY() : r.maxY() - up;
        List<Region> wall = new ArrayList<>(List.of(Region.of(new Box(x, sill ? r.minY() - lap : foot, x + lap, sill ? r.minY() + up : r.maxY()))));
        if (sill) {
            wall.add(Region.of(left ? new Box(r.minX() - lap, r.minY() - lap, r.minX() + along, r.minY()) : new Box(r.maxX() - along, r.minY() - lap, r.maxX() + lap, r.minY())));
        }
        return List.of(new Shape(Surface.WALL, Overlay.union(wall)), on(o, c.level(), left, along, deep), on(o, c.jamb(), sill, up, deep));
    }

    private static Shape on(Opening o, Side side, boolean atStart, long leg, long deep) {
        long from = atStart ? 0 : o.along(side) - leg;
        return new Shape(new Surface(o.id(), side), List.of(Region.of(new Box(from, 0, from + leg, deep))));
    }

    /** Tapes along most of the jamb, which go down over what is turned up at the sill. */
    private static List<String> jambStrips(Evidence e, OpeningCorner c) {
        return e.stack().on(new Surface(c.opening().id(), c.jamb())).stream().filter(f -> f.kind() == MaterialKind.TAPE && Sheets.isStrip(f)
                && 2 * f.box().width() >= c.opening().along(c.jamb())).map(Face::piece).map(Piece::id).distinct().toList();
    }

    /** One strip of the wall's own tape over all of a threshold and up both jambs, laid on the frame before all else: jambs and corners go down over its ends. */
    static Optional<Edited> threshold(Evidence e, Finding f) {
        return e.elevation().pieces().stream().map(Piece::material).filter(m -> m.kind() == MaterialKind.TAPE).distinct()
                .max(Comparator.comparingDouble(m -> m.widthMm().orElse(0))).flatMap(m -> threshold(e, f, m));
    }

    /** The same of a tape as wide as the reveal is deep. */
    static Optional<Edited> thresholdAnew(Evidence e, Finding f) {
        return Catalogue.builtIn().ofKind(MaterialKind.TAPE).stream().filter(m -> e.elevation().findOpening(f.where().surface().opening())
                .filter(o -> m.widthMm().orElse(0) * 100 >= o.reveal()).isPresent()).findFirst().flatMap(m -> threshold(e, f, m));
    }

    private static Optional<Edited> threshold(Evidence e, Finding f, Material tape) {
        return e.elevation().findOpening(f.where().surface().opening()).map(o -> {
            long up = Math.min(o.along(Side.LEFT), e.practice().get(Limit.SILL_TURN_UP).hundredths()), along = o.along(Side.SILL), deep = o.reveal();
            Edited out = new Edited(e.elevation().pieces());
            out.layFirst(new Piece(out.free("sill strip"), tape, List.of(new Shape(new Surface(o.id(), Side.SILL), List.of(Region.of(new Box(0, 0, along, deep)))),
                    on(o, Side.LEFT, true, up, deep), on(o, Side.RIGHT, true, up, deep)), List.of(), tape.bond(), List.of()));
            out.say("Flexible tape over all of the threshold, " + LengthText.mm(along) + " × " + LengthText.mm(deep) + " and " + LengthText.mm(up) + " up both jambs, beneath all that goes down over its ends.");
            return out;
        });
    }

    /** The strips on the jamb freed and stuck down over the pan's end. */
    static Optional<Edited> down(Evidence e, Finding f) {
        Edited out = new Edited(e.elevation().pieces());
        List<String> strips = f.pieces().stream().skip(1).filter(id -> out.number(id) >= 0).toList();
        if (strips.isEmpty() || out.number(f.pieces().get(0)) < 0) {
            return Optional.empty();
        }
        strips.forEach(id -> out.draw(id, f.pieces().get(0)));
        out.say(String.join(", ", strips) + " down over the end of " + f.pieces().get(0) + ".");
        return Optional.of(out);
    }
}
