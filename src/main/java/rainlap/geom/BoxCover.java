package rainlap.geom;

import java.util.List;
import java.util.TreeSet;

/** Whether regions together cover a box, told without an overlay where only level and plumb edges cross it. */
public final class BoxCover {
    private final Box box;
    private final TreeSet<Long> xs = new TreeSet<>();
    private final TreeSet<Long> ys = new TreeSet<>();

    private BoxCover(Box box) {
        this.box = box;
        xs.addAll(List.of(box.minX(), box.maxX()));
        ys.addAll(List.of(box.minY(), box.maxY()));
    }

    /** True where they do; regions with a sloped edge in the box count for nothing, so false says only that an overlay must tell. */
    public static boolean isSure(Box box, List<Region> regions) {
        BoxCover cover = new BoxCover(box);
        List<Region> upright = regions.stream().filter(cover::cut).toList();
        return cover.everyPartLiesIn(upright);
    }

    /** Cuts the box along a region's edges; whether all that cross it are level or plumb. */
    private boolean cut(Region r) {
        for (int i = 0; i < r.edgeCount(); i++) {
            Box edge = new Box(Math.min(r.ax(i), r.bx(i)), Math.min(r.ay(i), r.by(i)), Math.max(r.ax(i), r.bx(i)), Math.max(r.ay(i), r.by(i)));
            boolean crosses = edge.minX() < box.maxX() && edge.maxX() > box.minX() && edge.minY() < box.maxY() && edge.maxY() > box.minY();
            if (crosses && edge.width() > 0 && edge.height() > 0) {
                return false;
            }
            if (crosses) {
                (edge.width() == 0 ? xs : ys).add(edge.width() == 0 ? edge.minX() : edge.minY());
            }
        }
        return true;
    }

    private boolean everyPartLiesIn(List<Region> regions) {
        for (long x : xs.headSet(box.maxX())) {
            double midX = (x + xs.higher(x)) / 2.0;
            for (long y : ys.headSet(box.maxY())) {
                double midY = (y + ys.higher(y)) / 2.0;
                if (regions.stream().noneMatch(r -> r.covers(midX, midY))) {
                    return false;
                }
            }
        }
        return true;
    }
}
