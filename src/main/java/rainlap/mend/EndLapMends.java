package rainlap.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** End laps set further along the wall, away from an opening or from the end lap of the course below. */
final class EndLapMends {
    /** Tape no wider runs along an edge and goes with it: 250 mm. */
    private static final long TAPE = 250 * Grid.MM;

    private EndLapMends() {}

    /** Both sheets cut elsewhere, the lap as long as it was; tape along the edge goes with it. */
    static Optional<Edited> moved(Evidence e, Finding f) {
        Optional<Joint> joint = LapMends.joint(e, f).filter(j -> isPlumb(j.line()) && f.required().isPresent());
        return joint.flatMap(j -> by(e, f, j).map(by -> {
            Edited out = new Edited(e.elevation().pieces());
            long x = j.line().get(0).x();
            boolean right = j.outer().box().minX() + j.outer().box().maxX() > 2 * x;
            shift(out, e, j.outer(), x, by, right);
            shift(out, e, j.inner(), right ? j.inner().box().maxX() : j.inner().box().minX(), by, !right);
            j.strips().stream().map(Face::piece).map(Piece::id).distinct().forEach(id -> tape(out, id, x, by));
            out.say("The end lap " + j.outer().piece().id() + "/" + j.inner().piece().id() + " set " + LengthText.mm(Math.abs(by)) + " further to the " + (by < 0 ? "left" : "right") + ", its tape with it.");
            return out;
        }));
    }

    private static boolean isPlumb(List<Point> line) {
        return line.stream().allMatch(p -> p.x() == line.get(0).x());
    }

    /** How far, to the right where positive: whole millimetres, so that it is as far away as asked. */
    private static Optional<Long> by(Evidence e, Finding f, Joint j) {
        long asked = Math.round(f.required().getAsDouble() * 100), x = j.line().get(0).x();
        if (!f.rule().equals("end-lap-near-opening")) {
            long more = MendSizes.up(asked - Math.round(f.measured().orElse(0) * 100));
            return Optional.of(x >= f.where().box().maxX() ? more : -more);
        }
        Box line = Box.of(j.line());
        return e.elevation().openings().stream().flatMap(o -> Stream.of(o.edge(Side.LEFT), o.edge(Side.RIGHT)))
                .min(Comparator.comparingDouble(jamb -> Math.hypot(jamb.a().x() - x, aside(jamb, line)))).map(jamb -> {
                    double beside = aside(jamb, line);
                    long level = MendSizes.up((long) Math.ceil(Math.sqrt(Math.max(0, (double) asked * asked - beside * beside))) - Math.abs(x - jamb.a().x()));
                    return x < jamb.a().x() ? -level : level;
                });
    }

    /** How far above or below a jamb a plumb line ends; 0 where it passes beside it. */
    private static long aside(Segment jamb, Box line) {
        return Math.max(0, Math.max(jamb.box().minY() - line.maxY(), line.minY() - jamb.box().maxY()));
    }

    /** A sheet that ends at a plumb edge ends further along; what of it was turned into an opening there is cut off too. */
    private static void shift(Edited out, Evidence e, Face sheet, long edge, long by, boolean fromEdgeToRight) {
        Box b = sheet.box(), strip = new Box(Math.min(edge, edge + by), b.minY(), Math.max(edge, edge + by), b.maxY());
        String id = sheet.piece().id();
        if (fromEdgeToRight == by < 0) {
            out.extend(id, Surface.WALL, List.of(Region.of(strip)));
            return;
        }
        out.takeOff(id, Surface.WALL, List.of(Region.of(strip)));
        e.elevation().openings().stream().filter(o -> o.rect().overlaps(strip)).forEach(o -> {
            for (Side side : List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD)) {
                takeOffReveal(out, id, o, side, strip);
            }
        });
    }

    private static void takeOffReveal(Edited out, String id, Opening o, Side side, Box strip) {
        Point a = o.toSurface(side, new Point(Math.max(strip.minX(), o.rect().minX()), Math.max(strip.minY(), o.rect().minY())));
        Point b = o.toSurface(side, new Point(Math.min(strip.maxX(), o.rect().maxX()), Math.min(strip.maxY(), o.rect().maxY())));
        Box u = Box.of(List.of(new Point(a.x(), 0), new Point(b.x(), o.reveal())));
        boolean has = out.number(id) >= 0 && out.pieces().get(out.number(id)).shapes().stream().anyMatch(s -> s.on().equals(new Surface(o.id(), side)));
        boolean atEdge = side.isJamb() ? strip.minX() <= o.edge(side).a().x() && o.edge(side).a().x() <= strip.maxX() : true;
        if (has && atEdge && u.width() > 0) {
            out.takeOff(id, new Surface(o.id(), side), List.of(Region.of(u)));
        }
    }

    private static void tape(Edited out, String id, long x, long by) {
        Piece p = out.pieces().get(out.number(id));
        Optional<Box> b = p.wallBox().filter(w -> w.width() <= TAPE && w.height() > w.width() && w.minX() <= x && x <= w.maxX());
        if (p.material().kind() == MaterialKind.TAPE && b.isPresent()) {
            List<Shape> moved = new ArrayList<>();
            p.shapes().forEach(s -> moved.add(s.on().isWall() ? new Shape(s.on(), Overlay.union(s.regions().stream().map(r -> r.mapped(at -> new Point(at.x() + by, at.y()))).toList())) : s));
            out.change(id, q -> new Piece(q.id(), q.material(), moved, q.under(), q.bond(), q.cuts()));
        }
    }
}
