package rainlap.mend;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.Bond;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.MendSizes;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Flaps over head flashings, and returns. */
final class OpeningMends {
    /** A strip that turns into an opening runs on so far on the wall: 50 mm. */
    private static final long ONTO_WALL = 5_000;

    /** A sheet that begins further above is not lapped: 1 m. */
    private static final long SEARCH = 100_000;

    private OpeningMends() {}

    /** A strip of membrane over the upstand, its top under the sheet above. */
    static Optional<Edited> flap(Evidence e, Finding f) {
        if (!f.where().surface().isWall() || !f.where().isLine()) {
            return Optional.empty();
        }
        Box edge = f.where().box();
        return sheetAbove(e, edge).map(above -> {
            long over = e.practice().get(Limit.HEAD_UPSTAND).hundredths(), lap = MendSizes.lap(e);
            Edited out = new Edited(e.elevation().pieces());
            long end = e.practice().get(Limit.END_LAP).hundredths();
            Region strip = Region.of(new Box(edge.minX() - end, edge.minY() - over, edge.maxX() + end, above.foot + lap));
            String name = out.free("flap"), sheet = above.sheet;
            List<String> beneath = f.pieces().stream().filter(id -> !id.equals(sheet)).toList();
            out.layAfter(beneath, new Piece(name, above.material, List.of(new Shape(Surface.WALL, List.of(strip))), List.of(),
                    above.bond, List.of()));
            beneath.forEach(id -> out.bringOutside(name, id));
            out.draw(sheet, name);
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
        long over = flashing.startsWith(FlashingMends.SET) ? MendSizes.overUpstand(e) : e.practice().get(Limit.HEAD_UPSTAND).hundredths();
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
    private record Above(String sheet, Material material, Bond bond, long foot) {}

    /** The sheet that ends the lowest above the middle of an edge, within the next metre. */
    private static Optional<Above> sheetAbove(Evidence e, Box edge) {
        long middle = (edge.minX() + edge.maxX()) / 2;
        EdgeFrame up = EdgeFrame.of(new Segment(new Point(middle, edge.maxY()), new Point(middle, edge.maxY() + SEARCH)));
        Optional<Above> best = Optional.empty();
        for (Face f : e.stack().meeting(Surface.WALL, new Box(middle, edge.maxY(), middle, edge.maxY() + SEARCH))) {
            Intervals in = f.kind() == MaterialKind.MEMBRANE ? up.inside(f.region(), 0) : Intervals.NONE;
            if (!in.isEmpty() && best.filter(o -> o.foot <= edge.maxY() + in.from(0)).isEmpty()) {
                best = Optional.of(new Above(f.piece().id(), f.piece().material(), f.piece().bond(), edge.maxY() + Math.round(in.from(0))));
            }
        }
        return best;
    }

    /** A strip of flexible tape turned into the reveal, as deep as asked, over what ends there. */
    static Optional<Edited> returned(Evidence e, Finding f) {
        return f.where().surface().side() == Side.HEAD ? Optional.empty() : strip(e, f, true);
    }

    /** Of a head on the frame, before the sheet and the head flashing go over it. */
    static Optional<Edited> returnedBehind(Evidence e, Finding f) {
        return f.where().surface().side() == Side.HEAD ? strip(e, f, false) : Optional.empty();
    }

    private static Optional<Edited> strip(Evidence e, Finding f, boolean over) {
        if (!f.where().isLine() || f.where().line().size() != 2 || f.required().isEmpty()) {
            return Optional.empty();
        }
        return e.elevation().findOpening(f.where().surface().opening()).map(o -> {
            long deep = Math.round(f.required().getAsDouble() * 100);
            Edited out = new Edited(e.elevation().pieces());
            List<String> beside = f.pieces().stream().filter(id -> out.number(id) >= 0).toList();
            long onto = over ? ONTO_WALL : MendSizes.upFromHead(e);
            List<Region> strip = strip(o, f.where().line(), deep, onto);
            if (over) {
                TapeMends.lay(e, out, beside, strip, deep + onto);
            } else {
                TapeMends.layFirst(e, out, strip, deep + onto);
            }
            say(out, deep, onto, over);
            return out;
        });
    }

    private static void say(Edited out, long deep, long onto, boolean over) {
        out.say("Flexible tape " + LengthText.mm(deep) + " deep into the reveal and " + LengthText.mmUp(onto) + " onto the wall" + (over ? "." : ", before the sheet goes over it."));
    }

    /** A strip on the frame above an opening, as deep into its head as asked, before all else. */
    static Optional<Edited> headStrip(Evidence e, Edited out, Place head) {
        Optional<Opening> opening = e.elevation().openings().stream().filter(o -> head.isLine() && Box.of(List.of(o.edge(Side.HEAD).a(), o.edge(Side.HEAD).b())).contains(head.box())).findFirst();
        return opening.filter(o -> o.reveal() > 0).map(o -> {
            long deep = Math.min(o.reveal(), e.practice().get(Limit.RETURN_HEAD).hundredths()), onto = MendSizes.upFromHead(e);
            TapeMends.layFirst(e, out, strip(o, List.of(o.edge(Side.HEAD).a(), o.edge(Side.HEAD).b()), deep, onto), deep + onto);
            say(out, deep, onto, false);
            return out;
        });
    }

    /** Into the opening as deep as asked, and a little onto the wall. */
    private static List<Region> strip(Opening o, List<Point> line, long deep, long onto) {
        Box left = Bands.beside(line, 0, deep).get(0).box();
        boolean inLeft = o.rect().contains(new Point((left.minX() + left.maxX()) / 2, (left.minY() + left.maxY()) / 2));
        return inLeft ? Bands.beside(line, -onto, deep) : Bands.beside(line, -deep, onto);
    }
}
