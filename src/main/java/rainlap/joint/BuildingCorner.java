package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Cuts;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Surface;

/**
 * A building corner: a side of the outline with that role, and what is wrapped round it. Places along it are grid units from its first
 * end in the outline's counter-clockwise sense (up a right-hand corner, down a left-hand one).
 *
 * @param wrap how far, at each place, the membrane that runs furthest goes on past the corner; 0 where none crosses it
 * @param turns which membrane turns which stretch, in laying order
 * @param taped the stretches an adhered strip covers on both sides
 */
public record BuildingCorner(OutlineEdge edge, Profile wrap, List<OpeningEdge.Turn> turns, Intervals taped) {
    public BuildingCorner {
        turns = List.copyOf(turns);
    }

    public static List<BuildingCorner> of(Stack stack) {
        return stack.elevation().outline().edges().stream().filter(e -> e.role().isCorner()).map(e -> of(stack, e)).toList();
    }

    /**
     * A corner between two walls laid flat side by side: what goes round is as long as what lies on the wall where it has less of it.
     *
     * @param edge the fold, within the walls
     */
    public static BuildingCorner between(Stack flat, OutlineEdge edge) {
        return of(flat, edge, true);
    }

    /** A corner of an outline, or a part of one. */
    public static BuildingCorner of(Stack stack, OutlineEdge edge) {
        return of(stack, edge, false);
    }

    private static BuildingCorner of(Stack stack, OutlineEdge edge, boolean bothWays) {
        EdgeFrame e = EdgeFrame.of(edge.line()), out = e.turned();
        List<OpeningEdge.Turn> turns = new ArrayList<>();
        List<Profile> wraps = new ArrayList<>();
        Intervals taped = Intervals.NONE;
        for (Face f : stack.meeting(Surface.WALL, edge.line().box())) {
            Intervals across = f.across(e, 0, e.length());
            if (Sheets.isStrip(f)) {
                taped = taped.union(across);
            } else if (f.kind() == MaterialKind.MEMBRANE && !across.isEmpty()) {
                turns.add(new OpeningEdge.Turn(f, across));
                for (int i = 0; i < across.count(); i++) {
                    double from = across.from(i), to = across.to(i);
                    wraps.add(f.runsOn(out, e.length() - to, e.length() - from).turned(e.length()));
                    if (bothWays) {
                        wraps.set(wraps.size() - 1, lesser(wraps.get(wraps.size() - 1), f.runsOn(e, from, to)));
                    }
                }
            }
        }
        return new BuildingCorner(edge, furthest(wraps, e.length()), turns, taped);
    }

    /** At each place the lesser of two lengths; both span the same places. */
    private static Profile lesser(Profile a, Profile b) {
        Cuts cuts = new Cuts();
        cuts.addEnds(a);
        cuts.addEnds(b);
        double[] ends = cuts.sorted();
        for (int i = 0; i + 1 < ends.length; i++) {
            double before = a.leastWithin(ends[i], ends[i]) - b.leastWithin(ends[i], ends[i]);
            double after = a.leastWithin(ends[i + 1], ends[i + 1]) - b.leastWithin(ends[i + 1], ends[i + 1]);
            if (before * after < 0) {
                cuts.add(ends[i] + before / (before - after) * (ends[i + 1] - ends[i]));
            }
        }
        double[] at = cuts.sorted();
        Profile.Builder out = new Profile.Builder();
        for (int i = 0; i + 1 < at.length; i++) {
            double mid = (at[i] + at[i + 1]) / 2;
            out.add((a.leastWithin(mid, mid) <= b.leastWithin(mid, mid) ? a : b).part(at[i], at[i + 1]));
        }
        return out.build();
    }

    private static Profile furthest(List<Profile> wraps, double length) {
        Cuts cuts = new Cuts();
        cuts.add(0);
        cuts.add(length);
        wraps.forEach(cuts::addEnds);
        Profile.Builder out = new Profile.Builder();
        double a = 0;
        for (double b : cuts.sorted()) {
            if (b - a > 1e-6) {
                double mid = (a + b) / 2;
                Profile best = null;
                for (Profile w : wraps) {
                    double v = w.leastWithin(mid, mid);
                    if (!Double.isInfinite(v) && (best == null || v > best.leastWithin(mid, mid))) {
                        best = w;
                    }
                }
                out.add(best == null ? Profile.constant(a, b, 0) : best.part(a, b));
            }
            a = b;
        }
        return out.build();
    }
}
