package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Point;
import rainlap.joint.Drawn;
import rainlap.material.MaterialKind;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Reveals and their edges on the grid simulation: an opening of 400 by 400, its reveal 200 deep. Rise 40, creep 150 mm. */
class GridOpeningsTest {
    private static final long RISE = 4000, CREEP = 15000;

    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 1000, 1000, EdgeRole.FREE).window("W", 300, 300, 400, 400, 200);
    }

    private static Drawn flush() {
        return wall().cutSheet("M", -100, -100, 1200, 1200, "W", CutPattern.FLUSH, 0);
    }

    private static Shape on(Side side, double u0, double v0, double u1, double v1) {
        return Drawn.on("W", side, u0, v0, u1, v0, u1, v1, u0, v1);
    }

    private static int at(Drawn d, Side side, double u, double v) {
        return GridSimulation.of(d.stack(), RISE, CREEP, 25)
                .defences(side == Side.WALL ? Surface.WALL : new Surface("W", side), Point.ofMm(u, v));
    }

    /** The bare triangle lets water under the flap: the sill is wet as drawn, and the wall below it. */
    @Test void bareCornerLeaks() {
        Drawn d = wall().cutSheet("M", -100, -100, 1200, 1200, "W", CutPattern.DIAGONAL, 200);
        assertEquals(0, at(d, Side.SILL, 5, 100));
        assertEquals(0, at(d, Side.SILL, 200, 20));
        assertEquals(0, at(d, Side.LEFT, 5, 100));
        assertEquals(0, at(d, Side.WALL, 500, 100));
        // pushed from the jamb's triangle round the edge
        assertEquals(0, at(d, Side.WALL, 151, 100));
        assertEquals(3, at(d, Side.WALL, 149, 100));
    }

    /** Corner pieces stuck over both triangles, down the wall and up the jambs: now something must peel. */
    @Test void cornerPieceCoversIt() {
        Drawn d = cornered();
        assertEquals(1, at(d, Side.SILL, 5, 100));
        assertEquals(1, at(d, Side.SILL, 200, 20));
        assertEquals(1, at(d, Side.WALL, 500, 100));
    }

    static Drawn cornered() {
        return wall().cutSheet("M", -100, -100, 1200, 1200, "W", CutPattern.DIAGONAL, 150)
                .piece("L", MaterialKind.CORNER_PIECE, on(Side.SILL, 0, 0, 200, 200), on(Side.LEFT, 0, 0, 250, 200),
                        wallShape(200, 200, 300, 550), wallShape(300, 200, 500, 300))
                .piece("R", MaterialKind.CORNER_PIECE, on(Side.SILL, 200, 0, 400, 200), on(Side.RIGHT, 0, 0, 250, 200),
                        wallShape(700, 200, 800, 550), wallShape(500, 200, 700, 300));
    }

    private static Shape wallShape(double x0, double y0, double x1, double y1) {
        return new Shape(Surface.WALL, List.of(Drawn.region(x0, y0, x1, y0, x1, y1, x0, y1)));
    }

    @Test void waterFallsOverTheHeadAndDripsOff() {
        Drawn d = wall().piece("A", MaterialKind.MEMBRANE, on(Side.HEAD, 0, 0, 400, 200));
        assertEquals(0, at(d, Side.HEAD, 200, 149.9));
        assertEquals(0, at(d, Side.HEAD, 200, 199.9));
        assertEquals(1, at(flush().piece("A", MaterialKind.TAPE, on(Side.HEAD, 0, 0, 400, 200), wallShape(200, 700, 800, 760)), Side.HEAD, 200, 150.1));
    }

    @Test void bareRevealsAreWet() {
        for (Side side : List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD)) {
            assertEquals(0, at(flush(), side, 200, 190));
        }
        assertEquals(0, at(flush(), Side.WALL, 500, 100));
    }

    /** A jamb sheet that only meets the wall's sheet at the edge is driven round by the creep. */
    @Test void waterIsPushedRoundTheEdgeOfAJamb() {
        Drawn d = flush().piece("S", MaterialKind.MEMBRANE, on(Side.SILL, 0, 0, 400, 200))
                .piece("J", MaterialKind.MEMBRANE, on(Side.LEFT, 0, 0, 400, 200));
        assertEquals(0, at(d, Side.LEFT, 200, 149.9));
        assertEquals(3, at(d, Side.LEFT, 200, 150.1));
        // and from the jamb under the wall's sheet
        assertEquals(0, at(d, Side.WALL, 150.1, 100));
        assertEquals(3, at(d, Side.WALL, 149.9, 100));
    }

    @Test void waterOnASillIsLiftedUnderTheJamb() {
        Drawn d = flush().piece("S", MaterialKind.MEMBRANE, on(Side.SILL, 0, 0, 400, 200))
                .piece("J", MaterialKind.MEMBRANE, on(Side.LEFT, 0, 0, 400, 200), wallShape(100, 300, 300, 700));
        assertEquals(0, at(d, Side.LEFT, 39.9, 190));
        assertEquals(3, at(d, Side.LEFT, 40.1, 190));
    }

    /** Below a sill's front edge water is lifted under what begins there. */
    @Test void waterIsLiftedOverTheFrontEdgeOfASill() {
        Drawn d = flush().piece("S", MaterialKind.MEMBRANE, on(Side.SILL, 0, 0, 400, 200), wallShape(300, 270, 700, 300));
        assertEquals(0, at(d, Side.SILL, 200, 9.9));
        assertEquals(0, at(d, Side.WALL, 500, 290));
    }

    /** A stiff head flashing runs on in front of the opening: what runs on it leaves. But wind lifts water from the head in behind it. */
    @Test void waterOnAFlashingInFrontGoesPast() {
        Drawn turnedUp = wall().piece("A", MaterialKind.MEMBRANE, on(Side.HEAD, 0, 0, 400, 200), wallShape(300, 700, 700, 760));
        assertEquals(1, at(inFront(turnedUp), Side.HEAD, 200, 40));
        Drawn level = wall().piece("A", MaterialKind.MEMBRANE, on(Side.HEAD, 0, 0, 400, 200));
        assertEquals(0, at(inFront(level), Side.HEAD, 200, 40));
    }

    private static Drawn inFront(Drawn d) {
        return d.piece("H", MaterialKind.FLASHING, wallShape(-100, 690, 1100, 770)).cutSheet("M", -100, 720, 1200, 400, "W", CutPattern.FLUSH, 0);
    }
}
