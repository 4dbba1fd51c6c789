package rainlap.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.stack.Crew;
import rainlap.wall.Surface;
import rainlap.water.Step;

/**
 * Where the frame lies bare in a gap between two sheets. What is told of the gap is told of one of its edges, and what covers that, such as a tape stuck too high, need not cover
 * the gap: rain wets the frame between the edges then, however far from the line that is told.
 */
final class BareGaps {
    private static final long NEAR = Grid.MM;

    private final Evidence evidence;
    private final Map<Surface, List<Part>> parts = new HashMap<>();
    private final Map<Surface, BoxTree> trees = new HashMap<>();

    /** What of one straight gap lies bare. */
    private record Part(Joint joint, Run run, List<Region> bare) {
        Box box() {
            return run.strip(NEAR).box();
        }

        /** Whether it lies beside a line that runs along the gap, in the surface's own frame. */
        boolean isBeside(List<Point> line) {
            EdgeFrame e = EdgeFrame.of(run.line());
            boolean along = line.stream().allMatch(p -> Math.abs(e.t(p.x(), p.y())) <= run.lap().greatest() + NEAR);
            return along && bare.stream().anyMatch(r -> overlap(e, line, r.shell().points()) > NEAR);
        }

        private static double overlap(EdgeFrame e, List<Point> a, List<Point> b) {
            return Math.min(last(e, a), last(e, b)) - Math.max(first(e, a), first(e, b));
        }

        private static double first(EdgeFrame e, List<Point> of) {
            return of.stream().mapToDouble(p -> e.s(p.x(), p.y())).min().orElseThrow();
        }

        private static double last(EdgeFrame e, List<Point> of) {
            return of.stream().mapToDouble(p -> e.s(p.x(), p.y())).max().orElseThrow();
        }
    }

    private BareGaps(Evidence evidence) {
        this.evidence = evidence;
    }

    static BareGaps of(Evidence e, Crew crew) {
        BareGaps all = new BareGaps(e);
        List<Joint> gaps = e.joints().ofKind(JointKind.GAP).toList();
        crew.gather(gaps, run -> run.stream().flatMap(j -> parts(e, j)).toList())
                .forEach(p -> all.parts.computeIfAbsent(p.joint.surface(), s -> new ArrayList<>()).add(p));
        all.parts.forEach((s, of) -> all.trees.put(s, new BoxTree(of.stream().map(Part::box).toList())));
        return all;
    }

    private static Stream<Part> parts(Evidence e, Joint j) {
        return j.runs().stream().filter(r -> r.length() > 0)
                .map(r -> new Part(j, r, Uncovered.of(e, j.surface(), List.of(r.strip(0))))).filter(p -> !p.bare.isEmpty());
    }

    /** Rain on the frame in the gap that a finding tells of. */
    Optional<Step> at(Finding f) {
        Surface on = f.where().surface();
        if (!f.where().isLine() || !parts.containsKey(on)) {
            return Optional.empty();
        }
        List<Point> line = f.where().inOwnFrame(evidence.elevation());
        return IntStream.of(trees.get(on).meeting(Box.of(line))).mapToObj(parts.get(on)::get)
                .filter(p -> f.pieces().contains(p.joint.outer().piece().id()) && f.pieces().contains(p.joint.inner().piece().id()) && p.isBeside(line))
                .min(Comparator.comparing(p -> p.joint.id())).map(p -> Uncovered.rain(on, p.bare));
    }
}
