package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.material.Edge;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Side;

/** The true edge between two cells, where the raster only shows a stair. Everything laid flat into the wall's plane. */
final class GridSlopes {
    /** A straight edge; {@code x0 <= x1}. */
    record Line(double x0, double y0, double x1, double y1) {
        double slope() {
            return x0 == x1 ? Double.POSITIVE_INFINITY : (y1 - y0) / (x1 - x0);
        }

        double yAt(double x) {
            return y0 + (x - x0) * (y1 - y0) / (x1 - x0);
        }

        double xAt(double y) {
            return x0 + (y - y0) * (x1 - x0) / (y1 - y0);
        }
    }

    private final GridRaster raster;
    private final boolean partlySealed;
    private final Map<Face, List<Line>> laidFlat = new HashMap<>();

    GridSlopes(Stack stack, GridRaster raster) {
        this.raster = raster;
        this.partlySealed = stack.surfaces().stream().flatMap(s -> stack.on(s).stream())
                .anyMatch(f -> !f.region().isUpright() && !f.piece().bond().isFull() && !f.piece().bond().isLoose());
    }

    /** Whether which edge it is depends on more than the cells' layers. */
    boolean anyPartlySealed() {
        return partlySealed;
    }

    /** The sloped edge of a face between two neighbouring cells of one surface; empty where its edges are upright. */
    Optional<Line> between(Face f, int p, int q) {
        if (f.region().isUpright() || !raster.sameSurface(p, q)) {
            return Optional.empty();
        }
        boolean plumb = raster.column(p) == raster.column(q);
        double x = raster.x(p), y = raster.y(p), to = plumb ? raster.y(q) : raster.x(q);
        return laidFlat.computeIfAbsent(f, this::lines).stream()
                .filter(e -> plumb ? e.x0 < x && x < e.x1 && isBetween(e.yAt(x), y, to)
                        : Math.min(e.y0, e.y1) < y && y < Math.max(e.y0, e.y1) && isBetween(e.xAt(y), x, to))
                .min((a, b) -> plumb ? Double.compare(Math.abs(a.yAt(x) - y), Math.abs(b.yAt(x) - y))
                        : Double.compare(Math.abs(a.xAt(y) - x), Math.abs(b.xAt(y) - x)));
    }

    private static boolean isBetween(double v, double a, double b) {
        return Math.min(a, b) <= v && v <= Math.max(a, b);
    }

    private List<Line> lines(Face f) {
        Region r = f.region();
        Side side = f.surface().side();
        List<Line> out = new ArrayList<>();
        for (int i = 0; i < r.edgeCount(); i++) {
            Point a = new Point(r.ax(i), r.ay(i)), b = new Point(r.bx(i), r.by(i));
            out.add(line(flat(f, side, a), flat(f, side, b)));
        }
        return out;
    }

    private Point flat(Face f, Side side, Point own) {
        return side == Side.WALL ? own : raster.blocks.stream().filter(b -> b.surface().equals(f.surface())).findFirst()
                .orElseThrow().opening().orElseThrow().toWall(side, own);
    }

    private static Line line(Point a, Point b) {
        Point l = a.x() <= b.x() ? a : b, r = l == a ? b : a;
        return new Line(l.x(), l.y(), r.x(), r.y());
    }

    /** Down which way a line under a cell leads: -1 to the left, 1 to the right, 0 level. Of several edges the highest is met. */
    int downhill(int p, int q, List<Region> holes) {
        List<Face> above = raster.stacks.get(raster.stackOf[p]), below = q < 0 ? List.of() : raster.stacks.get(raster.stackOf[q]);
        double x = raster.x(p), highest = Double.NEGATIVE_INFINITY, slope = 0;
        if (q < 0) {
            return pipeSlope(x, raster.y(p), holes);
        }
        for (List<Face> faces : List.of(above, below)) {
            for (Face f : faces) {
                if (GridCrossing.indexOf(faces == above ? below : above, f) > 0) {
                    continue;
                }
                Optional<Line> edge = between(f, p, q);
                double y = edge.map(e -> e.yAt(x)).orElse((double) raster.side(p, GridRaster.DOWN));
                if (y > highest) {
                    highest = y;
                    slope = edge.map(Line::slope).orElse(0.0);
                }
            }
        }
        return -(int) Math.signum(slope);
    }

    private static int pipeSlope(double x, double y, List<Region> holes) {
        double highest = Double.NEGATIVE_INFINITY, slope = 0;
        for (Region r : holes) {
            for (int i = 0; i < r.edgeCount(); i++) {
                Line e = line(new Point(r.ax(i), r.ay(i)), new Point(r.bx(i), r.by(i)));
                if (e.x0 < x && x < e.x1 && e.yAt(x) <= y && e.yAt(x) > highest) {
                    highest = e.yAt(x);
                    slope = e.slope();
                }
            }
        }
        return -(int) Math.signum(slope);
    }

    /** The edge of a piece that water meets when it enters a cell in a direction. */
    Edge metAt(Face f, int p, int q, int dir) {
        return named(f, p, q, dir, true);
    }

    /** The edge of a piece that water leaves by. */
    Edge leftBy(Face f, int p, int q, int dir) {
        return named(f, p, q, dir, false);
    }

    private Edge named(Face f, int p, int q, int dir, boolean met) {
        double slope = between(f, p, q).map(Line::slope).orElse(dir <= GridRaster.DOWN ? 0.0 : Double.POSITIVE_INFINITY);
        boolean level = Math.abs(slope) <= 1;
        if (level && dir <= GridRaster.DOWN) {
            return (dir == GridRaster.DOWN) == met ? Edge.TOP : Edge.BOTTOM;
        }
        if (!level && dir > GridRaster.DOWN) {
            return sideways(f, (dir == GridRaster.RIGHT) == met);
        }
        // a stair of an edge that really faces the other way: who falls onto a steep rising edge meets the piece's left side
        boolean rising = slope > 0;
        return level ? ((dir == GridRaster.RIGHT) == met) == rising ? Edge.TOP : Edge.BOTTOM
                : sideways(f, ((dir == GridRaster.DOWN) == met) == rising);
    }

    /** On a right jamb inwards is to the left of the wall's plane, and called right. */
    private static Edge sideways(Face f, boolean left) {
        return left == (f.surface().side() != Side.RIGHT) ? Edge.LEFT : Edge.RIGHT;
    }
}
