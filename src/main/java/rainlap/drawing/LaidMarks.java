package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.material.MaterialKind;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Strokes;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * The wall as it grows: every piece with its laps in groups that say at which step of the laying order they appear and to which layer they
 * belong. Painted from the innermost outwards, so that any step and any choice of layers is a sound drawing.
 */
final class LaidMarks {
    /** Shorter stretches of an edge beneath a tape are not drawn. */
    private static final double LEAST = 100;
    private final Evidence evidence;
    private final Stack stack;
    private final View view;
    private final PageSteps steps;
    private final Map<Integer, List<Joint>> lapsByOuter;
    private final PieceMarks pieces;

    /** @param stack all pieces that are to be drawn, those that the stage ignores too */
    LaidMarks(Evidence evidence, Stack stack, View view, PageSteps steps) {
        this.steps = steps;
        this.evidence = evidence;
        this.stack = stack;
        this.view = view;
        this.lapsByOuter = evidence.joints().all().stream().filter(j -> j.surface().isWall() && j.kind().isLap())
                .collect(Collectors.groupingBy(j -> j.outer().number()));
        this.pieces = new PieceMarks(new Visibility(stack), view, evidence.elevation().outline().region());
    }

    List<Mark> onWall() {
        List<Mark> out = new ArrayList<>();
        LaidFaces laid = new LaidFaces(stack, Surface.WALL);
        for (Face f : laid.innermostFirst()) {
            List<Mark> marks = new ArrayList<>();
            laid.painted(f).forEach(r -> marks.addAll(pieces.marks(f, r)));
            piece(PageLayer.of(kind(f)), f, marks, out);
            if (Visibility.isMembrane(f)) {
                over(f, Visibility::isWrapSheet).forEach(inner -> lap(f, inner, laid.painted(f), out));
            } else if (Visibility.isTape(f)) {
                over(f, Visibility::isWrapSheet).forEach(inner -> add(PageLayer.TAPES, f, inner, dashes(f, inner, LEAST), out));
            }
            if (Visibility.isWrapSheet(f)) {
                edges(f, out);
            }
        }
        return out;
    }

    private static MaterialKind kind(Face f) {
        return f.kind();
    }

    private List<Face> over(Face outer, Predicate<Face> which) {
        return stack.meeting(outer.surface(), outer.box()).stream().filter(g -> g != outer && g.number() != outer.number() && which.test(g))
                .filter(g -> g.box().overlaps(outer.box()) && stack.isOutside(outer, g)).toList();
    }

    private void piece(PageLayer layer, Face f, List<Mark> marks, List<Mark> out) {
        if (!marks.isEmpty()) {
            out.add(item(layer.id(), step(f, f), marks).withData("piece", f.piece().id()));
        }
    }

    /** Adds marks that appear when both pieces lie. */
    private void add(PageLayer layer, Face a, Face b, List<Mark> marks, List<Mark> out) {
        if (!marks.isEmpty()) {
            out.add(item(layer.id(), step(a, b), marks));
        }
    }

    private int step(Face a, Face b) {
        return Math.max(steps.of(a.piece().id()), steps.of(b.piece().id()));
    }

    /** @param layers names of layers, all of which must be on for it to show */
    static Group item(String layers, int step, List<? extends Mark> marks) {
        return Group.of(List.copyOf(marks)).withData("layer", layers).withData("step", Integer.toString(step));
    }

    private void lap(Face outer, Face inner, List<Region> painted, List<Mark> out) {
        List<Mark> marks = new ArrayList<>();
        for (Region r : Overlay.intersection(painted, List.of(inner.region()))) {
            marks.addAll(band(outer, inner, view.region(r)));
        }
        marks.addAll(dashes(outer, inner, 0));
        add(PageLayer.LAPS, outer, inner, marks, out);
    }

    private List<Mark> band(Face outer, Face inner, PaperRegion r) {
        boolean reversed = evidence.joints().ofKind(JointKind.REVERSE_LAP).anyMatch(j -> isOf(j, outer, inner)
                && j.runs().stream().anyMatch(run -> view.box(run.line().box()).grown(0.01).meets(r.box())));
        return reversed ? Symbols.reversed(r) : List.of(Area.filled(r, Looks.LAP));
    }

    /** Joints were found among the pieces of the stage: the same piece may have another face there. */
    private static boolean isOf(Joint j, Face outer, Face inner) {
        return j.surface().equals(outer.surface()) && j.outer().number() == outer.number() && j.inner().number() == inner.number();
    }

    /** The free edges of a sheet where another lies across them. */
    private List<Mark> dashes(Face outer, Face inner, double least) {
        List<PaperSegment> lines = new ArrayList<>();
        for (Segment s : inner.freeEdges()) {
            EdgeFrame e = EdgeFrame.of(s);
            Visibility.parts(s, outer.across(e, 0, e.length())).stream().filter(t -> EdgeFrame.of(t).length() > least)
                    .map(view::segment).forEach(lines::add);
        }
        return lines.isEmpty() ? List.of() : List.of(new Strokes(lines, Looks.HIDDEN));
    }

    /** The exposed edges of a sheet's laps with their fall ticks. */
    private void edges(Face f, List<Mark> out) {
        for (Joint j : lapsByOuter.getOrDefault(f.number(), List.of())) {
            if (j.outer().region().equals(f.region())) {
                List<PaperSegment> lines = j.runs().stream().map(Run::line).map(view::segment).toList();
                List<Mark> marks = new ArrayList<>();
                lines.forEach(s -> marks.add(new Polyline(List.of(s.from(), s.to()), Looks.MEDIUM)));
                marks.add(Symbols.ticks(lines));
                add(PageLayer.LAPS, j.outer(), j.inner(), marks, out);
            }
        }
    }

    /** What lies on the reveals, laid flat into the openings. */
    List<Mark> onReveals() {
        List<Mark> out = new ArrayList<>();
        for (Opening o : evidence.elevation().openings()) {
            for (Side side : List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD)) {
                if (o.reveal() > 0) {
                    reveal(o, side, out);
                }
            }
        }
        return out;
    }

    private void reveal(Opening o, Side side, List<Mark> out) {
        List<Region> zone = List.of(OpeningMarks.zone(o, side));
        LaidFaces laid = new LaidFaces(stack, new Surface(o.id(), side));
        for (Face f : laid.innermostFirst()) {
            List<Mark> marks = new ArrayList<>();
            flat(o, side, laid.painted(f), zone).forEach(r -> marks.addAll(OpeningMarks.look(f, view.region(r))));
            piece(Visibility.hidesWrap(f) ? PageLayer.of(kind(f)) : PageLayer.OPENINGS, f, marks, out);
            if (Visibility.isMembrane(f)) {
                for (Face inner : over(f, Visibility::isWrapSheet)) {
                    List<Mark> bands = new ArrayList<>();
                    flat(o, side, Overlay.intersection(laid.painted(f), List.of(inner.region())), zone)
                            .forEach(r -> bands.addAll(band(f, inner, view.region(r))));
                    add(PageLayer.LAPS, f, inner, bands, out);
                }
            }
        }
    }

    private static List<Region> flat(Opening o, Side side, List<Region> on, List<Region> zone) {
        return on.isEmpty() ? List.of() : Overlay.intersection(on.stream().map(r -> r.mapped(p -> o.toWall(side, p))).toList(), zone);
    }
}
