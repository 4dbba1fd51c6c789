package rainlap.rule;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.material.Layer;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Side;
import rainlap.wall.Surface;
import rainlap.water.Drive;
import rainlap.water.Step;

/** How far wind lifts water at a place: behind cladding by less than in the open, where the practice says so. */
public final class Shelter {
    private Shelter() {}

    /** Under the piece that a step of the water gets under, grid units. */
    public static long lift(Evidence e, Step s) {
        Segment line = new Segment(s.where().get(0), s.where().get(s.where().size() - 1));
        long x = (line.a().x() + line.b().x()) / 2, y = (line.a().y() + line.b().y()) / 2;
        return lift(e, s.on(), s.on().side().isJamb() ? new Point(x + 1, y) : new Point(x, y + 1), s.layer());
    }

    /** Under what lies outside a layer, a piece's id or {@link Step#FRAME}, at a place of a surface's own frame, grid units. */
    public static long lift(Evidence e, Surface on, Point p, String layer) {
        Drive drive = e.trace().drive();
        return on.side() == Side.HEAD ? Math.max(drive.rise(), drive.creep())
                : drive.rise() > drive.shelteredRise() && isClad(e.stack(), on, p, layer) ? drive.shelteredRise() : drive.rise();
    }

    /** Whether cladding lies over the next piece outside a layer, which is none of the face itself. */
    private static boolean isClad(Stack stack, Surface on, Point p, String layer) {
        List<Face> there = stack.meeting(on, new Box(p.x(), p.y(), p.x(), p.y())).stream().filter(f -> f.region().covers(p.x(), p.y())).toList();
        Optional<Face> own = there.stream().filter(f -> f.piece().id().equals(layer)).findFirst();
        List<Face> outside = there.stream().filter(f -> own.isEmpty() || stack.isOutside(f, own.get())).toList();
        Optional<Face> next = outside.stream().filter(f -> outside.stream().noneMatch(g -> g != f && stack.isOutside(f, g))).findFirst();
        return next.filter(n -> n.piece().material().layer() != Layer.FACE
                && outside.stream().anyMatch(f -> f != n && f.kind() == MaterialKind.CLADDING)).isPresent();
    }
}
