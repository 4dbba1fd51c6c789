package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import rainlap.geom.Box;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.paper.Area;
import rainlap.paper.Mark;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Strokes;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** Laps: the band from an exposed edge to the dashed end of the sheet beneath, fall ticks, hatch where the lap is reversed. */
final class LapBands {
    private final Evidence evidence;
    private final Visibility visibility;
    private final View view;

    LapBands(Evidence evidence, Visibility visibility, View view) {
        this.evidence = evidence;
        this.visibility = visibility;
        this.view = view;
    }

    List<Mark> onWall() {
        List<Mark> out = new ArrayList<>(tones(Surface.WALL, r -> r));
        out.addAll(dashes());
        out.addAll(exposedEdges());
        return out;
    }

    /** The toned overlaps of a surface, moved by {@code flat} on to the wall's plane. */
    List<Mark> tones(Surface surface, UnaryOperator<Region> flat) {
        List<Mark> out = new ArrayList<>();
        for (Face outer : evidence.stack().on(surface)) {
            if (Visibility.isMembrane(outer)) {
                for (Face inner : evidence.stack().meeting(surface, outer.box())) {
                    if (isLap(outer, inner)) {
                        overlap(outer, inner).forEach(r -> out.addAll(band(outer, inner, r, flat)));
                    }
                }
            }
        }
        return out;
    }

    private boolean isLap(Face outer, Face inner) {
        return inner.number() != outer.number() && Visibility.isWrapSheet(inner) && inner.box().overlaps(outer.box())
                && evidence.stack().isOutside(outer, inner);
    }

    private List<Region> overlap(Face outer, Face inner) {
        List<Region> both = Overlay.intersection(List.of(outer.region()), List.of(inner.region()));
        List<Region> over = visibility.outside(outer).stream().filter(Visibility::isMembrane).map(Face::region).toList();
        return Overlay.difference(both, over);
    }

    private List<Mark> band(Face outer, Face inner, Region r, UnaryOperator<Region> flat) {
        boolean reversed = evidence.joints().ofKind(JointKind.REVERSE_LAP)
                .anyMatch(j -> j.outer() == outer && j.inner() == inner && touches(j, r.box()));
        return reversed ? Symbols.reversed(view.region(flat.apply(r)))
                : List.of(Area.filled(view.region(flat.apply(r)), Looks.LAP));
    }

    private static boolean touches(Joint j, Box box) {
        return j.runs().stream().anyMatch(run -> run.line().box().meets(box));
    }

    private List<Mark> dashes() {
        List<PaperSegment> lines = new ArrayList<>();
        for (Face f : evidence.stack().on(Surface.WALL)) {
            if (Visibility.isWrapSheet(f)) {
                visibility.hiddenEdges(f, Visibility::isMembrane).stream().map(view::segment).forEach(lines::add);
            }
        }
        return lines.isEmpty() ? List.of() : List.of(new Strokes(lines, Looks.HIDDEN));
    }

    private List<Mark> exposedEdges() {
        List<PaperSegment> edges = new ArrayList<>();
        for (Joint j : evidence.joints().all()) {
            if (j.surface().isWall() && j.kind().isLap() && Visibility.isWrapSheet(j.outer())) {
                exposed(j).stream().map(view::segment).forEach(edges::add);
            }
        }
        List<Mark> out = new ArrayList<>();
        edges.forEach(s -> out.add(new Polyline(List.of(s.from(), s.to()), Looks.MEDIUM)));
        out.add(Symbols.ticks(edges));
        return out;
    }

    /** The stretches of a joint's edge that no further sheet hides, outer piece on the left. */
    private List<Segment> exposed(Joint j) {
        List<Segment> out = new ArrayList<>();
        for (Run run : j.runs()) {
            Intervals hidden = visibility.covered(j.outer(), run.line(), Visibility::isMembrane);
            out.addAll(Visibility.parts(run.line(), Intervals.of(0, run.length()).minus(hidden)));
        }
        return out;
    }
}
