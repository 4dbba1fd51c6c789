package rainlap.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.Bond;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.edge.CornerStrip;
import rainlap.stack.Face;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** Strips and sheets round corners of the building and past its edges. */
final class EdgeMends {
    private static final long INTO = 100;

    private EdgeMends() {}

    /** A strip of membrane over the corner, tucked in behind the sheet above, its edges and the fold taped. */
    static Optional<Edited> wrappedAnew(Evidence e, Finding f) {
        Optional<Material> sheet = sheet(e);
        if (!f.where().isLine() || sheet.isEmpty()) {
            return Optional.empty();
        }
        CornerStrip strip = CornerStrip.at(e, f.where().box());
        Edited out = new Edited(e.elevation().pieces());
        List<String> above = ids(strip.above()), stuck = strip.stuck();
        stuck.forEach(id -> out.takeOff(id, Surface.WALL, List.of(Region.of(strip.onWall()))));
        List<String> beneath = new ArrayList<>(ids(strip.beneath()));
        if (strip.isSlit()) {
            beneath.add(out.slit(above.get(0), strip.fold().maxY(), strip.onWall().minX(), strip.onWall().maxX()));
        }
        String name = lay(out, sheet.get(), beneath, List.of(Region.of(strip.onWall())));
        above.forEach(id -> out.bringOutside(id, name));
        List<String> sheets = Stream.of(beneath, above, List.of(name)).flatMap(List::stream).toList();
        edges(strip).forEach(line -> tape(e, out, sheets, line));
        out.say((stuck.isEmpty() ? "A" : "The old tape off, and a") + " strip of membrane over the corner, " + LengthText.mm(strip.wrap()) + " to each side, its edges and the fold taped.");
        return Optional.of(out);
    }

    private static List<String> ids(List<Face> faces) {
        return faces.stream().map(x -> x.piece().id()).distinct().toList();
    }

    /** The fold and the edges of the strip that are seen, each flat along its own line. */
    private static List<Box> edges(CornerStrip strip) {
        Box b = strip.onWall();
        long top = strip.above().isEmpty() ? b.maxY() : strip.fold().maxY();
        List<Box> out = new ArrayList<>();
        for (long x : new long[] {b.minX(), strip.fold().minX(), b.maxX()}) {
            out.add(new Box(x, b.minY(), x, top));
        }
        if (!strip.below().isEmpty()) {
            out.add(new Box(b.minX(), b.minY(), b.maxX(), b.minY()));
        }
        if (!strip.above().isEmpty()) {
            out.add(new Box(b.minX(), top, b.maxX(), top));
        }
        return out;
    }

    private static void tape(Evidence e, Edited out, List<String> sheets, Box line) {
        long cover = e.practice().get(Limit.TAPE_COVER).hundredths();
        TapeMends.lay(e, out, sheets, List.of(Region.of(line.grow(cover))), 2 * cover);
    }

    private static Optional<Material> sheet(Evidence e) {
        return e.elevation().pieces().stream().map(Piece::material).filter(m -> m.kind() == MaterialKind.MEMBRANE).findFirst();
    }

    private static String lay(Edited out, Material sheet, List<String> beneath, List<Region> where) {
        String name = out.free("strip");
        out.layAfter(beneath, new Piece(name, sheet, List.of(new Shape(Surface.WALL, where)), List.of(), Bond.LOOSE, List.of()));
        beneath.forEach(id -> out.bringOutside(name, id));
        return name;
    }

    /** A strip over what ends at the top, turned over that. */
    static Optional<Edited> topped(Evidence e, Finding f) {
        Edited out = new Edited(e.elevation().pieces());
        List<String> beneath = f.pieces().stream().filter(id -> out.number(id) >= 0).toList();
        Optional<Material> sheet = sheet(e);
        if (beneath.isEmpty() || sheet.isEmpty() || f.required().isEmpty() || !f.where().isLine() || !f.where().surface().isWall()) {
            return Optional.empty();
        }
        long asked = Math.round(f.required().getAsDouble() * 100), lap = e.practice().get(Limit.COURSE_LAP).hundredths();
        lay(out, sheet.get(), beneath, Bands.beside(f.where().line(), -asked - INTO, lap));
        out.say("A strip of membrane over " + String.join(", ", beneath) + " by " + LengthText.mm(lap) + ", turned " + LengthText.mm(asked) + " over the top.");
        return Optional.of(out);
    }

    /** The same of sheets that run on themselves. */
    static Optional<Edited> wrapped(Evidence e, Finding f) {
        if (f.pieces().isEmpty() || !f.where().isLine()) {
            return Optional.empty();
        }
        long asked = e.practice().get(Limit.CORNER_WRAP).hundredths();
        Box line = f.where().box();
        boolean right = 2 * line.minX() > e.elevation().outline().box().minX() + e.elevation().outline().box().maxX();
        Box round = right ? new Box(line.minX() - INTO, line.minY(), line.maxX() + asked, line.maxY())
                : new Box(line.minX() - asked, line.minY(), line.maxX() + INTO, line.maxY());
        Edited out = new Edited(e.elevation().pieces());
        for (String id : f.pieces()) {
            Optional<Box> own = out.number(id) < 0 ? Optional.empty() : out.pieces().get(out.number(id)).wallBox();
            own.map(b -> new Box(round.minX(), b.minY(), round.maxX(), b.maxY())).ifPresent(b -> {
                List<Region> more = Overlay.intersection(List.of(Region.of(b)), List.of(Region.of(round)));
                if (!more.isEmpty()) {
                    out.extend(id, Surface.WALL, more);
                }
            });
        }
        out.say("A strip over the corner or, as here, sheets that run " + LengthText.mm(asked) + " on round it.");
        return Optional.of(out);
    }

    /** The foot of cladding cut back until as much is clear as asked. */
    static Optional<Edited> trimmed(Evidence e, Finding f) {
        if (!f.unit().equals("mm") || f.measured().isEmpty() || f.required().isEmpty() || !f.where().isLine()) {
            return Optional.empty();
        }
        Box foot = f.where().box();
        long by = Math.round((f.required().getAsDouble() - f.measured().getAsDouble()) * 100);
        List<String> clad = e.elevation().pieces().stream().filter(p -> f.pieces().contains(p.id()) && p.material().kind() == MaterialKind.CLADDING).map(Piece::id).toList();
        if (by <= 0 || clad.isEmpty()) {
            return Optional.empty();
        }
        Edited out = new Edited(e.elevation().pieces());
        clad.forEach(id -> out.takeOff(id, Surface.WALL, List.of(Region.of(new Box(foot.minX(), foot.minY() - by, foot.maxX(), foot.maxY() + by)))));
        out.say(String.join(", ", clad) + " cut back to " + LengthText.mm(Math.round(f.required().getAsDouble() * 100)) + " clear.");
        return Optional.of(out);
    }

    /** A strip in behind sheets that end too soon at the base, brought down past that, the joint taped; the base lies to the right of its line. */
    static Optional<Edited> footed(Evidence e, Finding f) {
        Edited out = new Edited(e.elevation().pieces());
        List<String> over = f.pieces().stream().filter(id -> out.number(id) >= 0 && out.pieces().get(out.number(id)).material().kind() == MaterialKind.MEMBRANE).toList();
        Optional<Material> sheet = sheet(e);
        if (over.isEmpty() || sheet.isEmpty() || f.required().isEmpty() || !f.where().isLine() || !f.where().surface().isWall()) {
            return Optional.empty();
        }
        long asked = Math.round(f.required().getAsDouble() * 100), lap = e.practice().get(Limit.COURSE_LAP).hundredths(), cover = e.practice().get(Limit.TAPE_COVER).hundredths();
        double foot = -f.measured().orElse(0) * 100;
        String name = out.free("strip");
        out.layFirst(new Piece(name, sheet.get(), List.of(new Shape(Surface.WALL, Bands.beside(f.where().line(), -asked - INTO, lap))), List.of(), Bond.LOOSE, List.of()));
        TapeMends.lay(e, out, Stream.concat(Stream.of(name), over.stream()).toList(), Bands.beside(f.where().line(), foot - cover, foot + cover), 2 * cover);
        out.say("A strip of membrane in behind " + String.join(", ", over) + ", " + LengthText.mm(lap) + " up and " + LengthText.mm(asked) + " past the base, the joint taped.");
        return Optional.of(out);
    }

    /** The same of sheets that run on past the base themselves, which lies to the right of its line. */
    static Optional<Edited> past(Evidence e, Finding f) {
        Edited out = new Edited(e.elevation().pieces());
        List<String> sheets = f.pieces().stream().filter(id -> out.number(id) >= 0 && out.pieces().get(out.number(id)).material().kind() == MaterialKind.MEMBRANE).toList();
        if (sheets.isEmpty() || f.required().isEmpty() || !f.where().isLine() || !f.where().surface().isWall()) {
            return Optional.empty();
        }
        long asked = Math.round(f.required().getAsDouble() * 100);
        sheets.forEach(id -> out.extend(id, Surface.WALL, Bands.beside(f.where().line(), -asked - INTO, INTO)));
        out.say("A strip in behind or, as here, longer sheets: " + String.join(", ", sheets) + " " + LengthText.mm(asked) + " past the edge of the wall.");
        return Optional.of(out);
    }
}
