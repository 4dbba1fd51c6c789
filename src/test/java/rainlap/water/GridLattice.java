package rainlap.water;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * The lines between the cells of the raster, in the wall's plane; reveals are laid flat into their openings. A line at least every cell width,
 * and further ones at every corner that is drawn, one unit beside it (a stream from the end of a line is as wide) and at the rise and the creep
 * from it: so upright pieces are met exactly, and only sloped edges become stairs.
 */
final class GridLattice {
    /** Stairs along a sloped edge in a reveal at most: they are short, and lines go across the whole wall. */
    static final int MOST_IN_REVEALS = 16;

    final long[] x;
    final long[] y;

    private GridLattice(TreeSet<Long> x, TreeSet<Long> y) {
        this.x = x.stream().mapToLong(Long::longValue).toArray();
        this.y = y.stream().mapToLong(Long::longValue).toArray();
    }

    /** @param steps so many stairs at least along each sloped edge on the wall */
    static GridLattice of(Stack stack, long rise, long creep, long cell, int steps) {
        Lines lines = new Lines(rise, creep);
        Region outline = stack.elevation().outline().region();
        lines.corners(outline);
        for (Penetration p : stack.elevation().penetrations()) {
            lines.corners(Region.of(p.region().box()));
        }
        stack.on(Surface.WALL).forEach(f -> {
            lines.face(f, f.region());
            lines.slopes(f.region(), steps);
        });
        Box whole = outline.box();
        for (Opening o : stack.elevation().openings()) {
            lines.opening(stack, o);
            lines.slopes(stack, o, Math.min(steps, MOST_IN_REVEALS));
            whole = whole.join(o.rect().grow(o.reveal()));
        }
        TreeSet<Long> x = evenly(lines.x, whole.minX(), whole.maxX(), cell), y = evenly(lines.y, whole.minY(), whole.maxY(), cell);
        while (meetAtCorners(stack.elevation().openings(), x, y)) {
            // a line of one opening may be a line of the next, which then asks for more
        }
        return new GridLattice(x, y);
    }

    /** What divides a sill's ends in depth divides the feet of its jambs, and the other way round; whether that asked for more lines. */
    private static boolean meetAtCorners(List<Opening> openings, TreeSet<Long> x, TreeSet<Long> y) {
        boolean more = false;
        for (Opening o : openings) {
            Box r = o.rect();
            TreeSet<Long> depths = new TreeSet<>();
            x.subSet(r.minX(), r.minX() + o.reveal()).forEach(at -> depths.add(at - r.minX()));
            x.subSet(r.maxX() - o.reveal(), r.maxX()).forEach(at -> depths.add(r.maxX() - at));
            y.subSet(r.minY(), r.minY() + o.reveal()).forEach(at -> depths.add(at - r.minY()));
            for (long v : depths) {
                more |= x.add(r.minX() + v) | x.add(r.maxX() - v) | y.add(r.minY() + v);
            }
        }
        return more;
    }

    private static TreeSet<Long> evenly(TreeSet<Long> drawn, long from, long to, long cell) {
        TreeSet<Long> all = new TreeSet<>(drawn.subSet(from, true, to, true));
        for (long at = from; at < to; at += cell) {
            all.add(at);
        }
        all.add(to);
        return all;
    }

    /** The lines that the drawing asks for. */
    private record Lines(long rise, long creep, TreeSet<Long> x, TreeSet<Long> y) {
        Lines(long rise, long creep) {
            this(rise, creep, new TreeSet<>(), new TreeSet<>());
        }

        void across(long at) {
            for (long d : new long[] {0, 1, creep}) {
                x.add(at - d);
                x.add(at + d);
            }
        }

        void level(long at, long drive) {
            for (long d : new long[] {0, 1, drive}) {
                y.add(at - d);
                y.add(at + d);
            }
        }

        void corners(Region r) {
            for (int i = 0; i < r.edgeCount(); i++) {
                across(r.ax(i));
                level(r.ay(i), rise);
            }
        }

        /** Evenly, and ever finer towards both corners: what happens at a corner may decide over all that lies below it. */
        void slopes(Region r, int steps) {
            for (int i = 0; i < r.edgeCount(); i++) {
                if (r.ax(i) != r.bx(i) && r.ay(i) != r.by(i) && steps > 1) {
                    for (int k = 1; k < steps; k++) {
                        stair(r, i, (double) k / steps);
                    }
                    for (double near = 0.5 / steps; near > 1e-6; near /= 2) {
                        stair(r, i, near);
                        stair(r, i, 1 - near);
                    }
                }
            }
        }

        private void stair(Region r, int edge, double at) {
            x.add(Math.round(r.ax(edge) + (r.bx(edge) - r.ax(edge)) * at));
            y.add(Math.round(r.ay(edge) + (r.by(edge) - r.ay(edge)) * at));
        }

        void face(Face f, Region laidFlat) {
            corners(laidFlat);
            f.piece().material().profile().upstandMm().ifPresent(mm -> level(ledge(f), rise));
        }

        /** Depths are drawn on all four sides, so that jambs and sill meet cell by cell. */
        void opening(Stack stack, Opening o) {
            corners(Region.of(o.rect()));
            depth(o, o.reveal());
            for (Side side : GridRaster.REVEAL) {
                for (Face f : stack.on(new Surface(o.id(), side))) {
                    for (int i = 0; i < f.region().edgeCount(); i++) {
                        Point own = new Point(f.region().ax(i), f.region().ay(i)), flat = o.toWall(side, own);
                        depth(o, own.y());
                        if (side.isJamb()) {
                            level(flat.y(), rise);
                        } else {
                            across(flat.x());
                        }
                    }
                }
            }
        }

        /** The sloped edges of what lies in a reveal, in stairs. */
        void slopes(Stack stack, Opening o, int steps) {
            for (Side side : GridRaster.REVEAL) {
                for (Face f : stack.on(new Surface(o.id(), side))) {
                    Region r = f.region();
                    for (int i = 0; i < r.edgeCount(); i++) {
                        for (int k = 1; k < steps && r.ax(i) != r.bx(i) && r.ay(i) != r.by(i); k++) {
                            double at = (double) k / steps;
                            Point flat = o.toWall(side, new Point(Math.round(r.ax(i) + (r.bx(i) - r.ax(i)) * at), Math.round(r.ay(i) + (r.by(i) - r.ay(i)) * at)));
                            x.add(flat.x());
                            y.add(flat.y());
                        }
                    }
                }
            }
        }

        private void depth(Opening o, long v) {
            across(o.rect().minX() + v);
            across(o.rect().maxX() - v);
            level(o.rect().minY() + v, rise);
            level(o.rect().maxY() - v, creep);
            level(o.rect().maxY(), creep);
        }
    }

    /** Where the upstand of a flashing ends, in the wall's plane or along a jamb. */
    static long ledge(Face f) {
        long up = Math.round(f.piece().material().profile().upstandMm().orElse(0) * 100);
        boolean jamb = f.surface().side().isJamb();
        return jamb ? Math.max(f.box().minX(), f.box().maxX() - up) : Math.max(f.box().minY(), f.box().maxY() - up);
    }

    /** The number of the cell that begins at a line, or that holds a place. */
    static int cellAt(long[] lines, double at) {
        int i = Arrays.binarySearch(lines, (long) Math.floor(at));
        return i >= 0 ? i : -i - 2;
    }
}
