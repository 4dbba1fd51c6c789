package rainlap.water;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * A surface laid so that down is to lower y: the wall and sills as they are, a jamb with v to the right and u upwards, a head with v downwards.
 */
final class Ground {
    private final Surface surface;
    private final Box extent;
    private final double height;
    private final long left;
    private Coat coat;
    private final boolean isFine;
    private final List<Laid> laid = new ArrayList<>();
    /** Band by band, in each from the left by where they begin. */
    final List<Cell> cells = new ArrayList<>();
    /** Where each band ends among the cells. */
    final List<Integer> bandEnds = new ArrayList<>();
    /** Which rain is followed: its cells forget what came with the one before. */
    Turn turn = new Turn();

    /** @param level what is added to heights here to compare them with those of other surfaces, so that water goes from higher to lower */
    private Ground(Surface surface, Box ownExtent, double level, long left, Coat coat, boolean isFine) {
        this.coat = coat;
        this.isFine = isFine;
        this.surface = surface;
        this.left = left;
        this.height = level;
        this.extent = turned(ownExtent);
    }

    static Ground ofReveal(Opening o, Side side, Coat coat, boolean isFine) {
        double level = switch (side) {
            case SILL -> o.rect().minY() - 1 - o.reveal();
            case HEAD -> o.rect().maxY();
            case LEFT, RIGHT -> o.rect().minY();
            case WALL -> 0;
        };
        return new Ground(new Surface(o.id(), side), o.surface(side), level, o.rect().minX(), coat, isFine);
    }

    /** @param isFine whether cells in the open end at each edge that lies beneath, for who asks what runs over that */
    static Ground ofWall(Box outline, Coat coat, boolean isFine) {
        return new Ground(Surface.WALL, outline, 0, outline.minX(), coat, isFine);
    }

    /** A height here, as it compares with those of other surfaces. */
    double height(double y) {
        return y + height;
    }

    /** Where on the wall it, or its opening, begins. */
    long left() {
        return left;
    }

    boolean isWall() {
        return surface.isWall();
    }

    Surface surface() {
        return surface;
    }

    boolean isSill() {
        return surface.side() == Side.SILL;
    }

    boolean isHead() {
        return surface.side() == Side.HEAD;
    }

    Box extent() {
        return extent;
    }

    /** A place of the surface's own frame as it lies here, and back: the same move does both. */
    Point turned(Point p) {
        return switch (surface.side()) {
            case WALL, SILL -> p;
            case HEAD -> new Point(p.x(), -p.y());
            case LEFT, RIGHT -> new Point(p.y(), p.x());
        };
    }

    private Box turned(Box b) {
        Point p = turned(new Point(b.minX(), b.minY())), q = turned(new Point(b.maxX(), b.maxY()));
        return new Box(Math.min(p.x(), q.x()), Math.min(p.y(), q.y()), Math.max(p.x(), q.x()), Math.max(p.y(), q.y()));
    }

    /** Lays the pieces of a stack on it; parts of one that overlap are made one. */
    void lay(Stack stack) {
        for (Face f : stack.on(surface)) {
            if (laid.isEmpty() || laid.get(laid.size() - 1).number != f.number()) {
                laid.add(new Laid(f.number(), new ArrayList<>(1)));
            }
            laid.get(laid.size() - 1).regions.add(turned(f.region()));
        }
        laid.replaceAll(l -> l.regions.size() > 1 && anyOverlap(l.regions) ? new Laid(l.number, Overlay.union(l.regions)) : l);
    }

    /** What of a piece lies here, by its number. */
    record Laid(int number, List<Region> regions) {}

    /** Gives back the room of what was cut and what lay here; nobody asks for it, or for what the trace asks of pieces, any more. */
    void letGo() {
        cells.clear();
        laid.clear();
        coat = null;
    }

    /** What of each piece lies here, in laying order. */
    List<Laid> laid() {
        return laid;
    }

    /** What of one piece lies here. */
    List<Region> regionsOf(int piece) {
        int i = Collections.binarySearch(laid, new Laid(piece, List.of()), Comparator.comparingInt(Laid::number));
        return i < 0 ? List.of() : laid.get(i).regions;
    }

    boolean isFine() {
        return isFine;
    }

    /** What the trace asks of each piece. */
    Coat coat() {
        return coat;
    }

    private static boolean anyOverlap(List<Region> parts) {
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                if (parts.get(i).box().overlaps(parts.get(j).box())) {
                    return true;
                }
            }
        }
        return false;
    }

    private Region turned(Region r) {
        return surface.isWall() || isSill() ? r : r.isBox() ? Region.of(turned(r.box())) : r.mapped(this::turned);
    }
}
