package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rainlap.file.ElevationFile;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.Drawn;
import rainlap.joint.RandomWall;
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
import rainlap.wall.Elevation;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** Litres reckoned by hand on small walls, one litre of rain on a square metre an hour; and nothing is lost on any wall. */
class RunoffTest {
    private static final double EXACT = 1e-9;
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(100), Grid.of(40), OptionalDouble.empty(), List.of());

    /** A metre square: one litre an hour in all. */
    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE);
    }

    private static Runoff runoff(Stack stack) {
        return Waters.toOneFailure(stack, DRIVE, Crew.ALONE, true).runoff(DRIVE.creep(), 1);
    }

    private static void is(Drawn wall, double foot, double drips, double openings, double frame, double trapped) {
        Balance b = runoff(wall.stack()).balance();
        assertEquals(1, b.fallen(), EXACT, "fallen");
        assertEquals(foot, b.foot(), EXACT, "at the base");
        assertEquals(drips, b.drips(), EXACT, "drips");
        assertEquals(openings, b.openings(), EXACT, "openings");
        assertEquals(frame, b.frame(), EXACT, "frame");
        assertEquals(trapped, b.trapped(), EXACT, "trapped");
    }

    @Test void oneSheetShedsAll() {
        is(wall().sheet("M", -100, -50, 1200, 1150), 1, 0, 0, 0, 0);
    }

    /** At the open upper edge of each of 40 small sheets one below the other water parts, and beneath it comes together: there are 2 to the 40 ways down, and one stream. */
    @Test void waterThatPartsAndMeetsAgainIsOneStream() {
        Drawn d = wall().sheet("M", -100, -50, 1200, 1150);
        for (int i = 0; i < 40; i++) {
            d.sheet("S" + i, 200, 20 + 24 * i, 300, 16);
        }
        is(d, 1, 0, 0, 0, 0);
    }

    /** 600 mm of the width lie bare. */
    @Test void rainOnABareFrameIsOnTheFrame() {
        is(wall().sheet("M", -100, -50, 500, 1150), 0.4, 0, 0, 0.6, 0);
    }

    /** A sheet that ends 300 above the base lets go onto the frame all that fell on it: nothing that falls on the wall gets by. */
    @Test void aSheetThatEndsShortDropsOntoTheFrame() {
        is(wall().sheet("M", -100, 300, 1200, 800), 0, 0, 0, 1, 0);
    }

    /** 0.4 fall above the upper edge of L at 600: half runs over it, half behind, and off the foot of U at 500 onto the frame. */
    @Test void aReverseLapSplitsTheWater() {
        is(wall().sheet("U", -100, 500, 1200, 600).sheet("L", -100, -50, 1200, 650), 0.8, 0, 0, 0.2, 0);
    }

    /** The same, its upper edge taped. */
    @Test void aTapeClosesIt() {
        is(wall().sheet("U", -100, 500, 1200, 600).sheet("L", -100, -50, 1200, 650).tape("T", -100, 560, 1200, 80), 1, 0, 0, 0, 0);
    }

    /** 0.4 fall above the pocket of a V foot, half over its front and half into it, where that stands. */
    @Test void whatGetsIntoAPocketWithAVFootStaysThere() {
        Drawn pocket = wall().sheet("M", -100, -50, 1200, 1150).ring("P", -100, 500, 500, 300, 1100, 500, 1100, 600, -100, 600)
                .bond(Bond.sealedAt(Edge.BOTTOM, Edge.LEFT, Edge.RIGHT));
        is(pocket, 0.8, 0, 0, 0, 0.2);
    }

    /** 0.4 fall above a level batten: equal parts over its front, in behind it, and off each end. */
    @Test void aLevelBattenSharesAmongFourWays() {
        Drawn batten = wall().sheet("M", -100, -50, 1200, 1150)
                .piece("B", MaterialKind.BATTEN, new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(0, 560, 1000, 40)))));
        assertEquals(2 * 0.1, runoff(Stack.of(batten.elevation(), Stage.FINISHED)).balance().sides(), EXACT, "off both ends");
    }

    /** A V of a batten has no ends: all of it goes over the front and in behind. */
    @Test void aVOfABattenHasNoEnds() {
        Drawn batten = wall().sheet("M", -100, -50, 1200, 1150)
                .piece("B", MaterialKind.BATTEN, new Shape(Surface.WALL, List.of(Drawn.region(100, 560, 500, 460, 900, 560, 900, 600, 500, 500, 100, 600))));
        assertEquals(0, runoff(Stack.of(batten.elevation(), Stage.FINISHED)).balance().trapped());
    }

    /** A flashing across the whole width, its foot at 250: what fell above it, 0.75, is thrown clear. */
    @Test void aDripThrowsClear() {
        Profile drip = new Profile(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(),
                OptionalDouble.empty(), OptionalDouble.of(10), OptionalDouble.empty(), OptionalDouble.empty());
        Material flashing = Material.of("F", MaterialKind.FLASHING).withProfile(drip);
        Shape shape = new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(-100, 250, 1200, 100))));
        is(wall().sheet("M", -100, -50, 1200, 1150).add("F", flashing, List.of(shape), List.of()).tape("T", -100, 320, 1200, 80), 0.25, 0.75, 0, 0, 0);
    }

    /**
     * On the flashing come 0.06 of its own, 0.6 wide and 0.1 high, and half of the 0.24 from above, 0.6 by 0.4: the other half runs in behind its loose top edge. A
     * third goes over its front, where the drip throws it clear, a third off each end; with one end dammed halves, with both all.
     */
    @Test void aHeadFlashingGathersAndLeadsToItsOpenEnds() {
        is(flashing(EndDams.NONE), 0.94, 0.06, 0, 0, 0);
        assertEquals(0.06, runoff(flashing(EndDams.NONE).stack()).met().off(1, Point.ofMm(800, 540)), EXACT);
        assertEquals(0.09, runoff(flashing(EndDams.LEFT).stack()).met().off(1, Point.ofMm(800, 540)), EXACT);
        is(flashing(EndDams.LEFT), 0.91, 0.09, 0, 0, 0);
        is(flashing(EndDams.BOTH), 0.82, 0.18, 0, 0, 0);
    }

    private static Drawn flashing(EndDams dams) {
        Profile p = new Profile(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(60), Optional.of(dams), OptionalDouble.empty(),
                OptionalDouble.of(10), OptionalDouble.empty(), OptionalDouble.empty());
        return wall().sheet("B", -100, -50, 1200, 1150).add("H", Material.of("flashing", MaterialKind.FLASHING).withProfile(p),
                List.of(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(200, 500, 600, 100))))), List.of());
    }

    /** What falls on 600 x 300 above the pocket is 0.18: half runs over the front, half in behind, where foot and sides are sealed. */
    @Test void aPocketTrapsHalfOfWhatComes() {
        Bond pocket = Bond.sealedAt(EnumSet.of(Edge.BOTTOM, Edge.LEFT, Edge.RIGHT));
        is(wall().sheet("M", -100, -50, 1200, 1150).sheet("P", 200, 300, 600, 400).bond(pocket), 0.91, 0, 0, 0, 0.09);
    }

    /** A window 400 by 400 without reveal: 0.4 x 0.3 from above leave into it; the 0.16 on its glass ran nowhere. */
    @Test void withoutRevealAnOpeningTakesIt() {
        Drawn flush = wall().window("W", 300, 300, 400, 400, 0).cutSheet("M", -100, -50, 1200, 1150, "W", CutPattern.FLUSH, 0);
        is(flush, 0.72, 0, 0.12, 0, 0);
        assertEquals(0.16, runoff(flush.stack()).balance().onOpenings(), EXACT);
    }

    /** The same with a reveal that nothing covers: the wall above drops onto the bare head; the glass drains to the bare sill, and that is told by itself. */
    @Test void withABareRevealTheFrameTakesIt() {
        Drawn bare = wall().window("W", 300, 300, 400, 400, 90).cutSheet("M", -100, -50, 1200, 1150, "W", CutPattern.FLUSH, 0);
        is(bare, 0.72, 0, 0, 0.12, 0);
        assertEquals(0.16, runoff(bare.stack()).balance().onOpenings(), EXACT);
    }

    /** The right half of the base lies 500 higher: no opening is there, and both halves leave at the base. */
    @Test void aStepInTheBaseIsNoOpening() {
        Elevation e = Drawn.wall().sheet("M", -100, -50, 1200, 1150).elevation();
        Region step = Drawn.region(0, 0, 500, 0, 500, 500, 1000, 500, 1000, 1000, 0, 1000);
        Outline outline = new Outline(step, step.edges().stream().map(s -> new OutlineEdge(s, EdgeRole.FREE, Optional.empty())).toList(), OptionalLong.empty());
        Elevation stepped = new Elevation("stepped", Optional.empty(), e.exposure(), outline, List.of(), List.of(), e.materials(), e.pieces(), List.of());
        Balance b = runoff(Stack.of(stepped, Stage.WRAP)).balance();
        assertEquals(0.75, b.foot(), EXACT);
        assertEquals(0, b.openings(), EXACT);
    }

    /** What nothing can bring on a wall is left out, and a free side is no corner. */
    @Test void sharesAreWordedAsTheWallIs() {
        Drawn plain = wall().sheet("M", -100, -50, 1200, 1150);
        assertEquals(List.of("base", "drips", "sides", "frame", "trapped"), runoff(plain.stack()).balance().shares(plain.elevation(), List.of()).stream().map(Balance.Share::name).toList());
        assertEquals("leaves past a side of the wall", sides(plain));
        assertEquals("leaves round a corner of the building", sides(Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.EXTERNAL_CORNER).sheet("M", -100, -50, 1200, 1150)));
    }

    private static String sides(Drawn wall) {
        return runoff(wall.stack()).balance().shares(wall.elevation(), List.of()).stream().filter(s -> s.name().equals("sides")).findFirst().orElseThrow().says();
    }

    private static List<Point> level(double y, double from, double to) {
        return List.of(Point.ofMm(from, y), Point.ofMm(to, y));
    }

    /** Half a metre of wall above the lap; half of it over half the lap. */
    @Test void aJointMeetsWhatFallsAboveIt() {
        Stack stack = wall().sheet("L", -100, -50, 1200, 650).sheet("U", -100, 500, 1200, 600).stack();
        Met met = runoff(stack).met();
        assertEquals(0.5, met.at(List.of(1), level(500, 0, 1000)), EXACT);
        assertEquals(0.25, met.at(List.of(1), level(500, 0, 500)), EXACT);
    }

    /** A strip 200 wide in front of the wall, open at its upper edge: the half that gets behind it comes out again at its foot. */
    @Test void whatRunsBehindComesOutAgain() {
        Stack stack = wall().sheet("M", -100, -50, 1200, 1150).sheet("P", 400, 300, 200, 200).stack();
        Runoff r = runoff(stack);
        assertEquals(1, r.balance().foot(), EXACT);
        // 200 x 500 above, half of it in front, and 200 x 200 on the strip itself
        assertEquals(0.5 * 0.1 + 0.04, r.met().at(List.of(1), level(300, 400, 600)), EXACT);
    }

    @Test void nothingIsLostOnRandomWalls() {
        for (long seed = 0; seed < 300; seed++) {
            isConserved("upright seed " + seed, RandomWall.upright(seed).stack(), EXACT);
            isConserved("sloped seed " + seed, RandomWall.of(seed).stack(), EXACT);
        }
    }

    @Test void nothingIsLostOnWallsThatShip() throws IOException {
        try (java.util.stream.Stream<Path> files = Files.list(Path.of("elevations"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                Elevation e = ElevationFile.read(file).elevation().orElseThrow();
                for (Stage stage : Stage.values()) {
                    isConserved(file + " " + stage, Stack.of(e, stage), EXACT);
                }
            }
        }
    }

    /** What falls is the wall's area, less its pipes; slopes are rounded to the grid. */
    private static void isConserved(String wall, Stack stack, double tolerance) {
        Balance b = runoff(stack).balance();
        Elevation e = stack.elevation();
        double area = (e.outline().region().areaMm2() - e.penetrations().stream().mapToDouble(p -> p.region().areaMm2()).sum()) / 1e6;
        assertEquals(area, b.fallen(), 1e-4 * area, wall + ": fallen");
        assertEquals(b.fallen(), b.accounted(), tolerance * b.fallen(), wall + ": accounted for");
    }
}
