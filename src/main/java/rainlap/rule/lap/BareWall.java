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
import rainlap.material.MaterialKind;
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
                .says((isClad(e, bare) ? "No membrane covers the wall at " + where.inWords() + ": what gets past the cladding there reaches the frame. "
                        : "Nothing covers the wall at " + where.inWords() + ": rain reaches the frame there. ") + "Common practice asks for the whole wall to be covered.",
                        remedy(e, b));
    }

    private static boolean isClad(Evidence e, Bare bare) {
        return e.stack().meeting(Surface.WALL, bare.region().box()).stream()
                .anyMatch(f -> f.piece().material().kind() == MaterialKind.CLADDING && f.region().overlaps(bare.region()));
    }

    /** As the place allows: there is not always a sheet below, beside or above. */
    private static String remedy(Evidence e, Box b) {
        String course = LengthText.mm(MendSizes.lap(e)), end = LengthText.mm(MendSizes.side(e));
        List<Face> foot = over(e, new Box(b.minX(), b.minY() - BESIDE, b.maxX(), b.minY() - 1)), head = over(e, new Box(b.minX(), b.maxY() + 1, b.maxX(), b.maxY() + BESIDE));
        boolean below = !foot.isEmpty(), above = !head.isEmpty();
        boolean beside = !over(e, new Box(b.minX() - BESIDE, b.minY(), b.minX() - 1, b.maxY())).isEmpty()
                || !over(e, new Box(b.maxX() + 1, b.minY(), b.maxX() + BESIDE, b.maxY())).isEmpty();
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
        return lay + (above ? tucked(e, b, foot, head, course) : ", and carry it on past the upper end of the wall. Tape its edges.");
    }

    /** Behind the sheet above; through a slit where that goes on below. A strip that lies there has to come off first, and where there is no sheet behind it, it alone closes the edge. */
    private static String tucked(Evidence e, Box b, List<Face> foot, List<Face> head, String course) {
        List<String> strips = head.stream().anyMatch(Sheets::isSheet) ? List.of() : head.stream().map(f -> f.piece().id()).distinct().toList();
        String first = strips.isEmpty() ? "" : " Take off " + PieceWords.list(strips) + " first and put " + (strips.size() > 1 ? "new ones" : "a new one") + " over the upper edge.";
        long top = strips.isEmpty() ? b.maxY() + BESIDE : head.stream().mapToLong(f -> f.region().box().maxY()).max().orElseThrow();
        List<Face> sheets = over(e, new Box(b.minX(), b.maxY() + 1, b.maxX(), top)).stream().filter(Sheets::isSheet).toList();
        if (sheets.isEmpty()) {
            return "." + first + " Tape the other edges.";
        }
        String through = sheets.stream().filter(foot::contains).findFirst().map(f -> "through a slit in " + f.piece().id()).orElse("behind the sheet above");
        return ", with its upper edge tucked in " + through + " by " + course + "." + first + (strips.isEmpty() ? " Tape its edges." : " Tape the other edges.");
    }

    private static List<Face> over(Evidence e, Box place) {
        return e.stack().meeting(Surface.WALL, place).stream().filter(f -> Sheets.covers(f) && f.region().overlaps(Region.of(place))).toList();
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
