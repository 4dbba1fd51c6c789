package rainlap.mend;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.joint.Joint;
import rainlap.material.Bond;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** Tape laid over an edge, as wide as asked and centred on it, in place of what is there. */
final class TapeMends {
    private TapeMends() {}

    static Optional<Edited> tape(Evidence e, Finding f) {
        if (!f.where().surface().isWall() || !f.where().isLine()) {
            return Optional.empty();
        }
        Optional<Joint> joint = LapMends.joint(e, f);
        long cover = e.practice().get(Limit.TAPE_COVER).hundredths(), gap = joint.map(Joint::gap).orElse(0L);
        Edited out = new Edited(e.elevation().pieces());
        joint.ifPresent(j -> LapMends.untape(out, j, f));
        cutBeads(out, f);
        List<String> beneath = Stream.concat(f.pieces().stream(), joint.stream().flatMap(j -> Stream.of(j.outer(), j.inner()).map(x -> x.piece().id())))
                .filter(id -> out.number(id) >= 0).distinct().toList();
        lay(e, out, beneath, Bands.beside(f.where().line(), -cover - gap, cover), 2 * cover + gap);
        out.say(over(cover));
        return Optional.of(out);
    }

    /** Beads that the finding names are cut away before tape goes over their place. */
    private static void cutBeads(Edited out, Finding f) {
        out.pieces().stream().filter(p -> p.material().kind() == MaterialKind.SEALANT && f.pieces().contains(p.id())).toList().forEach(p -> {
            out.takeOff(p.id(), Surface.WALL, p.shapes().stream().filter(s -> s.on().isWall()).flatMap(s -> s.regions().stream()).toList());
            out.say("Bead " + p.id() + " cut away.");
        });
    }

    /** Two strips that cross stuck down again, the one that water reaches first over the other: a finding names it last. */
    static Optional<Edited> ordered(Evidence e, Finding f) {
        Edited out = new Edited(e.elevation().pieces());
        if (f.pieces().size() != 2 || f.pieces().stream().anyMatch(id -> out.number(id) < 0)) {
            return Optional.empty();
        }
        String lower = f.pieces().get(0), upper = f.pieces().get(1);
        out.draw(upper, lower);
        out.say(upper + " over " + lower + " where they cross.");
        return Optional.of(out);
    }

    /** Tape over an edge where others stay as they are. */
    static Optional<Edited> over(Evidence e, Finding f) {
        return f.where().isLine() ? LapMends.joint(e, f).map(j -> taped(e, j, f.where().line())) : Optional.empty();
    }

    /** The same over all of a joint. */
    static Optional<Edited> along(Evidence e, Joint j) {
        return Optional.of(taped(e, j, j.line()));
    }

    private static Edited taped(Evidence e, Joint j, List<Point> line) {
        long cover = e.practice().get(Limit.TAPE_COVER).hundredths();
        Edited out = new Edited(e.elevation().pieces());
        lay(e, out, List.of(j.outer().piece().id(), j.inner().piece().id()), Bands.beside(line, -cover - j.gap(), cover), 2 * cover + j.gap());
        out.say(over(cover));
        return out;
    }

    private static String over(long cover) {
        return "Tape over the edge, " + LengthText.mm(cover) + " to each side.";
    }

    /** A new tape over pieces that are laid already. */
    static void lay(Evidence e, Edited out, List<String> beneath, List<Region> where, long width) {
        String name = out.free("tape " + LengthText.mmUp(width));
        out.layAfter(beneath, new Piece(name, material(e, width), List.of(new Shape(Surface.WALL, where)), List.of(), Bond.FULL, List.of()));
        beneath.forEach(id -> out.bringOutside(name, id));
    }

    /** A new tape on the frame, before all else. */
    static void layFirst(Evidence e, Edited out, List<Region> where, long width) {
        out.layFirst(new Piece(out.free("tape " + LengthText.mmUp(width)), material(e, width), List.of(new Shape(Surface.WALL, where)), List.of(), Bond.FULL, List.of()));
    }

    /** What the wall is taped with, or else any tape as wide. */
    private static Material material(Evidence e, long width) {
        Comparator<Material> byWidth = Comparator.comparingDouble(m -> m.widthMm().orElse(Double.MAX_VALUE));
        return e.elevation().pieces().stream().map(Piece::material).filter(m -> m.kind() == MaterialKind.TAPE).findFirst()
                .or(() -> Catalogue.builtIn().ofKind(MaterialKind.TAPE).stream().filter(m -> m.widthMm().orElse(0) * 100 >= width).min(byWidth))
                .orElseGet(() -> Material.of("tape", MaterialKind.TAPE));
    }
}
