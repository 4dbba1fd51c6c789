package rainlap.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Edges;
import rainlap.geom.Hits;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Profile;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/** What one piece covers on one surface, in one connected region. Built by {@link Folding}. */
public final class Face {
    private final int number;
    private final Piece piece;
    private final Surface surface;
    private final Region region;
    private List<Link> links = List.of();
    private Edges free;

    /** A fold, the face of the same piece beyond it, and how that one's places look when it is laid flat onto this surface. */
    record Link(Segment along, Face beyond, UnaryOperator<Point> flat, boolean mirrored) {
        Link(Segment along, Face beyond, UnaryOperator<Point> flat) {
            this(along, beyond, flat, isMirrored(flat));
        }

        /** An edge of the face beyond, interior still on the left: some surfaces are mirrored when laid flat. */
        Segment laidFlat(Segment e) {
            Segment flatEdge = new Segment(flat.apply(e.a()), flat.apply(e.b()));
            return mirrored ? flatEdge.reversed() : flatEdge;
        }

        private Box laidFlat(Box b) {
            return new Segment(flat.apply(new Point(b.minX(), b.minY())), flat.apply(new Point(b.maxX(), b.maxY()))).box();
        }

        private static boolean isMirrored(UnaryOperator<Point> flat) {
            Point o = flat.apply(new Point(0, 0)), x = flat.apply(new Point(1, 0)), y = flat.apply(new Point(0, 1));
            return y.side(o, x) < 0;
        }
    }

    Face(int number, Piece piece, Surface surface, Region region) {
        this.number = number;
        this.piece = piece;
        this.surface = surface;
        this.region = region;
    }

    /** The piece's number in laying order, from 0. */
    public int number() {
        return number;
    }

    public Piece piece() {
        return piece;
    }

    public Surface surface() {
        return surface;
    }

    public Region region() {
        return region;
    }

    public Box box() {
        return region.box();
    }

    void fold(Link link) {
        if (links.isEmpty()) {
            links = new ArrayList<>(2);
        }
        links.add(link);
        free = null;
    }

    /** The stretches along which the piece goes on over a fold. */
    public List<Segment> folds() {
        return links.stream().map(Link::along).toList();
    }

    /** The region's edges without the folds, interior on the left. */
    public List<Segment> freeEdges() {
        if (links.isEmpty()) {
            return region.edges();
        }
        Edges known = free; // read once: two threads may both come first, and then both find the same
        if (known == null) {
            known = withoutFolds();
            free = known;
        }
        return known;
    }

    private Edges withoutFolds() {
        List<Segment> out = new ArrayList<>(region.edgeCount());
        for (int k = 0; k < region.edgeCount(); k++) {
            Segment e = region.edge(k);
            EdgeFrame frame = EdgeFrame.of(e);
            Intervals whole = Intervals.of(0, frame.length()), left = whole;
            for (Link l : links) {
                left = left.minus(Folding.shared(frame, l.along));
            }
            for (int i = 0; i < left.count(); i++) {
                out.add(left == whole ? e : new Segment(frame.at(left.from(i)), frame.at(left.to(i))));
            }
        }
        return Edges.copyOf(out);
    }

    /** Where the piece lies on both sides of an edge's line, within from..to. */
    public Intervals across(EdgeFrame e, double from, double to) {
        Intervals left = e.inside(region, e.side(), from, to);
        return left.isEmpty() ? left : left.intersect(e.inside(region, -e.side(), from, to));
    }

    /** Adds what ends this piece to the left of an edge, over one fold if need be. */
    public void addEnds(Hits hits) {
        if (links.isEmpty()) {
            hits.addEnds(region);
        } else {
            hits.addEnds(freeEdges());
        }
        for (Link link : links) {
            if (hits.mayMeet(link.laidFlat(link.beyond.box()).join(link.along.box()))) {
                link.beyond.freeEdges().forEach(e -> hits.addEnd(link.laidFlat(e)));
            }
        }
    }

    /** How far this piece runs on to the left of an edge that crosses it, at each place of from..to. */
    public Profile runsOn(EdgeFrame e, double from, double to) {
        Hits hits = new Hits(e, from, to, -e.side());
        addEnds(hits);
        return hits.nearest().atLeastZero();
    }

    @Override
    public String toString() {
        return piece.id() + " on " + surface.name();
    }
}
