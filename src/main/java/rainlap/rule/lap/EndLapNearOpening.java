package rainlap.rule.lap;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * The exposed edge of an end lap comes too near a jamb line of an opening, corners included. Measured straight: level beside the opening,
 * to the corner above and below it. Over the middle of a head or below the middle of a sill an end lap is far from both corners.
 */
public final class EndLapNearOpening implements Rule {
    static final RuleInfo INFO =
            RuleInfo.of("end-lap-near-opening", "end lap near opening", RuleInfo.Theme.LAPS, Limit.END_LAP_TO_OPENING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Opening> openings = e.elevation().openings();
        List<Joint> ends = EndLaps.onWall(e);
        if (openings.isEmpty() || ends.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply(openings.isEmpty() ? "the wall has no openings" : "no course has an end lap"));
        }
        LimitValue required = e.practice().get(Limit.END_LAP_TO_OPENING);
        return ends.stream().flatMap(j -> judge(e, j, near(e, j, required), required));
    }

    private static List<Opening> near(Evidence e, Joint j, LimitValue required) {
        long reach = Math.min(required.hundredths(), e.elevation().outline().box().width() + e.elevation().outline().box().height());
        return e.elevation().openingsMeeting(Box.of(j.line()).grow(reach));
    }

    private static Stream<Outcome> judge(Evidence e, Joint j, List<Opening> near, LimitValue required) {
        List<Outcome> out = new ArrayList<>();
        for (Opening o : near) {
            double left = distance(j, o.edge(Side.LEFT)), right = distance(j, o.edge(Side.RIGHT));
            long least = Math.round(Math.min(left, right));
            if (!required.isMetBy(least / 100.0)) {
                out.add(broken(e, j, o, left <= right ? Side.LEFT : Side.RIGHT, least, required));
            }
        }
        return out.isEmpty() ? Stream.of(Outcome.Holds.of(j)) : out.stream();
    }

    private static Outcome broken(Evidence e, Joint j, Opening o, Side jamb, long least, LimitValue required) {
        String pieces = j.outer().piece().id() + "/" + j.inner().piece().id();
        String drawn = LengthText.mmBeside(least, required.hundredths());
        Place where = Place.line(e.elevation(), j.surface(), j.line());
        boolean toLeft = EndLaps.foot(j).x() < o.edge(jamb).a().x();
        return Finding.of(INFO, where, List.of(j.outer().piece().id(), j.inner().piece().id())).asks(required).measures(least)
                .reads(drawn + " from " + o.id(), Asked.briefly(required)).joint(j.id())
                .says("The end lap " + pieces + " comes within " + drawn + " of the " + jamb.inWords() + " line of " + o.id() + ", at "
                        + where.inWords() + ". " + Asked.sentence(required),
                        "Move the end lap " + LengthText.mmUp(further(j, o.edge(jamb), least, required.hundredths())) + " further to the "
                        + (toLeft ? "left" : "right") + ", so that its edge keeps " + required.number() + " from " + o.id() + ".");
    }

    /** How far level, so that it is as far away straight: above and below an opening that is more than what is short. */
    private static long further(Joint j, Segment jamb, long least, long required) {
        Box line = Box.of(j.line());
        if (line.width() > 0) {
            return required - least;
        }
        double beside = Math.max(0, Math.max(jamb.box().minY() - line.maxY(), line.minY() - jamb.box().maxY()));
        return (long) Math.ceil(Math.sqrt(Math.max(0, (double) required * required - beside * beside))) - Math.abs(line.minX() - jamb.a().x());
    }

    private static double distance(Joint j, Segment jamb) {
        return segments(j.line()).stream().mapToDouble(s -> distance(s, jamb)).min().orElseThrow();
    }

    private static List<Segment> segments(List<Point> line) {
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i + 1 < line.size(); i++) {
            out.add(new Segment(line.get(i), line.get(i + 1)));
        }
        return Collections.unmodifiableList(out);
    }

    /** Between two segments that do not cross, from an end of one to the other: an end lap ends at an opening, it never crosses its jamb. */
    private static double distance(Segment a, Segment b) {
        return Math.min(Math.min(distance(a.a(), b), distance(a.b(), b)), Math.min(distance(b.a(), a), distance(b.b(), a)));
    }

    private static double distance(Point p, Segment s) {
        double dx = s.b().x() - s.a().x(), dy = s.b().y() - s.a().y();
        double along = ((p.x() - s.a().x()) * dx + (p.y() - s.a().y()) * dy) / (dx * dx + dy * dy);
        double t = Math.max(0, Math.min(1, along));
        return Math.hypot(p.x() - s.a().x() - t * dx, p.y() - s.a().y() - t * dy);
    }
}
