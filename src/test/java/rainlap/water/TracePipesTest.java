package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.joint.Drawn;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Penetration;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** Water at pipes, and in pockets with the foot of a V. Rise 40, creep 100 mm. */
class TracePipesTest {
    private static final Drive DRIVE = new Drive(Grid.of(40), Grid.of(100), Grid.of(40), OptionalDouble.empty(), List.of());

    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE);
    }

    private static int at(Stack stack, Surface surface, double x, double y) {
        return new Waters(stack, DRIVE, Crew.ALONE).defences(surface, Point.ofMm(x, y));
    }

    private static Trace trace(Drawn wall) {
        return Trace.of(wall.stack(), DRIVE, Optional.empty(), Crew.ALONE);
    }

    private static Elevation piped(Drawn d) {
        Elevation e = d.elevation();
        return new Elevation(e.name(), e.practice(), e.exposure(), e.outline(), e.openings(),
                List.of(new Penetration("P", "duct", Drawn.region(450, 450, 550, 450, 550, 550, 450, 550))), e.materials(), e.pieces(), List.of());
    }

    private static int besidePipe(Drawn d, double y) {
        return at(Stack.of(piped(d), Stage.WRAP), Surface.WALL, 500, y);
    }

    @Test void aPipeLeaksAllRoundUnlessSomethingHoldsToIt() {
        Shape round = new Shape(Surface.WALL, List.of(Drawn.region(350, 350, 650, 350, 650, 650, 350, 650)));
        assertEquals(0, besidePipe(wall().sheet("B", -100, -100, 1200, 1200), 440));
        assertEquals(3, besidePipe(wall().sheet("B", -100, -100, 1200, 1200), 600));
        assertEquals(1, besidePipe(wall().sheet("B", -100, -100, 1200, 1200).piece("collar", MaterialKind.COLLAR, round), 440), "its lip grips the pipe");
        assertEquals(1, besidePipe(wall().sheet("B", -100, -100, 1200, 1200).piece("collar", MaterialKind.COLLAR, round).bond(Bond.FULL), 440));
        assertEquals(0, besidePipe(wall().sheet("B", -100, -100, 1200, 1200).piece("patch", MaterialKind.MEMBRANE, round), 440), "a loose patch holds nothing");
    }

    /** The least defences of the ways onto the frame along a pipe. */
    private static int alongPipe(Drawn d) {
        Stack stack = Stack.of(piped(d), Stage.WRAP);
        return Trace.of(stack, DRIVE, Optional.empty(), Crew.ALONE).arrivals().stream()
                .filter(a -> a.path().get(a.path().size() - 1).kind() == Step.Kind.ALONG_A_PIPE).mapToInt(Arrival::defences).min().orElse(3);
    }

    private static Drawn withCollar(Drawn d, Bond bond) {
        return d.piece("collar", MaterialKind.COLLAR, new Shape(Surface.WALL, List.of(Drawn.region(360, 360, 640, 360, 640, 640, 360, 640)))).bond(bond);
    }

    private static Drawn collared(Bond bond) {
        return withCollar(wall().sheet("B", -100, -100, 1200, 1200), bond);
    }

    @Test void whatIsBehindACollarGetsToTheCutUnderIt() {
        assertEquals(0, alongPipe(collared(Bond.LOOSE)), "runs in behind its top edge");
        assertEquals(0, alongPipe(collared(Bond.sealedAt(Edge.TOP))), "pushed in under its sides, 90 of 100 mm");
        assertEquals(1, alongPipe(collared(Bond.sealedAt(Edge.TOP, Edge.LEFT, Edge.RIGHT))), "lifted 40 mm at its foot, which is 90 below");
        assertEquals(1, alongPipe(collared(Bond.sealedAt(Edge.TOP, Edge.BOTTOM, Edge.LEFT, Edge.RIGHT))));
        assertEquals(1, alongPipe(collared(Bond.FULL)));
    }

    /** Strips adhered over and under the duct leave a collar between them no place but at the duct's sides. */
    private static Drawn between(Bond bond) {
        return wall().sheet("B", -100, -100, 1200, 1200).tape("over", 360, 550, 280, 100).tape("under", 360, 350, 280, 100)
                .piece("collar", MaterialKind.COLLAR, new Shape(Surface.WALL, List.of(Drawn.region(360, 450, 640, 450, 640, 550, 360, 550)))).bond(bond);
    }

    @Test void whatIsPushedAgainstThePlumbSideOfADuctGetsIntoTheCut() {
        assertEquals(0, alongPipe(between(Bond.sealedAt(Edge.TOP))));
        assertEquals(0, alongPipe(between(Bond.sealedAt(Edge.TOP, Edge.LEFT, Edge.RIGHT))), "lifted beside it");
        assertEquals(1, alongPipe(between(Bond.sealedAt(Edge.TOP, Edge.LEFT, Edge.RIGHT, Edge.BOTTOM))));
    }

    @Test void whatIsBehindAnOuterSheetGetsToTheCutOfTheInner() {
        Drawn sheets = wall().sheet("I", -100, -100, 1200, 1200).sheet("O", -100, -100, 1200, 900);
        assertEquals(0, alongPipe(withCollar(sheets, Bond.FULL)), "the collar holds to the outer sheet alone");
        Drawn under = withCollar(wall().sheet("I", -100, -100, 1200, 1200), Bond.FULL).sheet("O", -100, -100, 1200, 900);
        assertEquals(1, alongPipe(under), "the collar holds to the inner");
    }

    /** A pocket whose sealed foot is a V: what gets in at its top finds no way on past the lowest place, and does not run to and fro. */
    private static Drawn footOfAV(Bond bond) {
        return wall().sheet("B", -100, -100, 1200, 1200).ring("P", 200, 500, 500, 300, 800, 500, 800, 600, 200, 600).bond(bond);
    }

    @Test void waterStandsInTheFootOfAV() {
        Trace t = trace(footOfAV(Bond.sealedAt(Edge.BOTTOM, Edge.LEFT, Edge.RIGHT)));
        assertEquals(2, t.trapped().size(), "on both sides of it");
        assertEquals(Box.ofMm(200, 300, 600, 200), Box.of(t.trapped().stream().flatMap(x -> x.where().stream()).toList()));
        assertEquals(List.of(), trace(footOfAV(Bond.sealedAt(Edge.LEFT, Edge.RIGHT))).trapped(), "its foot is open");
    }
}
