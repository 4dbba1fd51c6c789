package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.BuildingCorner;
import rainlap.joint.Sheets;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/**
 * A bead that runs along a building corner, and the tape it should lie on. Places along the fold as in {@link BuildingCorner}.
 *
 * @param along where it runs
 * @param under where a strip lies over it, and which
 * @param on where it lies on a strip
 */
record CornerBeads(Face bead, Intervals along, List<Crossing> under, Intervals on) {
    /** A bead this near to the fold belongs to its tape: 120 mm, a little more than half the widest. Our own choice: common practice, no source. */
    private static final long NEAR = 12_000;

    /** A strip and where along the fold it crosses a bead. */
    record Crossing(Face strip, Intervals where) {}

    static List<CornerBeads> of(Evidence e, BuildingCorner c) {
        EdgeFrame fold = CornerStretch.frame(c);
        Box near = c.edge().line().box().grow(NEAR);
        return e.stack().meeting(Surface.WALL, near).stream().filter(f -> f.kind() == MaterialKind.SEALANT && runsAlong(fold, f))
                .map(f -> of(e, fold, f)).filter(b -> !b.along.isEmpty()).toList();
    }

    /** Whether it is longer along the fold than across it, and lies near to it. */
    private static boolean runsAlong(EdgeFrame fold, Face bead) {
        List<Point> points = bead.region().shell().points();
        double across = points.stream().mapToDouble(p -> fold.t(p.x(), p.y())).max().orElse(0) - points.stream().mapToDouble(p -> fold.t(p.x(), p.y())).min().orElse(0);
        return points.stream().allMatch(p -> Math.abs(fold.t(p.x(), p.y())) <= NEAR) && places(fold, List.of(bead.region())).total() > across;
    }

    private static CornerBeads of(Evidence e, EdgeFrame fold, Face bead) {
        List<Crossing> under = new ArrayList<>();
        Intervals on = Intervals.NONE;
        for (Face f : e.stack().meeting(Surface.WALL, bead.box())) {
            if (Sheets.isStrip(f)) {
                Intervals where = places(fold, Overlay.intersection(List.of(bead.region()), List.of(f.region())));
                if (e.stack().isOutside(f, bead)) {
                    under.add(new Crossing(f, where));
                } else {
                    on = on.union(where);
                }
            }
        }
        return new CornerBeads(bead, places(fold, List.of(bead.region())).intersect(Intervals.of(0, fold.length())), List.copyOf(under), on);
    }

    private static Intervals places(EdgeFrame fold, List<Region> regions) {
        return Intervals.unionOf(regions.stream().map(r -> {
            List<Point> points = r.shell().points();
            return Intervals.of(points.stream().mapToDouble(p -> fold.s(p.x(), p.y())).min().orElse(0), points.stream().mapToDouble(p -> fold.s(p.x(), p.y())).max().orElse(0));
        }).toList());
    }

    /** Where it lies beneath a strip. */
    Intervals covered() {
        return Intervals.unionOf(under.stream().map(Crossing::where).toList()).intersect(along);
    }

    /** Where it lies neither on a strip nor beneath one. */
    Intervals bare() {
        return along.minus(on).minus(covered());
    }
}
