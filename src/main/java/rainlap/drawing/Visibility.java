package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Sheets;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/**
 * What of each face shows. Kinds are painted one after the other, within a kind in laying order; a piece that lies outside another but is
 * painted before it (it was tucked, or is of an earlier kind) keeps its place because the later one is painted without what is covered.
 */
final class Visibility {
    private final Stack stack;

    Visibility(Stack stack) {
        this.stack = stack;
    }

    /** Order in which kinds are painted. */
    static int rank(MaterialKind kind) {
        return switch (kind) {
            case MEMBRANE -> 0;
            case TAPE, CORNER_PIECE, COLLAR, SEALANT -> 1;
            case FLASHING, FRAME -> 2;
            case BATTEN -> 3;
            case CLADDING -> 4;
            case TRIM -> 5;
        };
    }

    private static int rank(Face f) {
        return rank(f.kind());
    }

    /** The faces on a surface in painting order. */
    List<Face> on(Surface surface) {
        List<Face> out = new ArrayList<>(stack.on(surface));
        out.sort(Comparator.comparingInt((Face f) -> rank(f)).thenComparingInt(Face::number));
        return out;
    }

    /** The faces of other pieces that share an area's box with a face and lie outside it, in laying order. */
    List<Face> outside(Face f) {
        return stack.meeting(f.surface(), f.box()).stream()
                .filter(g -> g.number() != f.number() && g.box().overlaps(f.box()) && stack.isOutside(g, f)).toList();
    }

    /** What must be painted of a face so that all that lies outside it still shows. */
    List<Region> painted(Face f) {
        List<Region> before = outside(f).stream()
                .filter(g -> rank(g) < rank(f) || rank(g) == rank(f) && g.number() < f.number()).map(Face::region).toList();
        return before.isEmpty() ? List.of(f.region()) : Overlay.difference(List.of(f.region()), before);
    }

    /** What of a face nothing lies over. */
    List<Region> bare(Face f) {
        List<Region> over = outside(f).stream().map(Face::region).toList();
        return over.isEmpty() ? List.of(f.region()) : Overlay.difference(List.of(f.region()), over);
    }

    /** The stretches of a line on a face's surface that faces outside it, of a chosen sort, lie across. */
    Intervals covered(Face f, Segment line, Predicate<Face> by) {
        EdgeFrame e = EdgeFrame.of(line);
        Intervals out = Intervals.NONE;
        for (Face g : stack.meeting(f.surface(), line.box())) {
            if (g.number() != f.number() && by.test(g) && stack.isOutside(g, f)) {
                out = out.union(g.across(e, 0, e.length()));
            }
        }
        return out;
    }

    /** The parts of a face's free edges that faces of a chosen sort hide. */
    List<Segment> hiddenEdges(Face f, Predicate<Face> by) {
        List<Segment> out = new ArrayList<>();
        for (Segment s : f.freeEdges()) {
            out.addAll(parts(s, covered(f, s, by)));
        }
        return out;
    }

    static List<Segment> parts(Segment line, Intervals where) {
        EdgeFrame e = EdgeFrame.of(line);
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i < where.count(); i++) {
            out.add(new Segment(e.at(where.from(i)), e.at(where.to(i))));
        }
        return out;
    }

    static boolean isMembrane(Face f) {
        return f.kind() == MaterialKind.MEMBRANE;
    }

    /** Battens, cladding, trims: they lie over the wrap. */
    static boolean hidesWrap(Face f) {
        return rank(f) >= rank(MaterialKind.BATTEN);
    }

    static boolean isTape(Face f) {
        return f.kind() == MaterialKind.TAPE;
    }

    /** Sheets of the wrap: their edges show dashed beneath others. */
    static boolean isWrapSheet(Face f) {
        return Sheets.isSheet(f) && f.kind() != MaterialKind.CLADDING;
    }
}
