package rainlap.mend;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
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
}
