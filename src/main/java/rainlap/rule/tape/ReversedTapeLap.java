package rainlap.rule.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Point;
import rainlap.geom.Segment;
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

/** Where a tape that stands goes on in another length, the lower length lies over the upper one: water meets its upper end. */
public final class ReversedTapeLap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("reversed-tape-lap", "tape lapped upwards", RuleInfo.Theme.TAPE);
    /** Of the narrower one, so much must lie on the other for the two to be one run. Our own choice: common practice, no source. */
    private static final double ON_ONE_LINE = 0.5;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Outcome> out = new ArrayList<>();
        List<Face> standing = e.onWall(MaterialKind.TAPE).stream().filter(ReversedTapeLap::stands).toList();
        BoxTree tree = new BoxTree(standing.stream().map(Face::box).toList());
        for (Face outer : standing) {
            for (int i : tree.meeting(outer.box())) {
                Face inner = standing.get(i);
                if (e.stack().isOutside(outer, inner) && isOneRun(outer, inner)) {
                    out.add(judge(e, outer, inner));
                }
            }
        }
        return out.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no tape that stands goes on in another length")) : out.stream();
    }

    private static boolean stands(Face f) {
        return f.box().height() > f.box().width() && Sheets.isStrip(f);
    }

    /** Whether one ends on the other and goes on beyond it. */
    private static boolean isOneRun(Face a, Face b) {
        Box p = a.box(), q = b.box();
        long across = Math.min(p.maxX(), q.maxX()) - Math.max(p.minX(), q.minX());
        boolean goesOn = p.minY() < q.minY() && p.maxY() < q.maxY() || q.minY() < p.minY() && q.maxY() < p.maxY();
        return goesOn && across >= ON_ONE_LINE * Math.min(p.width(), q.width()) && a.region().overlaps(b.region());
    }

    private static Outcome judge(Evidence e, Face outer, Face inner) {
        String over = outer.piece().id(), under = inner.piece().id();
        if (outer.box().maxY() > inner.box().maxY()) {
            return Outcome.Holds.of(over, under);
        }
        Box b = outer.box();
        String lap = LengthText.mm(b.maxY() - inner.box().minY());
        return Finding.of(INFO, Place.line(e.elevation(), Surface.WALL, new Segment(new Point(b.minX(), b.maxY()), new Point(b.maxX(), b.maxY()))), List.of(over, under))
                .reads("lower over upper", "upper over lower")
                .says(over + " goes on from " + under + " downwards and lies over it: water that runs down " + under + " meets the upper end of " + over
                        + ". Common practice laps tapes like shingles, the upper length over the lower one.",
                        "Free the lower end of " + under + " over " + lap + ", stick it down again over " + over + " and rub it down; where the adhesive is spent stick a new length over both.");
    }
}
