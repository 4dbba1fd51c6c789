package rainlap.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BoxCoverTest {
    private static final Box BOX = Box.ofMm(0, 0, 100, 20);

    @Test
    void twoHalvesThatTouchCover() {
        assertTrue(BoxCover.isSure(BOX, List.of(box(0, 0, 50, 20), box(50, -10, 60, 40))));
    }

    @Test
    void aGapOfOneGridUnitDoesNot() {
        assertFalse(BoxCover.isSure(BOX, List.of(box(0, 0, 50, 20), box(50.01, -10, 60, 40))));
    }

    @Test
    void nothingCoversNothing() {
        assertFalse(BoxCover.isSure(BOX, List.of()));
    }

    @Test
    void aHoleShows() {
        Region holed = new Region(Ring.of(Box.ofMm(-10, -10, 200, 50)), List.of(Ring.of(Box.ofMm(40, 5, 5, 5))));
        assertFalse(BoxCover.isSure(BOX, List.of(holed)));
        assertTrue(BoxCover.isSure(BOX, List.of(holed, box(40, 5, 5, 5))));
    }

    @Test
    void aSlopedEdgeOutsideCountsAndInsideDoesNot() {
        assertTrue(BoxCover.isSure(BOX, List.of(Region.of(List.of(Point.ofMm(-10, -10), Point.ofMm(120, -10), Point.ofMm(180, 40), Point.ofMm(-10, 40))))));
        assertFalse(BoxCover.isSure(BOX, List.of(Region.of(List.of(Point.ofMm(-10, -10), Point.ofMm(90, -10), Point.ofMm(90, 90))))));
    }

    @Test
    void agreesWithTheOverlay() {
        Random random = new Random(7);
        int covered = 0;
        for (int i = 0; i < 500; i++) {
            List<Region> by = new ArrayList<>();
            for (int k = 0; k < 1 + random.nextInt(5); k++) {
                by.add(box(random.nextInt(8) * 10 - 20, random.nextInt(4) * 5 - 10, 40 + random.nextInt(10) * 10, 15 + random.nextInt(5) * 5));
            }
            boolean expected = Overlay.difference(List.of(Region.of(BOX)), by).isEmpty();
            assertEquals(expected, BoxCover.isSure(BOX, by), "round " + i + ": " + by);
            covered += expected ? 1 : 0;
        }
        assertTrue(covered > 50 && covered < 450, covered + " of 500 covered: a test of one side only");
    }

    private static Region box(double x, double y, double width, double height) {
        return Region.of(Box.ofMm(x, y, width, height));
    }
}
