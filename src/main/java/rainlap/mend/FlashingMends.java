package rainlap.mend;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.material.Bond;
import rainlap.material.Catalogue;
import rainlap.material.EndDams;
import rainlap.material.Layer;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.measure.AngleText;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.MendSizes;
import rainlap.rule.PieceWords;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Flashings folded otherwise, longer or higher, or set where there is none. */
final class FlashingMends {
    /** How the name of one begins that is set where there was none. */
    static final String SET = "head flashing";
    private static final String HEAD_FLASHING = "head-flashing";

    /** A sloped edge is drawn on a grid: 1 mm more than asked. */
    private static final long BEYOND = 100;
    /** Half the width of a bead of sealant: 5 mm. */
    private static final long BEAD = 500;

    private FlashingMends() {}

    /** Turned up at the end that a finding lies at, and at both where the water tells of neither. */
    static Optional<Edited> dammed(Evidence e, Finding f) {
        return folded(e, f, p -> {
            boolean left = isLeft(f, p.wallBox().orElseThrow());
            Profile old = p.material().profile();
            boolean both = old.endDams().filter(d -> left ? d.atRight() : d.atLeft()).isPresent();
            EndDams dams = both ? EndDams.BOTH : left ? EndDams.LEFT : EndDams.RIGHT;
            double high = Math.max(old.endDamMm().orElse(0), e.practice().get(Limit.END_DAM).hundredths() / 100.0);
            return old.withEndDams(dams, high);
        }, "The end of " + first(f) + " turned up " + e.practice().get(Limit.END_DAM).number() + " high" + slit(e, f) + ".");
    }

    private static String slit(Evidence e, Finding f) {
        return e.elevation().pieces().stream().filter(p -> p.id().equals(first(f))).flatMap(p -> p.wallBox().stream()).findFirst()
                .map(b -> HeadFlashings.overEnd(e, first(f), isLeft(f, b) ? b.minX() : b.maxX())).filter(over -> !over.isEmpty())
                .map(over -> ", " + PieceWords.list(over) + " slit where it stands").orElse("");
    }

    private static boolean isLeft(Finding f, Box own) {
        Box at = f.where().box();
        return Math.abs(at.minX() - own.minX()) < Math.abs(at.maxX() - own.maxX());
    }

    static Optional<Edited> fallen(Evidence e, Finding f) {
        return f.required().isEmpty() ? Optional.empty() : folded(e, f, p -> p.material().profile().withFall(f.required().getAsDouble()),
                first(f) + " folded to fall " + AngleText.deg(f.required().getAsDouble()) + " outwards.");
    }

    /** A capping, whose top falls to the roof. */
    static Optional<Edited> packed(Evidence e, Finding f) {
        return f.required().isEmpty() ? Optional.empty() : folded(e, f, p -> p.material().profile().withFall(f.required().getAsDouble()),
                first(f) + " on a sloped packer, to fall " + AngleText.deg(f.required().getAsDouble()) + " to the roof.");
    }

    static Optional<Edited> dripping(Evidence e, Finding f) {
        return f.required().isEmpty() ? Optional.empty() : folded(e, f, p -> p.material().profile().withDrip(f.required().getAsDouble()),
                "The drip of " + first(f) + " stands " + mm(f) + " off the face below.");
    }

    static Optional<Edited> turnedDown(Evidence e, Finding f) {
        return f.required().isEmpty() ? Optional.empty() : folded(e, f, p -> p.material().profile().withTurnDown(f.required().getAsDouble()),
                "The front of " + first(f) + " comes down " + mm(f) + ".");
    }

    private static String mm(Finding f) {
        return LengthText.mm(Math.round(f.required().orElse(0) * 100));
    }

    /** Of a sill pan: its back turned up, and set against the frame. */
    static Optional<Edited> backed(Evidence e, Finding f) {
        LimitValue asked = e.practice().get(Limit.BACK_DAM);
        Optional<Opening> opening = e.elevation().findOpening(f.where().surface().opening());
        return opening.flatMap(o -> folded(e, f, p -> upstand(p, asked), "The back of " + first(f) + " turned up " + asked.number() + " high, against the frame.").map(out -> {
            Surface sill = new Surface(o.id(), Side.SILL);
            out.pieces().get(out.number(first(f))).shapes().stream().filter(s -> s.on().equals(sill)).findFirst()
                    .ifPresent(s -> out.extend(first(f), sill, List.of(Region.of(new Box(s.box().minX(), s.box().minY(), s.box().maxX(), o.reveal())))));
            return out;
        }));
    }

    /** Of a head flashing that ends too soon: one that runs on past the jamb as far as asked, and its dam with it. */
    static Optional<Edited> longer(Evidence e, Finding f) {
        Edited out = new Edited(e.elevation().pieces());
        if (f.required().isEmpty() || out.number(first(f)) < 0) {
            return Optional.empty();
        }
        long asked = Math.round(f.required().getAsDouble() * 100), more = asked - Math.round(f.measured().orElse(0) * 100);
        Box at = f.where().box(), b = out.pieces().get(out.number(first(f))).wallBox().orElseThrow();
        boolean left = Math.abs(at.minX() - b.minX()) + Math.abs(at.maxX() - b.minX()) < Math.abs(at.minX() - b.maxX()) + Math.abs(at.maxX() - b.maxX());
        out.extend(first(f), Surface.WALL, List.of(Region.of(left ? new Box(b.minX() - more, b.minY(), b.minX(), b.maxY()) : new Box(b.maxX(), b.minY(), b.maxX() + more, b.maxY()))));
        out.say("One in place of " + first(f) + " that runs " + LengthText.mm(asked) + " past the " + (left ? "left" : "right") + " jamb.");
        return Optional.of(out);
    }

    /** Of a head flashing whose own upstand is too low: a higher one. */
    static Optional<Edited> higher(Evidence e, Finding f) {
        LimitValue asked = e.practice().get(Limit.HEAD_UPSTAND);
        if (f.measured().isEmpty() || f.measured().getAsDouble() * 100 >= asked.hundredths()) {
            return Optional.empty();
        }
        long more = asked.hundredths() - Math.round(f.measured().getAsDouble() * 100);
        return folded(e, f, p -> upstand(p, asked), first(f) + " with an upstand of " + asked.number() + " behind the membrane.").map(out -> {
            Box b = out.pieces().get(out.number(first(f))).wallBox().orElseThrow();
            out.extend(first(f), Surface.WALL, List.of(Region.of(new Box(b.minX(), b.maxY(), b.maxX(), b.maxY() + more))));
            return out;
        });
    }

    private static Profile upstand(Piece p, LimitValue asked) {
        Profile old = p.material().profile();
        return old.withUpstand(OptionalDouble.of(Math.max(asked.value(), old.upstandMm().orElse(0))));
    }

    /** A head flashing over an opening that has none, in front of the sheet: laying the sheet over it is the next thing to mend. */
    static Optional<Edited> headed(Evidence e, Finding f) {
        Optional<Material> made = Catalogue.builtIn().find(HEAD_FLASHING);
        Optional<Opening> opening = e.elevation().openings().stream().filter(o -> Box.of(List.of(o.edge(Side.HEAD).a(), o.edge(Side.HEAD).b())).contains(f.where().box())).findFirst();
        if (made.isEmpty() || opening.isEmpty() || !f.where().surface().isWall()) {
            return Optional.empty();
        }
        long past = e.practice().get(Limit.FLASHING_PAST_OPENING).hundredths(), up = Math.max(Math.round(made.get().profile().upstandMm().orElse(0) * 100), MendSizes.overUpstand(e));
        Material high = made.get().withProfile(made.get().profile().withUpstand(OptionalDouble.of(up / 100.0)));
        Box r = opening.get().rect(), set = new Box(r.minX() - past, r.maxY(), r.maxX() + past, r.maxY() + up);
        Edited out = new Edited(e.elevation().pieces());
        List<String> beneath = e.stack().meeting(Surface.WALL, set).stream().map(x -> x.piece()).filter(p -> p.material().layer() == Layer.WRAP).map(Piece::id).distinct().toList();
        out.layAfter(beneath, new Piece(out.free(SET), high, List.of(new Shape(Surface.WALL, List.of(Region.of(set)))), List.of(), Bond.LOOSE, List.of()));
        out.say("A head flashing " + LengthText.mm(past) + " past both jambs.");
        return Optional.of(out);
    }

    /** The same over a strip on the frame that is turned into the head. */
    static Optional<Edited> headedOnStrip(Evidence e, Finding f) {
        return headed(e, f).flatMap(out -> OpeningMends.headStrip(e, out, f.where()));
    }

    /** A capping brought down over the face as far as asked. */
    static Optional<Edited> capped(Evidence e, Finding f) {
        if (f.required().isEmpty() || f.pieces().isEmpty()) {
            return Optional.empty();
        }
        long asked = Math.round(f.required().getAsDouble() * 100);
        Edited out = new Edited(e.elevation().pieces());
        out.extend(first(f), Surface.WALL, Bands.beside(f.where().line(), -1, asked + BEYOND));
        out.say(first(f) + " comes down " + LengthText.mm(asked) + " over the face.");
        return Optional.of(out);
    }

    /** Of two cappings the inner one runs on beneath the outer one as far as asked, with a bead between. */
    static Optional<Edited> lapped(Evidence e, Finding f) {
        Edited out = new Edited(e.elevation().pieces());
        if (f.required().isEmpty() || f.pieces().size() != 2 || f.pieces().stream().anyMatch(id -> out.number(id) < 0)) {
            return Optional.empty();
        }
        String outer = f.pieces().get(0), inner = f.pieces().get(1);
        long asked = Math.round(f.required().getAsDouble() * 100);
        Box a = out.pieces().get(out.number(outer)).wallBox().orElseThrow(), b = out.pieces().get(out.number(inner)).wallBox().orElseThrow();
        boolean right = b.minX() < a.minX(); // the inner one runs on to the right
        Box lap = right ? new Box(a.minX(), b.minY(), a.minX() + asked, b.maxY()) : new Box(a.maxX() - asked, b.minY(), a.maxX(), b.maxY());
        out.extend(inner, Surface.WALL, List.of(Region.of(lap)));
        Material bead = Catalogue.builtIn().ofKind(MaterialKind.SEALANT).stream().findFirst().orElseGet(() -> Material.of("sealant", MaterialKind.SEALANT));
        long middle = (lap.minX() + lap.maxX()) / 2;
        String name = out.free("sealant");
        out.layAfter(List.of(inner), new Piece(name, bead, List.of(new Shape(Surface.WALL, List.of(Region.of(new Box(middle - BEAD, lap.minY(), middle + BEAD, lap.maxY()))))), List.of(),
                bead.bond(), List.of()));
        out.bringOutside(name, inner);
        out.bringOutside(outer, name);
        out.sayLap(asked, outer, inner, ", with sealant between");
        return Optional.of(out);
    }

    private static String first(Finding f) {
        return f.pieces().isEmpty() ? "" : f.pieces().get(0);
    }

    private static Optional<Edited> folded(Evidence e, Finding f, Function<Piece, Profile> how, String what) {
        Edited out = new Edited(e.elevation().pieces());
        int n = out.number(first(f));
        if (n < 0 || out.pieces().get(n).material().kind() != MaterialKind.FLASHING && out.pieces().get(n).material().kind() != MaterialKind.TRIM) {
            return Optional.empty();
        }
        Profile folded = how.apply(out.pieces().get(n));
        out.profile(first(f), p -> folded);
        out.say(what);
        return Optional.of(out);
    }
}
