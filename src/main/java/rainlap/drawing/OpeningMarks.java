package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.material.MaterialKind;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Strokes;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Openings: white, with what lies on the reveal laid flat inside, cut along the bisectors. */
final class OpeningMarks {
    private static final List<Side> SIDES = List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD);
    private final Evidence evidence;
    private final Visibility visibility;
    private final LapBands laps;
    private final View view;

    OpeningMarks(Evidence evidence, Visibility visibility, LapBands laps, View view) {
        this.evidence = evidence;
        this.visibility = visibility;
        this.laps = laps;
        this.view = view;
    }

    List<Mark> all() {
        List<Mark> out = new ArrayList<>();
        for (Opening o : evidence.elevation().openings()) {
            out.add(Group.of(one(o)).withClass("opening").withData("opening", o.id()));
        }
        return out;
    }

    private List<Mark> one(Opening o) {
        PaperRegion rect = view.region(Region.of(o.rect()));
        List<Mark> out = new ArrayList<>();
        out.add(Area.filled(rect, Tone.WHITE));
        for (Side side : SIDES) {
            if (o.reveal() > 0) {
                reveal(o, side, out);
            }
        }
        out.add(new Strokes(diagonals(o), Looks.DIAGONAL));
        return out;
    }

    /** The edges of all openings, for tapes that turn round them leave them visible. */
    List<Mark> edges() {
        List<Mark> out = new ArrayList<>();
        evidence.elevation().openings().forEach(o -> out.add(Area.edged(view.region(Region.of(o.rect())), Looks.WIDE)));
        return out;
    }

    private void reveal(Opening o, Side side, List<Mark> out) {
        Surface surface = new Surface(o.id(), side);
        List<Region> zone = List.of(zone(o, side));
        List<Mark> marks = new ArrayList<>();
        for (Face f : visibility.on(surface)) {
            for (Region r : visibility.painted(f)) {
                Region flat = r.mapped(p -> o.toWall(side, p));
                Overlay.intersection(List.of(flat), zone).forEach(part -> marks.addAll(look(f, view.region(part))));
            }
            if (f.kind() == MaterialKind.MEMBRANE && isLastMembrane(surface, f)) {
                marks.addAll(laps.tones(surface, r -> r.mapped(p -> o.toWall(side, p))));
            }
        }
        out.addAll(marks);
    }

    private boolean isLastMembrane(Surface surface, Face f) {
        List<Face> membranes = visibility.on(surface).stream().filter(Visibility::isMembrane).toList();
        return membranes.get(membranes.size() - 1) == f;
    }

    static List<Mark> look(Face f, PaperRegion p) {
        return switch (f.kind()) {
            case TAPE -> Symbols.tape(p);
            case CORNER_PIECE, COLLAR -> Symbols.corner(p);
            case FLASHING -> List.of(Area.of(p, Looks.FLASHING, Looks.NARROW));
            case MEMBRANE, BATTEN, CLADDING, TRIM, SEALANT, FRAME -> List.of(Area.of(p, Looks.FOLDED, Looks.FLAT));
        };
    }

    /** The share of the opening that a surface of the reveal takes when laid flat, in wall coordinates. */
    static Region zone(Opening o, Side side) {
        long along = o.along(side);
        long deep = Math.min(o.reveal(), Math.min(o.rect().width(), o.rect().height()) / 2);
        List<Point> flat = List.of(new Point(0, 0), new Point(along, 0), new Point(along - deep, deep), new Point(deep, deep));
        return Region.of(flat.stream().map(p -> o.toWall(side, p)).toList());
    }

    /** Four short strokes that point from the corners of the frame to the middle. */
    List<PaperSegment> diagonals(Opening o) {
        double deep = view.length(o.reveal());
        PaperBox inner = view.box(o.rect()).grown(-deep);
        List<PaperSegment> out = new ArrayList<>();
        if (inner.width() > 6 && inner.height() > 6) {
            inner.corners().forEach(c -> out.add(new PaperSegment(c, c.towards(inner.middle(), 0.4))));
        }
        return out;
    }
}
