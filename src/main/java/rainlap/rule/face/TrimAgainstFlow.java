package rainlap.rule.face;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Segment;
import rainlap.joint.Direction;
import rainlap.joint.Sheets;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** The upper edge of a trim lies open on a trim or sheet that goes on above it: water that runs down goes in behind the trim. */
public final class TrimAgainstFlow implements Rule {
    static final RuleInfo INFO = RuleInfo.of("trim-against-flow", "trim lapped against the flow", RuleInfo.Theme.FACE);
    private static final Source SOURCE = new Source("FEMA P-499, Fact Sheet 1.9", "12/10", "page 2", Known.PUBLISHED);
    /** The drawing's own tolerance: 1 mm. */
    private static final double LEAST = 100;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Face> trims = e.onWall(MaterialKind.TRIM);
        return trims.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no trim is drawn at this stage")) : trims.stream().flatMap(t -> judge(e, t));
    }

    private static Stream<Outcome> judge(Evidence e, Face trim) {
        List<Outcome> out = new ArrayList<>();
        if (!trim.piece().bond().seals(Edge.TOP)) {
            trim.freeEdges().stream().filter(TrimAgainstFlow::facesUp).forEach(s -> judge(e, trim, s, out));
        }
        return out.isEmpty() ? Stream.of(Outcome.Holds.of(trim.piece().id())) : out.stream();
    }

    /** The interior lies to the left, so an edge that faces up runs to the left. */
    private static boolean facesUp(Segment s) {
        return s.a().x() - s.b().x() > Direction.PLUMB * s.lengthMm() * 100;
    }

    /** At each place of an edge the outermost piece beneath counts. */
    private static void judge(Evidence e, Face trim, Segment edge, List<Outcome> out) {
        EdgeFrame frame = EdgeFrame.of(edge);
        List<Face> near = e.stack().meeting(Surface.WALL, edge.box().grow(3)).stream().filter(f -> f != trim).toList();
        Intervals left = Intervals.of(0, frame.length());
        for (Face f : near) {
            left = e.stack().isOutside(f, trim) && hides(f) ? left.minus(across(f, frame)) : left;
        }
        List<Face> beneath = near.stream().filter(f -> e.stack().isOutside(trim, f) && (Cladding.is(f) || Cladding.isOf(f, MaterialKind.TRIM)))
                .sorted(Comparator.comparingInt(Face::number).reversed()).toList();
        for (Face f : beneath) {
            Intervals open = across(f, frame).intersect(left);
            for (int i = 0; i < open.count(); i++) {
                Segment s = new Segment(frame.at(open.from(i)), frame.at(open.to(i)));
                if (open.to(i) - open.from(i) >= LEAST && e.isOnThisWall(Surface.WALL, List.of(s.a(), s.b()))) {
                    out.add(broken(e, trim, f, s));
                }
            }
            left = left.minus(open);
        }
    }

    private static Intervals across(Face f, EdgeFrame frame) {
        return f.across(frame, 0, frame.length());
    }

    /** Cladding or a trim over it, a tape stuck over it, or a bead along it. */
    private static boolean hides(Face f) {
        return Cladding.is(f) || Cladding.isOf(f, MaterialKind.TRIM) || Cladding.isOf(f, MaterialKind.SEALANT) || Sheets.isStrip(f);
    }

    private static Outcome broken(Evidence e, Face trim, Face beneath, Segment s) {
        String t = trim.piece().id(), b = beneath.piece().id(), width = LengthText.mm(Math.round(s.lengthMm() * 100));
        Place where = Place.line(e.elevation(), Surface.WALL, s);
        String mend = Cladding.is(beneath) ? "Tuck the upper edge of " + t + " in behind " + b + " by at least 50, or set a flashing over it that goes up behind " + b
                : "Take " + t + " off and put it back with its upper end beneath " + b + ", lapped by at least 50";
        return Finding.of(INFO, where, List.of(t, b)).source(SOURCE).reads("upper edge open over " + width, "upper over lower")
                .says("The upper edge of " + t + " lies open on " + b + " at " + where.inWords() + ": water that runs down " + b + " goes in behind " + t
                        + ". Laps must never turn an open seam towards water that runs down (FEMA P-499, Fact Sheet 1.9, page 2).",
                        mend + ". Folded edges cut: wear gloves.");
    }
}
