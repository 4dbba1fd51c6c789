package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.material.Edge;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Side;

/** The ways water may go from a cell to the one next to it, by the layers of both. */
final class GridCrossing {
    /**
     * One way.
     *
     * @param layer where it arrives, 0 being the frame
     * @param cost what the gap it arrives in costs, and the sealed edge it leaves by
     * @param begins whether the layer outside it there begins at the line
     * @param behind whether the layer it was on has ended and this one lies further in
     */
    record Way(int layer, int cost, boolean begins, boolean behind) {}

    private final Stack stack;
    private final GridRaster raster;
    private final GridSlopes slopes;
    private final Map<Long, List<List<Way>>> known = new HashMap<>();

    GridCrossing(Stack stack, GridRaster raster, GridSlopes slopes) {
        this.stack = stack;
        this.raster = raster;
        this.slopes = slopes;
    }

    /** From layer f of cell c in a direction to its neighbour q. */
    List<Way> ways(int c, int f, int q, int dir) {
        if (raster.stackOf[c] == raster.stackOf[q] && raster.sameSurface(c, q)) {
            return List.of(new Way(f, 0, false, false));
        }
        return byLayers(c, f, q, dir, turned(c, q, dir));
    }

    /** The direction a move has beyond the corner of sill and jamb. */
    int turned(int c, int q, int dir) {
        if (raster.sameSurface(c, q)) {
            return dir;
        }
        Side from = raster.side(c), to = raster.side(q);
        if (from == Side.SILL && to.isJamb()) {
            return GridRaster.UP;
        }
        return from.isJamb() && to == Side.SILL ? from == Side.LEFT ? GridRaster.RIGHT : GridRaster.LEFT : dir;
    }

    /** Whether water on a layer goes past an opening, on a stiff piece in front of it or further out. */
    boolean goesPast(int c, int f, int q, int dir) {
        if (raster.sameSurface(c, q) || raster.side(c) != Side.WALL || raster.side(q) == Side.SILL) {
            return false;
        }
        List<Face> faces = raster.faces(c);
        for (int k = f - 1; k >= 0; k--) {
            if (raster.goesOnInFront(faces.get(k), c, dir)) {
                return true;
            }
        }
        return false;
    }

    private List<Way> byLayers(int p, int f, int q, int out, int in) {
        List<Face> from = raster.stacks.get(raster.stackOf[p]), to = raster.stacks.get(raster.stackOf[q]);
        if (slopes.anyPartlySealed()) {
            return find(from, f, to, new Edges(p, q, out, in));
        }
        long key = ((long) raster.stackOf[p] * raster.stacks.size() + raster.stackOf[q]) * 16 + out * 4 + in;
        return known.computeIfAbsent(key, k -> {
            List<List<Way>> all = new ArrayList<>();
            for (int layer = 0; layer <= from.size(); layer++) {
                all.add(find(from, layer, to, new Edges(p, q, out, in)));
            }
            return all;
        }).get(f);
    }

    /** The line between two cells, and which edge of a piece it is. */
    private record Edges(int p, int q, int out, int in) {}

    private List<Way> find(List<Face> from, int f, List<Face> to, Edges line) {
        int low = f;
        while (low > 0 && indexOf(to, from.get(low - 1)) == 0) {
            low--;
        }
        int lo = low == 0 ? 0 : indexOf(to, from.get(low - 1)), hi = to.size() + 1;
        for (int g = f + 1; g <= from.size() && hi > to.size(); g++) {
            int at = indexOf(to, from.get(g - 1));
            hi = at > 0 ? at : hi;
        }
        Face outside = f < from.size() ? from.get(f) : null;
        int leaving = outside != null && indexOf(to, outside) == 0 && sealsOnly(outside, slopes.leftBy(outside, line.p, line.q, line.out)) ? 1 : 0;
        List<Way> ways = new ArrayList<>();
        for (int t = lo; t < hi; t++) {
            Face x = t < to.size() ? to.get(t) : null;
            boolean begins = x != null && t + 1 < hi;
            boolean behind = low < f && (t == lo || stack.isOutside(from.get(f - 1), to.get(t - 1)));
            ways.add(new Way(t, leaving + (x == null ? 0 : cost(x, begins, outside, line)), begins, behind));
        }
        return ways;
    }

    /** What the gap under x costs: one if it is adhered, unless the water was under x already, or sealed at the edge that faces the water. */
    private int cost(Face x, boolean begins, Face outside, Edges line) {
        boolean wasUnder = outside != null && outside.number() == x.number();
        boolean closed = x.piece().bond().isFull() && !wasUnder;
        return closed || begins && x.piece().bond().seals(slopes.metAt(x, line.p, line.q, line.in)) ? 1 : 0;
    }

    private static boolean sealsOnly(Face f, Edge edge) {
        return !f.piece().bond().isFull() && f.piece().bond().seals(edge);
    }

    /** The layer of the same piece, or 0. */
    static int indexOf(List<Face> faces, Face of) {
        for (int i = 0; i < faces.size(); i++) {
            if (faces.get(i).number() == of.number()) {
                return i + 1;
            }
        }
        return 0;
    }
}
