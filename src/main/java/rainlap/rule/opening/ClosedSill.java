package rainlap.rule.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.Sheets;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.OpeningRule;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/** The flange at the foot of a window or door is closed along its lower edge from end to end: what gets in at the foot cannot leave. */
public final class ClosedSill implements OpeningRule {
    static final RuleInfo INFO = RuleInfo.of("closed-sill", "sill cannot drain", RuleInfo.Theme.OPENINGS);
    private static final Source SOURCE = new Source("ASTM E2112", "", "Method A, 5.16.6 and 5.18.8", Known.PUBLISHED_SECONDARY);
    /** A flange whose lower edge lies no more than 100 mm below the sill belongs to it. Our own choice: common practice, no source. */
    private static final long NEAR = 10_000;
    /** The drawing's own tolerance: 1 mm. */
    private static final double LEAST = 100;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judge(Evidence e, Opening o, Consumer<Outcome> tell) {
        List<Face> flanges = flanges(e, o);
        if (flanges.isEmpty()) {
            tell.accept(new Outcome.DoesNotApply("no flange is drawn at the foot of " + o.id()));
        }
        flanges.forEach(f -> tell.accept(judge(e, o, f)));
    }

    private static List<Face> flanges(Evidence e, Opening o) {
        Box r = o.rect();
        return e.stack().meeting(Surface.WALL, new Box(r.minX(), r.minY() - NEAR, r.maxX(), r.minY())).stream()
                .filter(f -> f.kind() == MaterialKind.FRAME && f.box().minY() < r.minY() && f.box().minY() >= r.minY() - NEAR
                        && f.box().minX() < r.maxX() && r.minX() < f.box().maxX()).toList();
    }

    private static Outcome judge(Evidence e, Opening o, Face flange) {
        Box b = flange.box();
        Segment foot = new Segment(new Point(Math.max(b.minX(), o.rect().minX()), b.minY()), new Point(Math.min(b.maxX(), o.rect().maxX()), b.minY()));
        if (flange.piece().bond().seals(Edge.BOTTOM)) {
            return broken(e, o, flange, foot, List.of());
        }
        EdgeFrame edge = EdgeFrame.of(foot);
        Intervals open = Intervals.of(0, edge.length());
        List<String> closing = new ArrayList<>();
        for (Face f : e.stack().meeting(Surface.WALL, foot.box().grow(3))) {
            boolean closes = Sheets.isStrip(f) && e.stack().isOutside(f, flange) || f.kind() == MaterialKind.SEALANT;
            Intervals here = closes ? f.across(edge, 0, edge.length()) : Intervals.NONE;
            if (!here.isEmpty()) {
                open = open.minus(here);
                closing.add(f.piece().id());
            }
        }
        return open.total() >= LEAST ? Outcome.Holds.of(flange.piece().id()) : broken(e, o, flange, foot, closing.stream().distinct().toList());
    }

    private static Outcome broken(Evidence e, Opening o, Face flange, Segment foot, List<String> closing) {
        String id = flange.piece().id(), by = closing.isEmpty() ? "is bedded" : "is closed by " + PieceWords.list(closing);
        return Finding.of(INFO, Place.line(e.elevation(), Surface.WALL, foot), Stream.concat(Stream.of(id), closing.stream()).toList()).source(SOURCE)
                .reads("closed along its foot", "open, to drain")
                .says("The flange " + id + " at the foot of " + o.id() + " " + by + " along its whole lower edge: what the window lets in at its foot, or runs down behind it, cannot leave. "
                        + SOURCE.document() + ", " + SOURCE.clause() + ", has the sealant at the sill interrupted.",
                        (closing.isEmpty() ? "Cut the sealant out from under the lower edge of " + id : "Cut " + PieceWords.list(closing) + " away from the lower edge of " + id)
                        + " over at least half of its length, and leave that open; keep sides and head sealed.");
    }
}
