package rainlap.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.esri.core.geometry.Geometry;
import com.esri.core.geometry.GeometryEngine;
import com.esri.core.geometry.OperatorDifference;
import com.esri.core.geometry.OperatorIntersection;
import com.esri.core.geometry.OperatorSimplify;
import com.esri.core.geometry.Polygon;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.geom.Segment;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/**
 * Two geometries that know nothing of ours, on seeded random walls: esri-geometry-api for areas of overlap and bare wall,
 * {@code java.awt.geom.Area} for who lies beside an edge and how long the lap is there.
 */
class JointOracleTest {
    private static final int WALLS = 2000;

    @Test
    void overlapAreasAgreeWithEsri() {
        for (long seed = 0; seed < WALLS; seed++) {
            List<Face> faces = RandomWall.of(seed).stack().on(Surface.WALL);
            Random pick = new Random(seed);
            for (int k = 0; k < 6 && faces.size() > 1; k++) {
                Region a = faces.get(pick.nextInt(faces.size())).region(), b = faces.get(pick.nextInt(faces.size())).region();
                double ours = Overlay.intersection(List.of(a), List.of(b)).stream().mapToDouble(Region::areaMm2).sum();
                Geometry theirs = OperatorIntersection.local().execute(esri(a), esri(b), null, null);
                assertEquals(theirs.calculateArea2D() / 10_000, ours, 1 + roundingMm2(a), "seed " + seed + " " + a + " " + b);
            }
        }
    }

    private static double roundingMm2(Region r) {
        // snap rounding moves a vertex by half a hundredth of a millimetre at most
        return 0.01 * r.edges().stream().mapToDouble(Segment::lengthMm).sum();
    }

    /** Ours lies within theirs, and no place of theirs that is 50 mm from all edges is missing from ours. */
    @Test
    void bareWallAgreesWithEsri() {
        int found = 0;
        for (long seed = 0; seed < WALLS; seed++) {
            Stack s = RandomWall.of(seed).stack();
            List<Bare> ours = Bare.of(s, Joints.of(s));
            List<Polygon> theirs = bareByEsri(s);
            for (Bare b : ours) {
                double within = theirs.stream().mapToDouble(t -> OperatorIntersection.local()
                        .execute(esri(b.region()), t, null, null).calculateArea2D() / 10_000).sum();
                assertEquals(b.region().areaMm2(), within, 1 + roundingMm2(b.region()), "seed " + seed + " " + b);
                found++;
            }
            for (Polygon t : theirs) {
                assertWidePlacesFound(t, ours, new Random(seed), "seed " + seed);
            }
        }
        assertTrue(found > WALLS / 4, "only " + found + " bare places were compared");
    }

    private static void assertWidePlacesFound(Polygon bare, List<Bare> ours, Random pick, String what) {
        com.esri.core.geometry.Envelope2D box = new com.esri.core.geometry.Envelope2D();
        bare.queryEnvelope2D(box);
        for (int k = 0; k < 40; k++) {
            com.esri.core.geometry.Point at = new com.esri.core.geometry.Point(box.xmin + pick.nextDouble() * box.getWidth(),
                    box.ymin + pick.nextDouble() * box.getHeight());
            if (GeometryEngine.contains(bare, at, null)
                    && GeometryEngine.distance((Geometry) bare.getBoundary(), at, null) > 5001) {
                assertTrue(ours.stream().anyMatch(b -> b.region().covers(at.getX(), at.getY())),
                        what + ": bare wall missed at " + at.getX() / 100 + " " + at.getY() / 100);
            }
        }
    }

    private static List<Polygon> bareByEsri(Stack s) {
        List<Geometry> over = new ArrayList<>();
        s.on(Surface.WALL).stream().filter(Sheets::covers).forEach(f -> over.add(esri(f.region())));
        s.elevation().openings().forEach(o -> over.add(esri(Region.of(o.rect()))));
        Geometry left = esri(s.elevation().outline().region());
        for (Geometry g : over) {
            left = OperatorDifference.local().execute(left, g, null, null);
        }
        return split((Polygon) left);
    }

    /** Outer rings with their holes as polygons of their own. */
    private static List<Polygon> split(Polygon p) {
        List<Polygon> out = new ArrayList<>();
        for (int i = 0; i < p.getPathCount(); i++) {
            if (p.calculateRingArea2D(i) > 0) {
                Polygon one = new Polygon();
                one.addPath(p, i, true);
                for (int h = 0; h < p.getPathCount(); h++) {
                    if (p.calculateRingArea2D(h) < 0 && inside(p.getPoint(p.getPathStart(h)), one)) {
                        one.addPath(p, h, true);
                    }
                }
                out.add(one);
            }
        }
        return out;
    }

    private static boolean inside(com.esri.core.geometry.Point at, Polygon ring) {
        return GeometryEngine.contains(ring, at, null)
                || GeometryEngine.touches(ring, at, null);
    }

    private static Polygon esri(Region r) {
        Polygon out = new Polygon();
        add(out, r.shell());
        r.holes().forEach(h -> add(out, h));
        return (Polygon) OperatorSimplify.local().execute(out, null, true, null);
    }

    private static void add(Polygon out, Ring r) {
        out.startPath(r.x(0), r.y(0));
        for (int i = 1; i < r.size(); i++) {
            out.lineTo(r.x(i), r.y(i));
        }
    }

    /** However short and slanting its edge, no joint laps further than the wall is wide. */
    @Test
    void everyLapHasAnEnd() {
        for (long seed = 0; seed < WALLS; seed++) {
            for (Joint j : Joints.of(RandomWall.of(seed).stack()).all()) {
                assertTrue(j.lap() >= 0 && j.lap() < 1_000_000, "seed " + seed + ": " + Drawn.text(j));
            }
        }
    }

    /** At random places of random edges: is the joint there the one that looking at both sides with AWT gives, and its lap? */
    @Test
    void partnersAndLapsAgreeWithAwt() {
        int laps = 0;
        for (long seed = 0; seed < WALLS; seed++) {
            Stack s = RandomWall.of(seed).stack();
            Joints joints = Joints.of(s);
            Random pick = new Random(seed + 77);
            List<Face> sheets = s.on(Surface.WALL).stream().filter(Sheets::isSheet).toList();
            for (int k = 0; k < 30 && !sheets.isEmpty(); k++) {
                Face p = sheets.get(pick.nextInt(sheets.size()));
                Segment e = p.freeEdges().get(pick.nextInt(p.freeEdges().size()));
                EdgeFrame frame = EdgeFrame.of(e);
                double at = frame.length() * (0.02 + 0.96 * pick.nextDouble());
                if (nearACorner(sheets, frame, at)) {
                    continue;
                }
                Face expected = beneath(s, sheets, p, frame, at);
                Run run = runAt(joints, p, frame, at);
                Face found = run == null ? null : partner(joints, run);
                assertEquals(expected, found, "seed " + seed + " edge " + e + " of " + p + " at " + frame.at(at));
                if (expected != null) {
                    laps += lapAgrees(run, p, expected, frame, at, "seed " + seed + " " + p + " over " + expected) ? 1 : 0;
                }
            }
        }
        assertTrue(laps > WALLS, "only " + laps + " laps were compared");
    }

    /** Within 2 mm of where another edge crosses this one the two may differ by tolerance. */
    private static boolean nearACorner(List<Face> sheets, EdgeFrame f, double at) {
        for (Face q : sheets) {
            for (double t : new double[] {-200, -1, 1, 200}) {
                Intervals in = f.inside(q.region(), t);
                for (int i = 0; i < in.count(); i++) {
                    if (Math.abs(in.from(i) - at) < 200 || Math.abs(in.to(i) - at) < 200) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static Face beneath(Stack s, List<Face> sheets, Face p, EdgeFrame f, double at) {
        Face best = null;
        for (Face q : sheets) {
            if (q.number() == p.number() || !s.isOutside(p, q)) {
                continue;
            }
            Path2D path = path(q.region());
            // two units beside a sloped edge, as our tolerance is stated; a quarter beside a level or plumb one
            double side = f.side() > 1 ? 2 : 0.25;
            if (path.contains(x(f, at, side), y(f, at, side)) && path.contains(x(f, at, -side), y(f, at, -side))
                    && (best == null || s.isOutside(q, best))) {
                best = q;
            }
        }
        return best;
    }

    private static double x(EdgeFrame f, double s, double t) {
        return f.at(0).x() + s * f.ux() - t * f.uy();
    }

    private static double y(EdgeFrame f, double s, double t) {
        return f.at(0).y() + s * f.uy() + t * f.ux();
    }

    private static Run runAt(Joints joints, Face p, EdgeFrame f, double at) {
        for (Joint j : joints.all()) {
            if (j.outer() == p && j.kind().isLap()) {
                for (Run r : j.runs()) {
                    if (liesOn(r, f, at)) {
                        return r;
                    }
                }
            }
        }
        return null;
    }

    private static boolean liesOn(Run r, EdgeFrame f, double at) {
        Point a = r.line().a(), b = r.line().b();
        return Math.abs(f.t(a.x(), a.y())) < 1.5 && Math.abs(f.t(b.x(), b.y())) < 1.5
                && f.s(a.x(), a.y()) <= at && at <= f.s(b.x(), b.y());
    }

    private static Face partner(Joints joints, Run run) {
        return joints.all().stream().filter(j -> j.runs().contains(run)).findFirst().orElseThrow().inner();
    }

    /** Compares with a needle pushed in beneath the edge: where it first leaves either sheet, the lap ends. Wall plane, no folds. */
    private static boolean lapAgrees(Run run, Face p, Face q, EdgeFrame f, double at, String what) {
        if (!p.folds().isEmpty() || !q.folds().isEmpty() || f.side() > 1 || !isUpright(p) || !isUpright(q)) {
            return false;
        }
        double x0 = x(f, at, 0), y0 = y(f, at, 0), far = 400_000;
        Path2D needle = new Path2D.Double();
        needle.moveTo(x(f, at, 0) - f.ux(), y0 - f.uy());
        needle.lineTo(x0 + f.ux(), y0 + f.uy());
        needle.lineTo(x(f, at + 1, far), y(f, at + 1, far));
        needle.lineTo(x(f, at - 1, far), y(f, at - 1, far));
        needle.closePath();
        Area area = new Area(needle);
        area.intersect(new Area(path(p.region())));
        area.intersect(new Area(path(q.region())));
        double depth = Math.abs(f.ux()) > 0.5 ? area.getBounds2D().getHeight() : area.getBounds2D().getWidth();
        double s = f.s(f.at(at).x(), f.at(at).y()) - f.s(run.line().a().x(), run.line().a().y());
        assertEquals(depth, run.lap().leastWithin(s, s), 3, what);
        return true;
    }

    private static boolean isUpright(Face f) {
        return f.region().isBox();
    }

    private static Path2D path(Region r) {
        Path2D out = new Path2D.Double(PathIterator.WIND_EVEN_ODD);
        List<Ring> rings = new ArrayList<>(r.holes());
        rings.add(r.shell());
        for (Ring ring : rings) {
            out.moveTo(ring.x(0), ring.y(0));
            for (int i = 1; i < ring.size(); i++) {
                out.lineTo(ring.x(i), ring.y(i));
            }
            out.closePath();
        }
        return out;
    }
}
