package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.EndDams;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Strokes;
import rainlap.paper.Tone;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** The pieces on the wall, kind by kind, each opaque and as far as it shows. */
final class PieceMarks {
    private static final double RIB_PITCH_MM = 76; // corrugated and ribbed sheets are drawn alike: one line for each 76 mm of wall
    private final Visibility visibility;
    private final View view;
    private final List<Region> outline;

    PieceMarks(Visibility visibility, View view, Region outline) {
        this.visibility = visibility;
        this.view = view;
        this.outline = List.of(outline);
    }

    /** All faces on the wall whose kind has this rank. */
    List<Mark> ofRank(int rank) {
        List<Mark> out = new ArrayList<>();
        for (Face f : visibility.on(Surface.WALL)) {
            MaterialKind kind = f.kind();
            if (Visibility.rank(kind) == rank) {
                List<Mark> marks = new ArrayList<>();
                visibility.painted(f).forEach(r -> marks.addAll(marks(f, r)));
                if (!marks.isEmpty()) {
                    out.add(Group.of(marks).withClass("piece").withData("piece", f.piece().id()));
                }
            }
        }
        return out;
    }

    /** A part of a face as it looks. */
    List<Mark> marks(Face f, Region r) {
        PaperRegion p = view.region(r);
        return switch (f.kind()) {
            case MEMBRANE -> sheet(p, r);
            case TAPE -> Symbols.tape(p);
            case CORNER_PIECE, COLLAR -> Symbols.corner(p);
            case SEALANT -> List.of(Area.of(p, Tone.GREY, Looks.THIN));
            case FLASHING -> flashing(f, p);
            case FRAME -> List.of(Area.of(p, Tone.WHITE, Looks.WIDE));
            case BATTEN -> Symbols.batten(p);
            case CLADDING -> Symbols.cladding(p, Math.max(1.2, view.length(100 * RIB_PITCH_MM)));
            case TRIM -> Symbols.trim(p);
        };
    }

    private List<Mark> sheet(PaperRegion p, Region r) {
        List<Mark> out = new ArrayList<>();
        out.add(Area.filled(p, Looks.MEMBRANE));
        Overlay.difference(List.of(r), outline).forEach(o -> out.add(Area.filled(view.region(o), Looks.FOLDED)));
        out.add(Area.edged(p, Looks.MEDIUM));
        return out;
    }

    /** A flashing with the fold of its foot and, at each end that is turned up, the dam. */
    private List<Mark> flashing(Face f, PaperRegion p) {
        List<Mark> out = new ArrayList<>(Symbols.flashing(p));
        PaperBox whole = view.box(f.box()), b = p.box();
        Profile profile = f.piece().material().profile();
        double fold = whole.bottom() - Math.min(whole.height() / 3, 1.0);
        if (whole.width() > whole.height() && fold > b.top() && fold < b.bottom()) {
            out.add(Polyline.line(b.left(), fold, b.right(), fold, Looks.NARROW));
        }
        EndDams dams = profile.endDams().orElse(EndDams.NONE);
        double dam = Math.min(b.height() * 0.8, Math.max(1.6, view.length(100 * height(profile.endDamMm()))));
        if (dams.atLeft() && b.left() == whole.left()) {
            out.add(Polyline.line(b.left() + 0.5, b.bottom(), b.left() + 0.5, b.bottom() - dam, Looks.NARROW));
        }
        if (dams.atRight() && b.right() == whole.right()) {
            out.add(Polyline.line(b.right() - 0.5, b.bottom(), b.right() - 0.5, b.bottom() - dam, Looks.NARROW));
        }
        return out;
    }

    private static double height(OptionalDouble mm) {
        return mm.orElse(0);
    }

    /** Edges of sheets that show dashed through the tapes over them. */
    List<Mark> edgesUnderTape() {
        List<PaperSegment> lines = new ArrayList<>();
        for (Face f : visibility.on(Surface.WALL)) {
            if (Visibility.isWrapSheet(f)) {
                for (Segment s : f.freeEdges()) {
                    rainlap.geom.Intervals tape = visibility.covered(f, s, Visibility::isTape)
                            .minus(visibility.covered(f, s, g -> hides(g)));
                    Visibility.parts(s, tape).stream().filter(t -> EdgeFrame.of(t).length() > 100).map(view::segment).forEach(lines::add);
                }
            }
        }
        return lines.isEmpty() ? List.of() : List.of(new Strokes(lines, Looks.HIDDEN));
    }

    private static boolean hides(Face g) {
        return g.kind() == MaterialKind.CORNER_PIECE || g.kind() == MaterialKind.COLLAR;
    }
}
