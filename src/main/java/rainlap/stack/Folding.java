package rainlap.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.BoxCut;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.wall.Cut;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Turns the drawn shapes of a piece into faces; see the package description. */
final class Folding {
    /** Whether a region of more edges than this overlaps another takes longer to tell than to cut it: that grows with their square. */
    private static final int FEW = 16;

    private final Elevation elevation;
    /** By opening: many pieces fold round the same edges of one. */
    private final Map<String, Hinges> hinges;

    Folding(Elevation elevation) {
        this.elevation = elevation;
        hinges = new ConcurrentHashMap<>(2 * elevation.openings().size());
    }

    /** Adds the faces of a piece behind those of others. */
    void addFaces(int number, Piece piece, List<Face> faces) {
        int first = faces.size();
        for (Shape shape : piece.shapes()) {
            if (shape.on().isWall() && piece.material().kind().folds()) {
                foldedFaces(number, piece, shape, faces);
            } else {
                shape.regions().forEach(r -> faces.add(new Face(number, piece, shape.on(), r)));
            }
        }
        if (faces.size() > first + 1) {
            joinAtFolds(faces.subList(first, faces.size()));
        }
    }

    private void foldedFaces(int number, Piece piece, Shape shape, List<Face> faces) {
        List<Opening> met = met(shape);
        for (Opening o : met) {
            Optional<Cut> cut = cutAt(piece, o);
            for (Side side : Flap.SIDES) {
                for (Region flap : Flap.of(o, side, cut).within(shape.regions())) {
                    faces.add(new Face(number, piece, new Surface(o.id(), side), flap.mapped(p -> o.toSurface(side, p))));
                }
            }
        }
        without(shape.regions(), met).forEach(r -> faces.add(new Face(number, piece, Surface.WALL, r)));
    }

    /** The openings of which a shape may cover something. */
    private List<Opening> met(Shape shape) {
        List<Opening> out = new ArrayList<>(2);
        for (Opening o : elevation.openingsMeeting(shape.box())) {
            if (mayCover(shape, o.rect())) {
                out.add(o);
            }
        }
        return out;
    }

    private static boolean mayCover(Shape shape, Box opening) {
        for (Region r : shape.regions()) {
            if (mayCover(r, opening)) {
                return true;
            }
        }
        return false;
    }

    /** False where a convex piece, or one with few level and plumb edges, covers nothing of an opening, as a corner piece that is laid round its corner; for others the cut itself tells. */
    private static boolean mayCover(Region r, Box opening) {
        return r.box().overlaps(opening) && (r.isBox() || !r.isConvex() && (!r.isUpright() || r.edgeCount() > FEW) || r.overlaps(Region.of(opening)));
    }

    /** Cuts out one opening after the other as long as boxes are left, the rest all at once; without an overlay where a sheet is only notched by them. */
    private static List<Region> without(List<Region> shape, List<Opening> openings) {
        if (openings.size() > 1 && shape.size() == 1 && shape.get(0).isBox()) {
            Optional<Region> notched = BoxCut.notched(shape.get(0).box(), openings.stream().map(Opening::rect).toList());
            if (notched.isPresent()) {
                return List.of(notched.get());
            }
        }
        List<Region> left = shape;
        for (int i = 0; i < openings.size(); i++) {
            if (!left.stream().allMatch(Region::isBox)) {
                return Overlay.difference(left, openings.subList(i, openings.size()).stream().map(o -> Region.of(o.rect())).toList());
            }
            Box rect = openings.get(i).rect();
            left = left.stream().flatMap(r -> r.box().overlaps(rect) ? BoxCut.minus(r.box(), rect).stream() : Stream.of(r)).toList();
        }
        return left;
    }

    private static Optional<Cut> cutAt(Piece piece, Opening o) {
        return piece.cuts().stream().filter(c -> c.opening().equals(o.id())).findFirst();
    }

    private void joinAtFolds(List<Face> faces) {
        for (int i = 0; i < faces.size(); i++) {
            for (int j = i + 1; j < faces.size(); j++) {
                if (Hinges.share(faces.get(i).surface(), faces.get(j).surface())) {
                    join(faces.get(i), faces.get(j));
                }
            }
        }
    }

    /** Marks on each of two faces the stretches along which the other takes over. */
    private void join(Face a, Face b) {
        Hinges all = hingesOf(a.surface().isWall() ? b.surface() : a.surface());
        Hinge there = all.between(a.surface().side(), b.surface().side()), back = all.between(b.surface().side(), a.surface().side());
        List<Segment> onA = there.edgesOn(a.region()), onB = onA.isEmpty() ? onA : back.edgesOn(b.region());
        join(there, a, onA, b, onB);
        join(back, b, onB, a, onA);
    }

    private Hinges hingesOf(Surface reveal) {
        return hinges.computeIfAbsent(reveal.opening(), o -> new Hinges(elevation.findOpening(o).orElseThrow()));
    }

    private static void join(Hinge hinge, Face a, List<Segment> onA, Face b, List<Segment> onB) {
        for (Segment m : onA) {
            for (Segment t : onB) {
                Segment flat = hinge.flat().of(t);
                long from = hinge.from(m, flat), to = hinge.to(m, flat);
                if (from < to) {
                    a.fold(new Face.Link(hinge, Math.toIntExact(from), Math.toIntExact(to), b));
                }
            }
        }
    }

    /** The part of a frame's edge that a segment lying on its line covers. */
    static Intervals shared(EdgeFrame frame, Segment b) {
        if (frame.t(b.ax(), b.ay()) != 0 || frame.t(b.bx(), b.by()) != 0) {
            return Intervals.NONE;
        }
        double s0 = frame.s(b.ax(), b.ay()), s1 = frame.s(b.bx(), b.by());
        double from = Math.max(0, Math.min(s0, s1)), to = Math.min(frame.length(), Math.max(s0, s1));
        return to > from ? Intervals.of(from, to) : Intervals.NONE;
    }
}
