package rainlap.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.joint.BuildingCorner;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.rule.Evidence;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Place;

/** Ends of joints that lie round a corner of the building: no rule judges them here, because the elevation there does. Silence about them would read as a pass. */
public final class LeftRound {
    /** The drawing's own tolerance: 1 mm. */
    private static final double LEAST = 100;

    private LeftRound() {}

    /** One sentence for all corners; empty where no joint goes on round one. */
    public static List<String> lines(Evidence e) {
        List<String> corners = new ArrayList<>();
        for (BuildingCorner c : e.buildingCorners().stream().sorted(Comparator.comparing(c -> c.edge().line().a().x())).toList()) {
            Set<String> beyond = new TreeSet<>();
            e.membraneJoints().stream().filter(j -> j.surface().isWall()).forEach(j -> beyond(e, c, j).forEach(beyond::add));
            if (!beyond.isEmpty()) {
                corners.add("beyond x " + Place.mm(c.edge().line().a().x()) + ", " + String.join(", ", beyond));
            }
        }
        return corners.isEmpty() ? List.of() : List.of("Left to the elevations round the corners, ends of joints: " + String.join("; ", corners) + ".");
    }

    /** {@code M2 over M1}, and whether tape that is asked for is missing there. */
    private static List<String> beyond(Evidence e, BuildingCorner corner, Joint j) {
        EdgeFrame fold = EdgeFrame.of(corner.edge().line());
        double all = 0, bare = 0;
        for (Run r : j.runs()) {
            Intervals round = round(fold, r);
            all += round.total();
            bare += MembraneJoints.tapeAsked(j, r, e.practice()).intersect(round).minus(r.cover().taped()).total();
        }
        return all < LEAST ? List.of() : List.of(j.outer().piece().id() + (j.kind().isLap() ? " over " : " beside ") + j.inner().piece().id() + (bare < LEAST ? "" : " (not taped all along)"));
    }

    /** What of a straight part lies on the far side of a fold; the wall lies to the fold's left. */
    private static Intervals round(EdgeFrame fold, Run r) {
        double a = fold.t(r.line().a().x(), r.line().a().y()), b = fold.t(r.line().b().x(), r.line().b().y()), length = r.length();
        if (a >= 0 && b >= 0) {
            return Intervals.NONE;
        }
        double cut = a < 0 == b < 0 ? 0 : length * a / (a - b);
        return a < 0 && b < 0 ? Intervals.of(0, length) : a < 0 ? Intervals.of(0, cut) : Intervals.of(cut, length);
    }
}
