package rainlap.rule.lap;

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
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** A part of the wall that nothing covers. */
public final class BareWall implements Rule {
    static final RuleInfo INFO = RuleInfo.of("bare-wall", "bare wall", RuleInfo.Theme.LAPS);

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
                        BareRemedy.of(e, b));
    }

    private static boolean isClad(Evidence e, Bare bare) {
        return e.stack().meeting(Surface.WALL, bare.region().box()).stream()
                .anyMatch(f -> f.kind() == MaterialKind.CLADDING && f.region().overlaps(bare.region()));
    }

    /** Ids of what borders it, in laying order. */
    private static List<String> bordering(Evidence e, Region bare) {
        TreeMap<Integer, String> found = new TreeMap<>();
        List<EdgeFrame> edges = bare.edges().stream().map(EdgeFrame::of).toList();
        for (Face f : e.stack().meeting(Surface.WALL, bare.box().grow(BareCover.BESIDE))) {
            if (Sheets.covers(f) && edges.stream().anyMatch(s -> !s.inside(f.region(), -s.side()).isEmpty())) {
                found.put(f.number(), f.piece().id());
            }
        }
        return List.copyOf(found.values());
    }
}
