package rainlap.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.geom.Segment;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** No bare place of a wall is left untold: it is bare wall, or lies between two sheets that face one another, or where such gaps meet. In doubles, with JTS's own overlay. */
class BareEverywhereTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final int WALLS = 1000;
    /** Whose middle is further from its border than this is to be told: 1.5 mm, for 1 mm across is within tolerance. */
    private static final double INSIDE = 150, GAP = 10_000;

    @Test
    void everyBarePlaceIsToldBySomething() {
        int besideStrips = 0;
        List<String> missed = new ArrayList<>();
        for (long seed = 0; seed < WALLS; seed++) {
            Stack s = RandomWall.of(seed).stack();
            Joints joints = Joints.of(s);
            List<Bare> bare = Bare.of(s, joints);
            besideStrips += (int) bare.stream().filter(b -> b.region().shell().leastWidth() < GAP).count();
            Geometry told = union(bare.stream().map(b -> polygon(b.region()).buffer(INSIDE)).toList());
            Geometry gaps = union(joints.all().stream().filter(j -> !j.kind().isLap() && j.surface().isWall())
                    .flatMap(j -> j.runs().stream()).map(BareEverywhereTest::between).toList());
            for (Geometry place : parts(uncovered(s).buffer(-INSIDE))) {
                Geometry left = place.difference(told).difference(gaps);
                for (Geometry l : parts(left.buffer(-INSIDE))) {
                    Envelope box = l.getEnvelopeInternal();
                    boolean whereGapsMeet = Math.max(box.getWidth(), box.getHeight()) <= GAP && l.distance(gaps) <= 3 * INSIDE && place.intersects(gaps);
                    if (!whereGapsMeet) {
                        missed.add(seed + ": " + box);
                    }
                }
            }
        }
        assertEquals(List.of(), missed);
        assertTrue(besideStrips > WALLS / 20, "only " + besideStrips + " narrow places");
    }

    private static Geometry uncovered(Stack s) {
        List<Geometry> over = new ArrayList<>();
        s.on(Surface.WALL).stream().filter(Sheets::covers).forEach(f -> over.add(polygon(f.region())));
        s.elevation().openings().forEach(o -> over.add(polygon(Region.of(o.rect()))));
        return polygon(s.elevation().outline().region()).difference(union(over));
    }

    private static Geometry union(List<Geometry> all) {
        return all.isEmpty() ? JTS.createPolygon() : CascadedPolygonUnion.union(all);
    }

    private static List<Geometry> parts(Geometry g) {
        List<Geometry> out = new ArrayList<>();
        for (int i = 0; i < g.getNumGeometries(); i++) {
            if (!g.getGeometryN(i).isEmpty()) {
                out.add(g.getGeometryN(i));
            }
        }
        return out;
    }

    /** The strip of nothing to the right of a run, which has the outer piece on its left. */
    private static Geometry between(Run r) {
        Segment line = r.line();
        double dx = line.b().x() - line.a().x(), dy = line.b().y() - line.a().y(), length = Math.hypot(dx, dy), far = r.lap().greatest() + INSIDE;
        if (length == 0) {
            return JTS.createPolygon();
        }
        Coordinate a = new Coordinate(line.a().x(), line.a().y()), b = new Coordinate(line.b().x(), line.b().y());
        Coordinate c = new Coordinate(b.x + dy / length * far, b.y - dx / length * far), d = new Coordinate(a.x + dy / length * far, a.y - dx / length * far);
        return JTS.createPolygon(new Coordinate[] {a, b, c, d, a}).buffer(INSIDE);
    }

    private static Geometry polygon(Region r) {
        return JTS.createPolygon(ring(r.shell()), r.holes().stream().map(BareEverywhereTest::ring).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(Ring r) {
        Coordinate[] at = new Coordinate[r.size() + 1];
        for (int i = 0; i <= r.size(); i++) {
            at[i] = new Coordinate(r.x(i % r.size()), r.y(i % r.size()));
        }
        return JTS.createLinearRing(at);
    }
}
