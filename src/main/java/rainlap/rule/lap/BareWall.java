package rainlap.rule.lap;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Region;
import rainlap.joint.Bare;
import rainlap.joint.Sheets;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** A part of the wall that nothing covers. */
public final class BareWall implements Rule {
    static final RuleInfo INFO = RuleInfo.of("bare-wall", "bare wall", RuleInfo.Theme.LAPS);
    private static final long BESIDE = 3;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return e.bare().isEmpty() ? Stream.of(Outcome.Holds.of()) : e.bare().stream().map(b -> broken(e, b));
    }

    private static Outcome broken(Evidence e, Bare bare) {
        Place where = Place.area(e.elevation(), Surface.WALL, List.of(bare.region()));
        Box b = bare.region().box();
        String size = LengthText.mm(b.width()) + " \u00d7 " + LengthText.mm(b.height());
        return Finding.of(INFO, where, bordering(e, bare.region())).reads("bare, " + size, "covered")
                .says("Nothing covers the wall at " + where.inWords() + ": rain reaches the frame there. "
                        + "Common practice asks for the whole wall to be covered.",
                        remedy(e, b));
    }

    /** As the place allows: there is not always a sheet below, beside or above. */
    private static String remedy(Evidence e, Box b) {
        String course = LengthText.mm(MendSizes.lap(e)), end = LengthText.mm(MendSizes.side(e));
        boolean below = isCovered(e, new Box(b.minX(), b.minY() - BESIDE, b.maxX(), b.minY() - 1));
        boolean above = isCovered(e, new Box(b.minX(), b.maxY() + 1, b.maxX(), b.maxY() + BESIDE));
        boolean beside = isCovered(e, new Box(b.minX() - BESIDE, b.minY(), b.minX() - 1, b.maxY()))
                || isCovered(e, new Box(b.maxX() + 1, b.minY(), b.maxX() + BESIDE, b.maxY()));
        if (!below && !above && !beside) {
            return "Wrap it in courses from the base up: each laps the one below by " + course + ", sheets of one course lap by " + end + ".";
        }
        Box wall = e.elevation().outline().box();
        List<String> how = new ArrayList<>();
        if (below) {
            how.add("laps the sheet below by " + course);
        } else if (b.minY() <= wall.minY()) {
            how.add("runs on past the base");
        }
        if (beside) {
            how.add((below ? "" : "laps ") + "those beside it by " + end);
        }
        if (b.minX() <= wall.minX() || b.maxX() >= wall.maxX()) {
            how.add("runs on past the side of the wall");
        }
        String lay = "Lay membrane over it that " + PieceWords.list(how.isEmpty() ? List.of("covers it all") : how);
        return lay + (above ? ", with its upper edge tucked in behind the sheet above by " + course
                : ", and carry it on past the upper end of the wall") + ". Tape its edges.";
    }

    private static boolean isCovered(Evidence e, Box place) {
        return e.stack().meeting(Surface.WALL, place).stream().anyMatch(f -> Sheets.covers(f) && f.region().overlaps(Region.of(place)));
    }

    /** Ids of what borders it, in laying order. */
    private static List<String> bordering(Evidence e, Region bare) {
        TreeMap<Integer, String> found = new TreeMap<>();
        List<EdgeFrame> edges = bare.edges().stream().map(EdgeFrame::of).toList();
        for (Face f : e.stack().meeting(Surface.WALL, bare.box().grow(BESIDE))) {
            if (Sheets.covers(f) && edges.stream().anyMatch(s -> !s.inside(f.region(), -s.side()).isEmpty())) {
                found.put(f.number(), f.piece().id());
            }
        }
        return List.copyOf(found.values());
    }
}
