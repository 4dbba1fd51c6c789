package rainlap.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.Bond;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.lap.BareCover;
import rainlap.stack.Face;
import rainlap.wall.Penetration;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** Sheets and collars over what lies bare: drawn out over what is beneath, tucked in behind what is above, which is slit where it goes on. */
final class SheetMends {
    private SheetMends() {}

    /** Membrane over a bare area, or behind a line where one strip is all there is. */
    static Optional<Edited> covered(Evidence e, Finding f) {
        Optional<Material> sheet = e.elevation().pieces().stream().map(Piece::material).filter(m -> m.kind() == MaterialKind.MEMBRANE).findFirst();
        boolean piped = e.elevation().penetrations().stream().anyMatch(p -> p.region().box().meets(f.where().box()));
        if (!f.where().surface().isWall() || sheet.isEmpty() || piped) {
            return Optional.empty();
        }
        BareCover cover = BareCover.of(e, f.where().box());
        long up = MendSizes.lap(e);
        Patch patch = new Patch(cover.onWall(), cover.whole().maxY(), sheet.get(), "sheet");
        Edited out = new Edited(e.elevation().pieces());
        if (patch.slits(e).size() > 1) {
            return Optional.empty();
        }
        cover.parting().forEach(id -> out.takeOff(id, Surface.WALL, List.of(Region.of(cover.onWall()))));
        String slit = patch.lay(e, out);
        out.say("Membrane over it, " + LengthText.mm(up) + " over what is beneath, its top " + LengthText.mm(up) + " up" + slit + ".");
        return Optional.of(out);
    }

    /** A collar round a pipe, its top tucked in, its sides taped. */
    static Optional<Edited> collared(Evidence e, Finding f) {
        Box place = f.where().box();
        Optional<Penetration> pipe = e.elevation().penetrationsMeeting(place).stream().findFirst();
        return pipe.filter(p -> f.where().surface().isWall()).map(p -> {
            long cover = e.practice().get(Limit.TAPE_COVER).hundredths(), lap = MendSizes.lap(e), foot = MendSizes.collarFoot(e);
            Box r = p.region().box();
            Box flat = new Box(r.minX() - cover, r.minY() - foot, r.maxX() + cover, r.maxY() + cover);
            Material made = Catalogue.builtIn().ofKind(MaterialKind.COLLAR).stream().findFirst().orElseGet(() -> Material.of("collar", MaterialKind.COLLAR));
            Edited out = new Edited(e.elevation().pieces());
            Patch patch = new Patch(new Box(flat.minX(), flat.minY(), flat.maxX(), flat.maxY() + lap), flat.maxY(), made, "collar");
            String slit = patch.lay(e, out);
            for (long x : new long[] {flat.minX(), flat.maxX()}) {
                TapeMends.lay(e, out, List.of(out.added().get(0)), List.of(Region.of(new Box(x - cover, flat.minY() - cover, x + cover, flat.maxY()))), 2 * cover);
            }
            out.say("A collar with " + MendSizes.collarFlat(e) + ", its top " + LengthText.mm(lap) + " up" + slit + ", its sides taped.");
            return out;
        });
    }

    /** The upper edge of a patch tucked in behind the sheet it lies on, which is slit for it; only where that goes on below. */
    static Optional<Edited> tucked(Evidence e, Finding f) {
        long lapped = f.where().box().maxY() - e.practice().get(Limit.COURSE_LAP).hundredths();
        return LapMends.joint(e, f).filter(j -> j.inner().kind() == MaterialKind.MEMBRANE)
                .filter(j -> new Edited(e.elevation().pieces()).reachesBelow(j.inner().piece().id(), lapped, j.outer().box().minX(), j.outer().box().maxX())).map(j -> {
            long lap = e.practice().get(Limit.COURSE_LAP).hundredths(), top = f.where().box().maxY();
            String patch = j.outer().piece().id(), sheet = j.inner().piece().id();
            Box b = j.outer().box();
            Edited out = new Edited(e.elevation().pieces());
            LapMends.untape(out, j, f);
            String lower = out.slit(sheet, top - lap, b.minX(), b.maxX());
            out.bringOutside(patch, lower);
            out.draw(sheet, patch);
            out.say("The top of " + patch + " tucked " + LengthText.mm(lap) + " up under a slit in " + sheet + "; the ends of the slit are taped.");
            return out;
        });
    }

    /**
     * A sheet to be laid.
     *
     * @param bareTo up to where the wall is bare: there a sheet that goes on behind is slit
     */
    private record Patch(Box box, long bareTo, Material material, String name) {
        /** Lays it, and says what its top goes under. */
        String lay(Evidence e, Edited out) {
            String id = out.free(name);
            List<String> above = meeting(e, top()), beneath = new ArrayList<>(meeting(e, rest())), slit = slits(e);
            for (String sheet : slit) {
                beneath.set(beneath.indexOf(sheet), out.slit(sheet, bareTo, box.minX(), box.maxX()));
            }
            List<String> last = Stream.concat(above.stream(), beneath.stream()).filter(x -> out.number(x) >= 0).toList();
            out.layAfter(last, new Piece(id, material, List.of(new Shape(Surface.WALL, List.of(Region.of(box)))), List.of(),
                    material.kind() == MaterialKind.MEMBRANE ? Bond.LOOSE : material.bond(), List.of()));
            beneath.stream().filter(x -> out.number(x) >= 0).forEach(x -> out.bringOutside(id, x));
            above.stream().filter(x -> out.number(x) >= 0).forEach(x -> out.bringOutside(x, id));
            return above.isEmpty() ? " the wall" : slit.isEmpty() ? " behind " + String.join(", ", above) : " under a slit in " + String.join(", ", slit);
        }

        private Box top() {
            return new Box(box.minX(), bareTo, box.maxX(), box.maxY());
        }

        private Box rest() {
            return new Box(box.minX(), box.minY(), box.maxX(), bareTo);
        }

        /** Sheets that go on from above to beneath. */
        List<String> slits(Evidence e) {
            List<String> beneath = meeting(e, rest());
            return meeting(e, top()).stream().filter(beneath::contains).toList();
        }

        private static List<String> meeting(Evidence e, Box b) {
            return e.stack().meeting(Surface.WALL, b).stream().filter(f -> f.kind() == MaterialKind.MEMBRANE)
                    .filter(f -> !Overlay.intersection(List.of(f.region()), List.of(Region.of(b))).isEmpty()).map(Face::piece).map(Piece::id).distinct().toList();
        }
    }
}
