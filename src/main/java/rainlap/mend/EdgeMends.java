package rainlap.mend;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/** Sheets that run on round a corner of the building. */
final class EdgeMends {
    private static final long INTO = 100;

    private EdgeMends() {}

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
        out.say("Sheets run " + LengthText.mm(asked) + " on round the corner.");
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

    /** Sheets that run on past the top or the base, which lies to the right of its line. */
    static Optional<Edited> past(Evidence e, Finding f) {
        Edited out = new Edited(e.elevation().pieces());
        List<String> sheets = f.pieces().stream().filter(id -> out.number(id) >= 0 && out.pieces().get(out.number(id)).material().kind() == MaterialKind.MEMBRANE).toList();
        if (sheets.isEmpty() || f.required().isEmpty() || !f.where().isLine() || !f.where().surface().isWall()) {
            return Optional.empty();
        }
        long asked = Math.round(f.required().getAsDouble() * 100);
        sheets.forEach(id -> out.extend(id, Surface.WALL, Bands.beside(f.where().line(), -asked - INTO, INTO)));
        out.say(String.join(", ", sheets) + " " + LengthText.mm(asked) + " past the edge of the wall.");
        return Optional.of(out);
    }
}
