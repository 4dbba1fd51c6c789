package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Segment;
import rainlap.joint.BuildingCorner;
import rainlap.measure.LengthText;
import rainlap.rule.Beside;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.wall.EdgeRole;
import rainlap.wall.Surface;

/** A stretch of a building corner, and what the rules of corners have in common. */
record CornerStretch(Evidence evidence, BuildingCorner corner, double from, double to) {
    /** The drawing's own tolerance: 1 mm. */
    private static final double LEAST = 100;
    /** How far from a corner a sheet is still named as the one that stops there: 100 mm. */
    private static final long NEAR = 10_000;

    /** Judges each stretch that a rule looks for, each kind of stretch apart; corners without one hold. */
    static Stream<Outcome> judge(Evidence e, Function<BuildingCorner, List<Intervals>> where, Function<CornerStretch, Outcome> broken) {
        if (e.buildingCorners().isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("the outline has no building corner"));
        }
        return e.buildingCorners().stream().flatMap(c -> {
            List<Outcome> out = new ArrayList<>();
            for (Intervals found : where.apply(c)) {
                for (int i = 0; i < found.count(); i++) {
                    if (found.to(i) - found.from(i) >= LEAST) {
                        out.add(broken.apply(new CornerStretch(e, c, found.from(i), found.to(i))));
                    }
                }
            }
            if (out.isEmpty()) {
                out.add(Outcome.Holds.of(c.turns().stream().map(t -> t.face().piece().id()).distinct().toList()));
            }
            return out.stream();
        });
    }

    /** Where no membrane crosses a corner. */
    static Intervals unwrapped(BuildingCorner c) {
        return c.wrap().below(1);
    }

    static Intervals wrapped(BuildingCorner c) {
        return Intervals.of(0, frame(c).length()).minus(unwrapped(c));
    }

    static EdgeFrame frame(BuildingCorner c) {
        return EdgeFrame.of(c.edge().line());
    }

    Segment line() {
        EdgeFrame f = frame(corner);
        Segment s = new Segment(f.at(from), f.at(to));
        return s.a().y() <= s.b().y() ? s : s.reversed();
    }

    Place place() {
        return Place.line(evidence.elevation(), Surface.WALL, line());
    }

    /** Membranes that go round within the stretch; where none does, those that stop near it. */
    List<String> pieces() {
        Intervals span = Intervals.of(from, to);
        List<String> round = corner.turns().stream().filter(t -> !t.where().intersect(span).isEmpty())
                .map(t -> t.face().piece().id()).distinct().toList();
        return round.isEmpty() ? Beside.membranes(evidence.stack(), line(), NEAR) : round;
    }

    /** {@code left external corner}: by the half of the wall it stands in. */
    String name() {
        long middle = (evidence.elevation().outline().box().minX() + evidence.elevation().outline().box().maxX()) / 2;
        String side = line().a().x() + line().b().x() < 2 * middle ? "left " : "right ";
        return side + (corner.edge().role() == EdgeRole.INTERNAL_CORNER ? "internal corner" : "external corner");
    }

    String length() {
        return LengthText.mm(Math.round(to - from));
    }

    /** What mends it where it is not wrapped, or by too little. */
    CornerStrip strip() {
        return CornerStrip.at(evidence, line().box());
    }

    boolean isTaped() {
        return Intervals.of(from, to).minus(corner.taped()).isEmpty();
    }
}
