package rainlap.stack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Edges;
import rainlap.geom.Hits;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.MaterialKind;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/** What one piece covers on one surface, in one connected region. Built by {@link Folding}. */
public final class Face {
    private static final Link[] NONE = {};

    private final int number;
    private final Piece piece;
    private final Surface surface;
    private final Region region;
    private final MaterialKind kind;
    private Link[] links = NONE;
    private Edges free;

    /**
     * A fold along a stretch of a hinge, and the face of the same piece beyond it, which laid flat lies no farther than {@code reach} from
     * that stretch, across and along. A wall has some two of these a piece.
     */
    record Link(Hinge hinge, int from, int to, Face beyond, int reach) {
        Link(Hinge hinge, int from, int to, Face beyond) {
            this(hinge, from, to, beyond, (int) hinge.flat().of(beyond.box()).beyond(hinge.part(from, to).box()));
        }

        /** Holds what lies beyond, laid flat. */
        Box around() {
            return along().box().grow(reach);
        }

        Segment along() {
            return hinge.part(from, to);
        }
    }

    Face(int number, Piece piece, Surface surface, Region region) {
        this.number = number;
        this.piece = piece;
        this.surface = surface;
        this.region = region;
        this.kind = piece.material().kind();
    }

    /** The piece's number in laying order, from 0. */
    public int number() {
        return number;
    }

    public Piece piece() {
        return piece;
    }

    /** What kind of thing the piece is. */
    public MaterialKind kind() {
        return kind;
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
        links = Arrays.copyOf(links, links.length + 1);
        links[links.length - 1] = link;
        free = null;
    }

    /** The stretches along which the piece goes on over a fold. */
    public List<Segment> folds() {
        List<Segment> out = new ArrayList<>(links.length);
        for (Link l : links) {
            out.add(l.along());
        }
        return out;
    }

    /** The region's edges without the folds, interior on the left. */
    public List<Segment> freeEdges() {
        return links.length == 0 ? region.edges() : freeOfFolds();
    }

    private Edges freeOfFolds() {
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
            if (isOnHinge(k)) {
                addFree(region.edge(k), out);
            } else {
                out.add(region.edge(k));
            }
        }
        return Edges.copyOf(out);
    }

    private boolean isOnHinge(int edge) {
        for (Link l : links) {
            if (l.hinge.holds(region, edge)) {
                return true;
            }
        }
        return false;
    }

    private void addFree(Segment e, List<Segment> out) {
        EdgeFrame frame = EdgeFrame.of(e);
        Intervals whole = Intervals.of(0, frame.length()), left = whole;
        for (Link l : links) {
            left = left.minus(Folding.shared(frame, l.along()));
        }
        for (int i = 0; i < left.count(); i++) {
            out.add(left == whole ? e : new Segment(frame.at(left.from(i)), frame.at(left.to(i))));
        }
    }

    /** Where the piece lies on both sides of an edge's line, within from..to. */
    public Intervals across(EdgeFrame e, double from, double to) {
        Intervals left = e.inside(region, e.side(), from, to);
        return left.isEmpty() ? left : left.intersect(e.inside(region, -e.side(), from, to));
    }

    /** Adds what ends this piece to the left of an edge, over one fold if need be. */
    public void addEnds(Hits hits) {
        if (links.length == 0) {
            hits.addEnds(region);
        } else {
            hits.addEnds(freeOfFolds());
        }
        for (Link link : links) {
            if (hits.mayMeet(link.around())) {
                hits.addEnds(link.beyond.freeOfFolds(), link.hinge.flat());
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
