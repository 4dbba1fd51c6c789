package rainlap.mend;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** Flaps over head flashings, and returns. */
final class OpeningMends {
    /** A strip that turns into an opening runs on so far on the wall: 50 mm. */
    private static final long ONTO_WALL = 5_000;

    private OpeningMends() {}

    /** A strip of membrane over the upstand, its top under the sheet above. */
    static Optional<Edited> flap(Evidence e, Finding f) {
        if (!f.where().surface().isWall() || !f.where().isLine()) {
            return Optional.empty();
        }
        Box edge = f.where().box();
        return sheetAbove(e, edge, f.pieces().get(0)).map(above -> {
            long over = e.practice().get(Limit.HEAD_UPSTAND).hundredths(), lap = e.practice().get(Limit.COURSE_LAP).hundredths();
            Edited out = new Edited(e.elevation().pieces());
            Region strip = Region.of(new Box(edge.minX(), edge.minY() - over, edge.maxX(), above.foot + lap));
            String name = out.free("flap"), sheet = above.face.piece().id();
            List<String> beneath = f.pieces().stream().filter(id -> !id.equals(sheet)).toList();
            out.layAfter(beneath, new Piece(name, above.face.piece().material(), List.of(new Shape(Surface.WALL, List.of(strip))), List.of(),
                    above.face.piece().bond(), List.of()));
            beneath.forEach(id -> out.bringOutside(name, id));
            out.bringOutside(sheet, name);
            out.say("A strip of membrane over the upstand of " + f.pieces().get(0) + " by " + LengthText.mm(over) + ", its top "
                    + LengthText.mm(lap) + " up under " + sheet + ".");
            return out;
        });
    }

    /**
     * The sheet that runs down behind a flashing is laid over the upstand, as far as asked, and what was turned into the head goes with it. Right over the
     * opening; how the slits at the flashing's ends run is not followed.
     */
    static Optional<Edited> slit(Evidence e, Finding f) {
        if (!f.where().surface().isWall() || !f.where().isLine() || f.pieces().size() != 2) {
            return Optional.empty();
        }
        Box edge = f.where().box();
        String flashing = f.pieces().get(0), sheet = f.pieces().get(1);
        long over = e.practice().get(Limit.HEAD_UPSTAND).hundredths();
        Edited out = new Edited(e.elevation().pieces());
        Box own = out.pieces().get(out.number(flashing)).wallBox().orElseThrow();
        Optional<Box> opening = e.elevation().openings().stream().map(Opening::rect)
                .filter(r -> r.minX() < own.maxX() && own.minX() < r.maxX() && Math.abs(own.minY() - r.maxY()) <= HeadFlashings.NEAR_HEAD).findFirst();
        if (opening.isEmpty()) {
            return Optional.empty();
        }
        Box r = opening.get();
        out.takeOff(sheet, Surface.WALL, List.of(Region.of(new Box(r.minX(), r.maxY() - r.height() / 2, r.maxX(), edge.minY() - over))));
        out.draw(sheet, flashing);
        out.say(sheet + " slit and laid over the upstand of " + flashing + " by " + LengthText.mm(over) + ".");
        return Optional.of(out);
    }

    /** A sheet and the level of its lower edge. */
    private record Above(Face face, long foot) {}

    /** The sheet with the lowest foot above an edge, in the middle of it, that another sheet does not hide there. */
    private static Optional<Above> sheetAbove(Evidence e, Box edge, String flashing) {
        long middle = (edge.minX() + edge.maxX()) / 2;
        Optional<Above> best = Optional.empty();
        for (Face f : e.stack().on(Surface.WALL)) {
            Box b = f.box();
            if (f.piece().material().kind() == MaterialKind.MEMBRANE && b.minX() <= edge.minX() && b.maxX() >= edge.maxX() && b.minY() >= edge.maxY()
                    && f.region().covers(middle, b.minY() + 10) && best.filter(o -> o.foot <= b.minY()).isEmpty()) {
                best = Optional.of(new Above(f, b.minY()));
            }
        }
        return best;
    }

    /** A strip of flexible tape turned into the reveal, as deep as asked. */
    static Optional<Edited> returned(Evidence e, Finding f) {
        if (!f.where().isLine() || f.where().line().size() != 2 || f.required().isEmpty()) {
            return Optional.empty();
        }
        Optional<Opening> opening = e.elevation().findOpening(f.where().surface().opening());
        return opening.map(o -> {
            long deep = Math.round(f.required().getAsDouble() * 100);
            Edited out = new Edited(e.elevation().pieces());
            List<Region> left = Bands.beside(f.where().line(), 0, deep);
            Point middle = new Point((left.get(0).box().minX() + left.get(0).box().maxX()) / 2, (left.get(0).box().minY() + left.get(0).box().maxY()) / 2);
            boolean inLeft = o.rect().contains(middle);
            List<Region> strip = inLeft ? Bands.beside(f.where().line(), -ONTO_WALL, deep) : Bands.beside(f.where().line(), -deep, ONTO_WALL);
            TapeMends.lay(e, out, f.pieces().stream().filter(id -> out.number(id) >= 0).toList(), strip, deep + ONTO_WALL);
            out.say("Flexible tape " + LengthText.mm(deep) + " deep into the reveal and " + LengthText.mm(ONTO_WALL) + " onto the wall.");
            return out;
        });
    }
}
