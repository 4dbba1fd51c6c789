package rainlap.rule.penetration;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Segment;
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
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.stack.Face;
import rainlap.wall.Penetration;
import rainlap.wall.Surface;

/** A pipe, duct, cable or flue passes the wall without a collar or an adhered patch, or with one that does not go all round. */
public final class NoCollar implements Rule {
    static final RuleInfo INFO = RuleInfo.of("no-collar", "no collar", RuleInfo.Theme.PENETRATIONS);
    static final Source SOURCE = new Source("EPA Indoor airPLUS technical guidance", "", "1.5", Known.PUBLISHED);
    /** The drawing's own tolerance: 1 mm. */
    private static final double LEAST = 100;
    private static final List<String> HOT = List.of("flue", "chimney", "stove", "hot", "exhaust");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Penetration> all = e.elevation().penetrations();
        return all.isEmpty() ? Stream.of(new Outcome.DoesNotApply("the wall has no penetration")) : all.stream().map(p -> judge(e, p));
    }

    private static Outcome judge(Evidence e, Penetration p) {
        List<Face> beside = e.stack().meeting(Surface.WALL, p.region().box().grow(3));
        List<Face> closing = beside.stream().filter(NoCollar::closes).toList();
        double open = 0, round = 0;
        for (Segment s : p.region().edges()) {
            EdgeFrame rim = EdgeFrame.of(s);
            List<Intervals> closed = closing.stream().map(f -> rim.inside(f.region(), -rim.side())).toList();
            round += rim.length();
            open += Intervals.of(0, rim.length()).minus(Intervals.unionOf(closed)).total();
        }
        return open < LEAST ? Outcome.Holds.of(ids(closing)) : broken(e, p, beside, Math.round(100 * open / round));
    }

    /** A collar is made to lie close to the pipe; anything else must stick. */
    private static boolean closes(Face f) {
        MaterialKind kind = f.kind();
        return kind == MaterialKind.COLLAR || Sheets.isStrip(f) || kind == MaterialKind.MEMBRANE && f.piece().bond().isFull();
    }

    private static List<String> ids(List<Face> faces) {
        return faces.stream().map(f -> f.piece().id()).distinct().toList();
    }

    private static Outcome broken(Evidence e, Penetration p, List<Face> beside, long openShare) {
        boolean none = beside.stream().noneMatch(NoCollar::closes);
        List<String> sheets = ids(beside.stream().filter(f -> closes(f) || f.kind() == MaterialKind.MEMBRANE).toList());
        String name = p.id() + " (" + p.kind() + ")", by = sheets.isEmpty() ? "the wall" : PieceWords.list(sheets);
        String drawn = none ? "no collar" : "open over " + openShare + " in 100";
        return Finding.of(INFO, Place.area(e.elevation(), Surface.WALL, List.of(p.region())), sheets).source(SOURCE)
                .reads(drawn, "collar all round")
                .says((none ? name + " passes " + by + " without a collar or an adhered patch" : name + " is closed only in part: " + openShare + " in 100 of its rim lie open")
                        + ", so water that runs down the wall gets in along it. " + SOURCE.document() + ", " + SOURCE.clause()
                        + ", asks for the membrane to be fully sealed at penetrations.", remedy(e, p));
    }

    private static String remedy(Evidence e, Penetration p) {
        long lap = e.practice().get(rainlap.practice.Limit.TAPE_COVER).hundredths();
        long across = Math.max(p.region().box().width(), p.region().box().height()) + 2 * lap;
        String fit = "Fit a collar round " + p.id() + ", at least " + LengthText.mmUp(across) + " across, with " + MendSizes.collarFlat(e)
                + "; tuck its top under a slit in the sheet by " + LengthText.mm(MendSizes.lap(e)) + " or tape it, and tape its sides.";
        return isHot(p) ? fit + " Clearance round a flue or hot duct is for licensed people and local code: ask them first, and bring no membrane or tape nearer than they say." : fit;
    }

    /** Whether it is named as one that gets hot. */
    public static boolean isHot(Penetration p) {
        String kind = p.kind().toLowerCase(Locale.ROOT);
        return HOT.stream().anyMatch(kind::contains);
    }
}
