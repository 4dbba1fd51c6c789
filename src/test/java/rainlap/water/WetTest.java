package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.water.How.Move;

/** Where water that fell crossed the line above it. */
class WetTest {
    private static final Ground WALL = Ground.ofWall(new Box(0, 0, 100, 200), null, false);
    private static final Cell ABOVE = cell(0, 50, 100, 200), BELOW = cell(0, 100, 0, 100);
    private static final Wet SOURCE = new Wet(ABOVE, true, 0, 0, 50, 200, 200, null, How.RAIN, null);

    private static Cell cell(long from, long to, long low, long high) {
        return new Cell(WALL, from, to, Line.level(low, from, to), Line.level(high, from, to), -1, 0);
    }

    private static Wet fallen(long from, long to) {
        return new Wet(BELOW, true, 0, from, to, 100, 100, SOURCE, new How(Move.FALL, -1), null);
    }

    @Test void isWhereItsSourceLies() {
        assertEquals(Line.level(100, 0, 50), fallen(0, 50).crossed());
        assertEquals(Line.level(100, 10, 30), fallen(10, 30).crossed());
    }

    /** Stretches that touch are one and tell the leftmost's way; of that only a part beyond its source may be new. */
    @Test void isItsOwnPlaceBeyondItsSource() {
        assertEquals(Line.level(100, 0, 50), fallen(0, 100).crossed());
        assertEquals(Line.level(100, 60, 100), fallen(60, 100).crossed());
        assertEquals(Line.level(100, 50, 100), fallen(50, 100).crossed());
    }
}
