package rainlap.rule.lap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.geom.Point;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** The end laps of two successive courses stand too near one another. */
public final class UnstaggeredLaps implements Rule {
    static final RuleInfo INFO = RuleInfo.of("unstaggered-laps", "end laps not staggered", RuleInfo.Theme.LAPS, Limit.LAP_STAGGER);

    /** An end lap of the upper course and one of the lower course that meet at a lap of the courses. */
    private record Pair(Joint upper, Joint lower) {
        /** From exposed edge to exposed edge, level, where the courses meet. */
        long apart() {
            return Math.abs(EndLaps.foot(upper).x() - EndLaps.top(lower).x());
        }
    }

    /** An end lap and where its exposed edge begins and ends. */
    private record End(Joint joint, Point foot, Point top) {
        static End of(Joint j) {
            return new End(j, EndLaps.foot(j), EndLaps.top(j));
        }
    }

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        LimitValue required = e.practice().get(Limit.LAP_STAGGER);
        Set<Pair> pairs = pairs(e);
        if (pairs.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no two successive courses both have end laps"));
        }
        return pairs.stream().map(p -> required.isMetBy(p.apart() / 100.0) ? new Outcome.Holds(pieces(p)) : broken(e, p, required));
    }

    private static Set<Pair> pairs(Evidence e) {
        Map<Face, List<End>> ends = new HashMap<>();
        EndLaps.onWall(e).stream().map(End::of).forEach(end -> {
            ends.computeIfAbsent(end.joint.outer(), k -> new ArrayList<>(2)).add(end);
            ends.computeIfAbsent(end.joint.inner(), k -> new ArrayList<>(2)).add(end);
        });
        Set<Pair> pairs = new LinkedHashSet<>();
        MembraneJoints.of(e).filter(j -> j.kind() == JointKind.COURSE_LAP || j.kind() == JointKind.REVERSE_LAP).forEach(c -> {
            for (End a : ends.getOrDefault(c.outer(), List.of())) {
                for (End b : ends.getOrDefault(c.inner(), List.of())) {
                    add(a, b, pairs);
                }
            }
        });
        return pairs;
    }

    /** Adds the two as upper and lower, unless they are of one course or the upper one begins higher than where the lower one ends. */
    private static void add(End a, End b, Set<Pair> pairs) {
        int higher = Long.compare(a.foot.y(), b.foot.y()) + Long.compare(a.top.y(), b.top.y());
        End upper = higher > 0 ? a : b, lower = higher > 0 ? b : a;
        if (a.joint != b.joint && higher != 0 && upper.foot.y() <= lower.top.y()) {
            pairs.add(new Pair(upper.joint, lower.joint));
        }
    }

    private static List<String> pieces(Pair p) {
        return Stream.of(p.upper.outer(), p.upper.inner(), p.lower.outer(), p.lower.inner()).map(f -> f.piece().id()).distinct().toList();
    }

    private static Outcome broken(Evidence e, Pair p, LimitValue required) {
        String apart = LengthText.mmBeside(p.apart(), required.hundredths()), move = LengthText.mmUp(required.hundredths() - p.apart());
        Point foot = EndLaps.foot(p.upper);
        Place where = Place.line(e.elevation(), Surface.WALL, across(p));
        String upper = p.upper.outer().piece().id() + "/" + p.upper.inner().piece().id();
        String lower = p.lower.outer().piece().id() + "/" + p.lower.inner().piece().id();
        return Finding.of(INFO, where, pieces(p)).asks(required).measures(p.apart()).reads(apart + " apart", Asked.briefly(required))
                .joint(p.upper.id())
                .says("The end lap " + upper + " stands " + apart + " from the end lap " + lower + " of the course below, at "
                        + Place.level(foot.y()) + ", x " + Place.mm(foot.x()) + ". " + Asked.sentence(required),
                        "Move the end lap " + upper + " " + move + " further " + (foot.x() >= EndLaps.top(p.lower).x() ? "to the right"
                        : "to the left") + " of the end lap " + lower + ", " + required.number() + " from edge to edge.");
    }

    /** From the one edge to the other at the foot of the upper; up the edge where one stands straight above the other. */
    private static List<Point> across(Pair p) {
        Point foot = EndLaps.foot(p.upper), top = EndLaps.top(p.lower);
        if (p.apart() >= 100) {
            return List.of(new Point(Math.min(foot.x(), top.x()), foot.y()), new Point(Math.max(foot.x(), top.x()), foot.y()));
        }
        return List.of(foot, top.y() > foot.y() ? new Point(foot.x(), top.y()) : EndLaps.top(p.upper));
    }
}
