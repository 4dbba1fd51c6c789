package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.BuildingCorner;
import rainlap.joint.Sheets;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** The finishing bead at a building corner lies beneath the corner's tape, or beside it. Where there is no tape at all, {@link UntapedCorner} says so. */
public final class BeadOffTape implements Rule {
    static final RuleInfo INFO = RuleInfo.of("bead-off-tape", "bead not on the tape", RuleInfo.Theme.EDGES);
    /** The drawing's own tolerance: 1 mm. */
    private static final double LEAST = 100;
    private static final String ASKED = "Common practice is tape over all of a corner, then the finishing bead on top of it.";

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Outcome> out = new ArrayList<>();
        for (BuildingCorner c : e.buildingCorners()) {
            CornerBeads.of(e, c).forEach(b -> out.addAll(judge(e, c, b)));
        }
        return out.isEmpty() ? Stream.of(new Outcome.DoesNotApply(e.buildingCorners().isEmpty() ? "the outline has no building corner"
                : "no bead is drawn along a building corner")) : out.stream();
    }

    private static List<Outcome> judge(Evidence e, BuildingCorner c, CornerBeads b) {
        List<Outcome> out = new ArrayList<>();
        Intervals covered = b.covered(), beside = b.bare().intersect(taped(e, c));
        each(covered, (from, to) -> out.add(beneath(e, c, b, from, to)));
        each(beside, (from, to) -> out.add(beside(e, c, b, from, to)));
        if (out.isEmpty()) {
            out.add(b.on().isEmpty() ? new Outcome.DoesNotApply("where " + id(b) + " runs the corner has no tape: untaped-corner judges it") : Outcome.Holds.of(id(b)));
        }
        return out;
    }

    /** Where a strip lies over the fold. */
    private static Intervals taped(Evidence e, BuildingCorner c) {
        EdgeFrame fold = CornerStretch.frame(c);
        return Intervals.unionOf(strips(e, c).stream().map(f -> f.across(fold, 0, fold.length())).toList());
    }

    private static List<Face> strips(Evidence e, BuildingCorner c) {
        return e.stack().meeting(Surface.WALL, c.edge().line().box()).stream().filter(Sheets::isStrip).toList();
    }

    private interface Stretch {
        void on(double from, double to);
    }

    private static void each(Intervals all, Stretch then) {
        for (int i = 0; i < all.count(); i++) {
            if (all.to(i) - all.from(i) >= LEAST) {
                then.on(all.from(i), all.to(i));
            }
        }
    }

    private static String id(CornerBeads b) {
        return b.bead().piece().id();
    }

    private static Outcome beneath(Evidence e, BuildingCorner c, CornerBeads b, double from, double to) {
        List<String> strips = b.under().stream().filter(x -> !x.where().intersect(Intervals.of(from, to)).isEmpty()).map(x -> x.strip().piece().id()).distinct().toList();
        String t = PieceWords.list(strips);
        return finding(e, c, b, from, to, strips).reads("beneath the tape", "on the tape")
                .says(id(b) + " lies beneath " + t + " along " + length(from, to) + " of the " + name(e, c)
                        + ": over the ridge of a bead a tape stands off, and water runs along it. " + ASKED,
                        "Take " + t + " off over " + length(from, to) + ", cut " + id(b) + " away and clean the sheet, stick new tape over the fold and rub it down; then run the bead along its edges.");
    }

    private static Outcome beside(Evidence e, BuildingCorner c, CornerBeads b, double from, double to) {
        EdgeFrame fold = CornerStretch.frame(c);
        List<String> strips = strips(e, c).stream().filter(f -> !f.across(fold, 0, fold.length()).intersect(Intervals.of(from, to)).isEmpty()).map(f -> f.piece().id()).distinct().toList();
        String t = PieceWords.list(strips);
        return finding(e, c, b, from, to, strips).reads("beside the tape", "on the tape")
                .says(id(b) + " runs beside " + t + " along " + length(from, to) + " of the " + name(e, c) + " and does not touch it: it seals nothing there. " + ASKED,
                        "Cut " + id(b) + " away over " + length(from, to) + ", and run a bead along the edge of " + t + ", half on the tape and half on the sheet.");
    }

    private static Finding.Builder finding(Evidence e, BuildingCorner c, CornerBeads b, double from, double to, List<String> strips) {
        EdgeFrame fold = CornerStretch.frame(c);
        Box box = b.bead().box();
        double t = fold.t((box.minX() + box.maxX()) / 2.0, (box.minY() + box.maxY()) / 2.0);
        Point a = fold.at(from, t), z = fold.at(to, t);
        Segment line = a.y() <= z.y() ? new Segment(a, z) : new Segment(z, a);
        return Finding.of(INFO, Place.line(e.elevation(), Surface.WALL, line), Stream.concat(Stream.of(id(b)), strips.stream()).toList()).defences(2);
    }

    private static String name(Evidence e, BuildingCorner c) {
        return new CornerStretch(e, c, 0, 0).name();
    }

    private static String length(double from, double to) {
        return LengthText.mm(Math.round(to - from));
    }
}
