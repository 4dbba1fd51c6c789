package rainlap.rule.lap;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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
    private record Pair(End upper, End lower) {
        /** From exposed edge to exposed edge, level, where the courses meet. */
        long apart() {
            return Math.abs(upper.foot.x() - lower.top.x());
        }

        /** Ids of those of both, each once. */
        List<String> pieces() {
            List<String> out = new ArrayList<>(4);
            for (Face f : List.of(upper.joint.outer(), upper.joint.inner(), lower.joint.outer(), lower.joint.inner())) {
                if (!out.contains(f.piece().id())) {
                    out.add(f.piece().id());
                }
            }
            return out;
        }
    }

    /** An end lap, where its exposed edge begins and ends, and those of the course below that it was found to meet. */
    private static final class End {
        private final Joint joint;
        private final Point foot;
        private final Point top;
        private final List<End> below = new ArrayList<>(2);

        End(Joint joint) {
            this.joint = joint;
            this.foot = EndLaps.foot(joint);
            this.top = EndLaps.top(joint);
        }

        String inWords() {
            return joint.outer().piece().id() + "/" + joint.inner().piece().id();
        }
    }

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        LimitValue required = e.practice().get(Limit.LAP_STAGGER);
        List<Pair> pairs = pairs(e);
        if (pairs.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no two successive courses both have end laps"));
        }
        return pairs.stream().map(p -> required.isMetBy(p.apart() / 100.0) ? new Outcome.Holds(p::pieces) : broken(e, p, required));
    }

    private static List<Pair> pairs(Evidence e) {
        List<Joint> all = EndLaps.onWall(e);
        Map<Face, List<End>> ends = new IdentityHashMap<>(2 * all.size());
        for (Joint j : all) {
            End end = new End(j);
            ends.computeIfAbsent(j.outer(), k -> new ArrayList<>(2)).add(end);
            ends.computeIfAbsent(j.inner(), k -> new ArrayList<>(2)).add(end);
        }
        List<Pair> pairs = new ArrayList<>();
        MembraneJoints.of(e).filter(j -> j.kind() == JointKind.COURSE_LAP || j.kind() == JointKind.REVERSE_LAP).forEach(c -> {
            for (End a : ends.getOrDefault(c.outer(), List.of())) {
                for (End b : ends.getOrDefault(c.inner(), List.of())) {
                    add(a, b, pairs);
                }
            }
        });
        return pairs;
    }

    /** Adds the two as upper and lower, but for those already met, of one course, or of which the upper one begins higher than where the lower one ends. */
    private static void add(End a, End b, List<Pair> pairs) {
        int higher = Long.compare(a.foot.y(), b.foot.y()) + Long.compare(a.top.y(), b.top.y());
        End upper = higher > 0 ? a : b, lower = higher > 0 ? b : a;
        if (a != b && higher != 0 && upper.foot.y() <= lower.top.y() && !upper.below.contains(lower)) {
            upper.below.add(lower);
            pairs.add(new Pair(upper, lower));
        }
    }

    private static Outcome broken(Evidence e, Pair p, LimitValue required) {
        String apart = LengthText.mmBeside(p.apart(), required.hundredths()), move = LengthText.mmUp(required.hundredths() - p.apart());
        Point foot = p.upper.foot;
        Place where = Place.line(e.elevation(), Surface.WALL, across(p));
        String upper = p.upper.inWords(), lower = p.lower.inWords();
        return Finding.of(INFO, where, p.pieces()).asks(required).measures(p.apart()).reads(apart + " apart", Asked.briefly(required))
                .joint(p.upper.joint.id())
                .says("The end lap " + upper + " stands " + apart + " from the end lap " + lower + " of the course below, at "
                        + Place.level(foot.y()) + ", x " + Place.mm(foot.x()) + ". " + Asked.sentence(required),
                        "Move the end lap " + upper + " " + move + " further " + (foot.x() >= p.lower.top.x() ? "to the right"
                        : "to the left") + " of the end lap " + lower + ", " + required.number() + " from edge to edge.");
    }

    /** From the one edge to the other at the foot of the upper; up the edge where one stands straight above the other. */
    private static List<Point> across(Pair p) {
        Point foot = p.upper.foot, top = p.lower.top;
        if (p.apart() >= 100) {
            return List.of(new Point(Math.min(foot.x(), top.x()), foot.y()), new Point(Math.max(foot.x(), top.x()), foot.y()));
        }
        return List.of(foot, top.y() > foot.y() ? new Point(foot.x(), top.y()) : p.upper.top);
    }
}
