package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
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
import rainlap.stack.Stack;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Penetration;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** Closed lines, ledges, sealed edges and pipes on the grid simulation. Rise 40, creep 150 mm. */
class GridLedgesTest {
    private static final long RISE = 4000, CREEP = 15000;

    /** A sheet over the whole wall, to see water on it rather than on the frame. */
    private static Drawn base() {
        return Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE).sheet("B", -100, -100, 1200, 1200);
    }

    /** A sheet over everything with one hole that lets rain in. */
    private static Drawn coveredBut(Drawn d, double x, double y, double w, double h) {
        Region holed = new Region(Ring.of(Box.ofMm(-100, -100, 1200, 1200)), List.of(Ring.of(Box.ofMm(x, y, w, h))));
        return d.add("C", Material.of("cover", MaterialKind.MEMBRANE), List.of(new Shape(Surface.WALL, List.of(holed))), List.of());
    }

    private static int onBase(Stack s, double x, double y) {
        return GridSimulation.of(s, RISE, CREEP, 25).costs(Surface.WALL, Point.ofMm(x, y))[1];
    }

    private static Drawn catchingTape() {
        return base().sheet("U", 200, 500, 600, 300).tape("T", 200, 480, 600, 40);
    }

    /** Water behind U on B meets the tape at U's foot, runs both ways and comes out at both ends, one unit wide. */
    @Test void runsAlongAClosedLineToBothEnds() {
        Stack s = coveredBut(catchingTape(), 400, 790, 200, 20).stack();
        assertEquals(0, onBase(s, 199.99, 400));
        assertEquals(0, onBase(s, 800, 400));
        // beside the stream only by an overrun of the cover, which wets the lap on its way
        assertEquals(1, onBase(s, 199.9, 400));
        assertEquals(1, onBase(s, 800.1, 400));
        assertEquals(1, onBase(s, 500, 490));
    }

    /** Of a sloped line only the lower end lets water out. */
    @Test void runsDownASlopedLine() {
        Drawn sloped = base().ring("U", 200, 500, 800, 530, 800, 800, 200, 800)
                .add("T", Material.of("tape", MaterialKind.TAPE), List.of(new Shape(Surface.WALL,
                        List.of(Drawn.region(200, 480, 800, 510, 800, 560, 200, 530)))), List.of());
        Stack s = coveredBut(sloped, 400, 790, 200, 20).stack();
        assertEquals(0, onBase(s, 199.99, 400));
        // sideways under the cover on U, overrun to U's end
        assertEquals(1, onBase(s, 800, 400));
    }

    private static Stack flashing(EndDams dams) {
        Profile p = new Profile(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(60), Optional.of(dams),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        return coveredBut(base().add("H", Material.of("flashing", MaterialKind.FLASHING).withProfile(p),
                List.of(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(200, 500, 600, 100))))), List.of()), 400, 570, 200, 20).stack();
    }

    @Test void flashingLeadsToItsEndsUnlessDammed() {
        assertEquals(0, onBase(flashing(EndDams.NONE), 199.99, 400));
        assertEquals(0, onBase(flashing(EndDams.LEFT), 800, 400));
        // above the ledge only by an overrun of the cover on the flashing
        assertEquals(1, onBase(flashing(EndDams.NONE), 199.99, 541));
        assertEquals(0, onBase(flashing(EndDams.NONE), 199.99, 539));
        assertEquals(1, onBase(flashing(EndDams.LEFT), 199.99, 400));
        assertEquals(1, onBase(flashing(EndDams.BOTH), 800, 400));
    }

    @Test void battenLeadsToItsEnds() {
        Drawn d = coveredBut(base().piece("batten", MaterialKind.BATTEN,
                new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(200, 500, 600, 40))))), 450, 700, 100, 20);
        Stack s = Stack.of(d.elevation(), Stage.FINISHED);
        assertEquals(0, onBase(s, 199.99, 400));
        assertEquals(1, onBase(s, 199.9, 400));
        // it is running water all along the batten, and gets behind its loose top edge there
        assertEquals(0, onBase(s, 250, 400));
        assertEquals(1, onBase(s, 250, 600));
        assertEquals(1, onBase(Stack.of(d.elevation(), Stage.WRAP), 199.99, 400));
    }

    /** A pocket: open above, its other edges sealed. Leaving it costs one seal. */
    @Test void sealedEdgesHoldWaterInside() {
        Drawn pocket = base().sheet("U", 200, 400, 600, 400).bond(Bond.sealedAt(Edge.BOTTOM, Edge.LEFT, Edge.RIGHT));
        assertFalse(GridSimulation.of(pocket.stack(), RISE, CREEP, 25).trapped().isEmpty());
        Drawn open = base().sheet("U", 200, 400, 600, 400).bond(Bond.sealedAt(Edge.BOTTOM, Edge.LEFT));
        assertEquals(List.of(), GridSimulation.of(open.stack(), RISE, CREEP, 25).trapped());
    }

    @Test void aSheetThatEndsWithTheStripOverItIsNoBetterHeld() {
        Drawn bare = Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE);
        Drawn flush = bare.sheet("L", -100, -100, 1200, 600).tape("T", -100, 440, 1200, 60);
        assertEquals(0, GridSimulation.of(flush.stack(), RISE, CREEP, 25).defences(Surface.WALL, Point.ofMm(500, 450)));
        Drawn beyond = Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE).sheet("L", -100, -100, 1200, 600)
                .tape("T", -100, 440, 1200, 60.01);
        assertEquals(1, GridSimulation.of(beyond.stack(), RISE, CREEP, 25).defences(Surface.WALL, Point.ofMm(500, 450)));
    }

    private static int besidePipe(Drawn d, double y) {
        Elevation e = d.elevation();
        Elevation piped = new Elevation(e.name(), e.practice(), e.exposure(), e.outline(), e.openings(),
                List.of(new Penetration("P", "duct", Drawn.region(450, 450, 550, 450, 550, 550, 450, 550))), e.materials(), e.pieces(), List.of());
        return GridSimulation.of(Stack.of(piped, Stage.WRAP), RISE, CREEP, 25).defences(Surface.WALL, Point.ofMm(500, y));
    }

    @Test void pipesLeakAllRoundUnlessSealed() {
        assertEquals(0, besidePipe(base(), 440));
        assertEquals(0, besidePipe(base(), 10));
        assertEquals(3, besidePipe(base(), 600));
        assertEquals(1, besidePipe(base().piece("collar", MaterialKind.COLLAR, new Shape(Surface.WALL,
                List.of(Drawn.region(350, 350, 650, 350, 650, 650, 350, 650)))).bond(Bond.FULL), 440));
    }
}
