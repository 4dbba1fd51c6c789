package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.joint.Drawn;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.EndDams;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Places where a trace is easily wrong, each as a small drawing of 1000 by 1000. Rise 40, creep 100. */
class TraceCasesTest {
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(100), Grid.of(40), OptionalDouble.empty(), List.of());

    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE);
    }

    private static int at(Drawn wall, double x, double y) {
        return at(wall.stack(), Surface.WALL, x, y);
    }

    private static int at(Stack stack, Surface surface, double x, double y) {
        return new Waters(stack, DRIVE, Crew.ALONE).defences(surface, Point.ofMm(x, y));
    }

    private static Trace trace(Drawn wall) {
        return Trace.of(wall.stack(), DRIVE, Optional.empty(), Crew.ALONE);
    }

    /** A sheet over everything with one hole that lets rain in. */
    private static Drawn coveredBut(Drawn d, double x, double y, double w, double h) {
        Region holed = new Region(Ring.of(Box.ofMm(-100, -100, 1200, 1200)), List.of(Ring.of(Box.ofMm(x, y, w, h))));
        return d.add("C", Material.of("cover", MaterialKind.MEMBRANE), List.of(new Shape(Surface.WALL, List.of(holed))), List.of());
    }

    /**
     * Rain gets in behind U through the slit between V1 and V2 at x = 200, meets the tape at U's foot and runs along it. At x = 500 it comes past
     * the slit between A and B, and is pushed in behind both by the creep, against its way too.
     */
    @Test void whatRunsAlongALineIsPushedUnderWhatItPasses() {
        Drawn d = slit(wall().sheet("A", -100, -100, 600, 700).sheet("B", 502, -100, 600, 700).sheet("U", -100, 500, 1200, 300))
                .tape("T", -100, 460, 1200, 80);
        assertEquals(0, at(d, 401, 450));
        assertTrue(at(d, 399, 450) > 0, "no further than the creep");
        assertEquals(0, at(d, 601, 450));
        assertTrue(at(d, 603, 450) > 0, "no further than the creep");
    }

    private static Drawn slit(Drawn d) {
        return d.sheet("V1", -100, 700, 300, 400).sheet("V2", 202, 700, 900, 400);
    }

    /** The same stream on the bare frame: wherever on its way the tape comes off, it falls. The wind lifts water under the tape no higher than 440. */
    @Test void whatRunsAlongALineFallsWhereTheTapeComesOff() {
        Drawn d = slit(wall().sheet("U", -100, 500, 1200, 300)).tape("T", -100, 400, 1200, 140);
        assertEquals(1, at(d, 800, 490));
        assertEquals(0, at(d, 800, 500), "the stream itself");
        assertTrue(at(d, 800, 510) > 0, "above it");
    }

    /**
     * U's foot steps down at x = 600, its left edges are sealed. What gets in behind it at x = 200 comes out at its upper foot, until a tape closes that: then
     * it runs along to the step, down behind U's lower part and into the hole in B.
     */
    @Test void aTapeThatClosesAnOutletTurnsWaterInwards() {
        assertEquals(1, at(stepped(), 600, 395));
        assertEquals(0, at(stepped().tape("T", -100, 460, 700, 80), 600, 395));
    }

    private static Drawn stepped() {
        Region holed = new Region(Ring.of(Box.ofMm(-100, -100, 1200, 1200)), List.of(Ring.of(Box.ofMm(600, 400, 2, 10))));
        return slit(wall().add("B", Material.of("sheet", MaterialKind.MEMBRANE), List.of(new Shape(Surface.WALL, List.of(holed))), List.of())
                .ring("U", -100, 500, 600, 500, 600, 300, 1100, 300, 1100, 800, -100, 800).bond(Bond.sealedAt(Edge.LEFT)));
    }

    private static Drawn flashing(EndDams dams) {
        Profile p = new Profile(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(60), Optional.of(dams),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        return wall().add("H", Material.of("flashing", MaterialKind.FLASHING).withProfile(p),
                List.of(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(200, 500, 600, 100))))), List.of());
    }

    @Test void anUpstandLeadsToItsEndsUnlessDammed() {
        assertEquals(0, at(coveredBut(flashing(EndDams.NONE), 450, 570, 100, 20), 800, 400));
        assertEquals(0, at(coveredBut(flashing(EndDams.NONE), 450, 570, 100, 20), 199.99, 400));
        assertEquals(0, at(coveredBut(flashing(EndDams.LEFT), 450, 570, 100, 20), 800, 400));
        assertTrue(at(coveredBut(flashing(EndDams.LEFT), 450, 570, 100, 20), 199.99, 400) > 0);
        assertTrue(at(coveredBut(flashing(EndDams.BOTH), 450, 570, 100, 20), 800, 400) > 0);
        assertTrue(at(coveredBut(flashing(EndDams.NONE), 450, 400, 100, 20), 800, 450) > 0, "water below the ledge does not come to its ends");
    }

    /** A tape laid aslant over the flashing: the ledge goes on beneath both its sloped edges. */
    @Test void aLedgeGoesOnBeneathASlopedTape() {
        for (double lean : new double[] {80, -80}) {
            Drawn d = flashing(EndDams.NONE).add("L", Material.of("tape", MaterialKind.TAPE), List.of(new Shape(Surface.WALL,
                    List.of(Drawn.region(650, 520, 700, 520, 700 + lean, 620, 650 + lean, 620)))), List.of());
            assertEquals(0, at(coveredBut(d, 450, 570, 100, 20), 800, 400), "leaning by " + lean);
        }
    }

    /** A pocket on the frame, open above and closed at its foot by a tape. */
    private static Drawn pocket() {
        return wall().sheet("U", 200, 400, 600, 400).tape("T", 200, 380, 600, 60);
    }

    @Test void aLevelCatchEdgeDrainsByItsOpenEnds() {
        assertEquals(List.of(), trace(pocket()).trapped());
        assertEquals(List.of(), trace(pocket().tape("S1", 180, 380, 60, 500)).trapped(), "one is enough");
    }

    @Test void withClosedEndsItHoldsTheWater() {
        List<Standing> all = trace(pocket().tape("S1", 180, 380, 60, 500).tape("S2", 760, 380, 60, 500)).trapped();
        assertTrue(!all.isEmpty());
        all.forEach(s -> assertEquals("frame at 400", s.layer() + " at " + s.where().get(0).y() / 100));
    }

    @Test void sealedEdgesHoldWaterAndALooseOneLetsItOut() {
        Drawn base = wall().sheet("B", -100, -100, 1200, 1200);
        assertTrue(!trace(base.sheet("U", 200, 400, 600, 400).bond(Bond.sealedAt(Edge.BOTTOM, Edge.LEFT, Edge.RIGHT))).trapped().isEmpty());
        Drawn other = wall().sheet("B", -100, -100, 1200, 1200);
        assertEquals(List.of(), trace(other.sheet("U", 200, 400, 600, 400).bond(Bond.sealedAt(Edge.BOTTOM, Edge.LEFT))).trapped());
    }

    /** A sheet with a gable for its foot, the apex at (500, 600), taped to the frame; rain gets in behind it by a hole two wide, from x on. */
    private static Drawn gable(double x) {
        Region holed = new Region(Ring.of(List.of(Point.ofMm(100, 200), Point.ofMm(500, 600), Point.ofMm(900, 200), Point.ofMm(900, 1100),
                Point.ofMm(100, 1100))), List.of(Ring.of(Box.ofMm(x, 800, 2, 10))));
        return wall().add("C", Material.of("cover", MaterialKind.MEMBRANE), List.of(new Shape(Surface.WALL, List.of(holed))), List.of())
                .add("T", Material.of("tape", MaterialKind.TAPE), List.of(new Shape(Surface.WALL,
                        List.of(Drawn.region(100, 150, 500, 550, 900, 150, 900, 250, 500, 650, 100, 250)))), List.of());
    }

    /** What runs down a slope stands on its line, one unit high. Pushed water falls there too, but no further off than the creep, and does not run. */
    @Test void aDropOnAVertexRunsDownTheSideItFallsOn() {
        assertEquals(0, at(gable(499), 250, 350), "parted at the apex");
        assertEquals(0, at(gable(499), 750, 350), "parted at the apex");
        assertTrue(at(gable(500), 250, 350) > 0, "all of it right of the apex");
        assertEquals(0, at(gable(500), 750, 350));
        assertEquals(0, at(gable(498), 250, 350));
        assertTrue(at(gable(498), 750, 350) > 0, "all of it left of the apex");
    }

    /** A stream comes off the right end of the flashing, at x = 800, and meets a loose sheet P. */
    @Test void aDropOnAPlumbEdge() {
        Drawn beneath = coveredBut(flashing(EndDams.NONE).sheet("P", 800, 100, 150, 300), 450, 570, 100, 20);
        assertEquals(0, at(beneath, 800, 300), "in behind its top edge");
        assertTrue(at(beneath, 801, 300) > 0, "and no further: nothing begins beside it");
        Drawn beside = coveredBut(flashing(EndDams.NONE).sheet("P", 801, 100, 150, 300), 450, 570, 100, 20);
        assertEquals(0, at(beside, 800, 300), "past it");
        assertTrue(at(beside, 801, 300) > 0, "a millimetre is too far to be pushed");
        Drawn touching = coveredBut(flashing(EndDams.NONE).sheet("P", 800.01, 100, 150, 300), 450, 570, 100, 20);
        assertEquals(0, at(touching, 900, 300), "pushed in under its side");
        assertTrue(at(touching, 901, 300) > 0, "no further than the creep");
    }

    /**
     * Between 202 and 205 wind pushes water in under U, over P as far as 550. P's end leans: only that low does the water get past it, and runs and falls from
     * there. Above, the tape closes U's edge.
     */
    @Test void pushedWaterIsNoHigherThanItCame() {
        for (boolean mirrored : new boolean[] {false, true}) {
            Drawn d = mirrored ? wall().ring("P", 900, 200, 900, 800, 400, 800, 500, 200).sheet("U", -100, 202, 650, 900).tape("T", 530, 205, 40, 900)
                    : wall().ring("P", 100, 200, 500, 200, 600, 800, 100, 800).sheet("U", 450, 202, 650, 900).tape("T", 430, 205, 40, 900);
            assertEquals(0, at(d, mirrored ? 460 : 540, 203), "behind P's end");
            assertTrue(at(d, mirrored ? 460 : 540, 400) > 0, "far above, mirrored " + mirrored);
        }
    }

    /** The slit between two sheets lies exactly over the line where two others butt. */
    @Test void aSourceOnASharedEdgeWetsBoth() {
        Drawn d = coveredBut(wall().sheet("L", -100, -100, 600, 800).sheet("R", 500, -100, 600, 800), 499, 800, 2, 10);
        assertEquals(0, at(d, 499.5, 300));
        assertEquals(0, at(d, 500.5, 300));
    }

    @Test void waterFallsIntoAnOpeningOverItsHead() {
        Drawn d = wall().window("W", 300, 300, 400, 400, 100).sheet("A", -100, -100, 1200, 400);
        assertEquals(0, at(d.stack(), new Surface("W", Side.HEAD), 200, 50));
    }

    /** Rain on the sill is pushed 100 along beneath a loose sheet that turns up the jamb 50 further on: up there it goes by the rise of 40, not by the 50 left of the push. */
    @Test void whatIsPushedAlongASillGoesUpTheJambByTheRise() {
        Drawn d = wall().window("W", 300, 300, 400, 400, 100).cutSheet("M", -100, -100, 1200, 1200, "W", CutPattern.FLUSH, 0)
                .piece("S", MaterialKind.MEMBRANE, Drawn.on("W", Side.SILL, 350, 0, 400, 0, 400, 100, 350, 100),
                        Drawn.on("W", Side.RIGHT, 0, 0, 400, 0, 400, 100, 0, 100))
                .piece("T", MaterialKind.TAPE, Drawn.on("W", Side.RIGHT, 0, 0, 400, 0, 400, 20, 0, 20), new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(700, 300, 60, 400)))));
        assertEquals(0, at(d.stack(), new Surface("W", Side.SILL), 399, 90));
        assertEquals(0, at(d.stack(), new Surface("W", Side.RIGHT), 39, 90));
        assertTrue(at(d.stack(), new Surface("W", Side.RIGHT), 41, 90) > 0, "no further than the rise");
    }

    /** Four sheets round a middle, each over the one before, the first over the last: one of the four laps must then be a reverse lap, and only it leaks. */
    @Test void aRingOfFourSheetsLeaksWhereItTurnsInwards() {
        Drawn d = wall().sheet("A", -100, -100, 675, 525).sheet("B", 425, -100, 675, 675).sheet("C", 425, 425, 675, 675)
                .sheet("D", -100, 275, 675, 825, "A");
        assertEquals(0, at(d, 200, 200), "D is tucked under A: behind A");
        assertEquals(1, at(d, 800, 200), "C laps over B");
        assertEquals(3, at(d, 800, 800));
    }

    /** X lies against the frame, beneath a sound lap: what overruns the lap runs down over and behind its loose top edge, as over the frame. */
    @Test void aPieceWhollyHiddenChangesNothing() {
        Drawn plain = wall().sheet("L", -100, -100, 1200, 600).sheet("U", -100, 400, 1200, 700);
        Drawn hidden = wall().sheet("X", 300, 100, 200, 200).sheet("L", -100, -100, 1200, 600).sheet("U", -100, 400, 1200, 700);
        for (int y = 5; y < 1000; y += 30) {
            assertEquals(at(plain, 400, y), at(hidden, 400, y), "y " + y);
        }
    }

    @Test void aHoleOfOneMillimetreIsFoundOnAWallOfThirtyMetres() {
        Region holed = new Region(Ring.of(Box.ofMm(-100, -100, 30200, 3200)), List.of(Ring.of(Box.ofMm(12345, 1500, 1, 1))));
        Drawn d = Drawn.wall().outline(0, 0, 30000, 3000, EdgeRole.FREE)
                .add("M", Material.of("sheet", MaterialKind.MEMBRANE), List.of(new Shape(Surface.WALL, List.of(holed))), List.of());
        Trace t = trace(d);
        assertTrue(t.isWet(Surface.WALL, Point.ofMm(12345.5, 1500.5)));
        assertTrue(t.isWet(Surface.WALL, Point.ofMm(12345.5, 10)));
        List<Box> wet = t.reach().stream().filter(r -> r.defences() == 0).flatMap(r -> r.where().stream()).map(Region::box).toList();
        assertEquals(Box.ofMm(12245, 0, 201, 1541), wet.stream().reduce(Box::join).orElseThrow(), "as far as the drive, and down to the foot");
        assertEquals(1, wet.size());
    }
}
