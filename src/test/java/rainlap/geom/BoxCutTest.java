package rainlap.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The cuts made without an overlay, held against the overlay on seeded random boxes. */
class BoxCutTest {
    private final Random random = new Random(20);

    private Box box(int size) {
        long x = random.nextInt(size), y = random.nextInt(size);
        return new Box(x, y, x + 1 + random.nextInt(size), y + 1 + random.nextInt(size));
    }

    @Test
    void boxWithoutBox() {
        for (int k = 0; k < 5000; k++) {
            Box a = box(6), b = box(6);
            if (a.overlaps(b)) {
                List<Region> ours = BoxCut.minus(a, b);
                List<Region> jts = Overlay.difference(List.of(Region.of(a)), List.of(Region.of(b)));
                assertEquals(area(jts), area(ours), 1e-9, a + " minus " + b);
                assertEquals(jts.size(), ours.size(), a + " minus " + b);
                assertEquals(0, area(Overlay.difference(ours, jts)), 1e-9, a + " minus " + b);
            }
        }
    }

    @Test
    void boxWithNotches() {
        int notched = 0;
        for (int k = 0; k < 5000; k++) {
            Box a = new Box(0, 0, 20, 6);
            List<Box> apart = new ArrayList<>();
            for (int i = 1 + random.nextInt(4); i > 0; i--) {
                long x = random.nextInt(22) - 1, y = random.nextInt(8) - 2;
                Box b = new Box(x, y, x + 1 + random.nextInt(5), y + 1 + random.nextInt(7));
                if (b.overlaps(a) && apart.stream().noneMatch(b::overlaps)) {
                    apart.add(b);
                }
            }
            List<Region> ours = BoxCut.notched(a, apart).stream().toList();
            List<Region> jts = Overlay.difference(List.of(Region.of(a)), apart.stream().map(Region::of).toList());
            notched += ours.size();
            if (!ours.isEmpty()) {
                assertEquals(1, jts.size(), a + " minus " + apart);
                assertEquals(area(jts), area(ours), 1e-9, a + " minus " + apart);
                assertEquals(0, area(Overlay.difference(ours, jts)), 1e-9, a + " minus " + apart);
            }
        }
        assertTrue(notched > 1000, "too few of them are notches: " + notched);
    }

    @Test
    void trapezoidWithinBox() {
        for (int k = 0; k < 5000; k++) {
            long w = 2 + 2 * random.nextInt(20), d = 1 + random.nextInt((int) w / 2);
            Ring trapezoid = Ring.of(List.of(new Point(0, 0), new Point(w, 0), new Point(w - d, d), new Point(d, d)));
            Box b = box(30);
            List<Region> ours = BoxCut.within(trapezoid, Ring.of(b));
            List<Region> jts = Overlay.intersection(List.of(new Region(trapezoid, List.of())), List.of(Region.of(b)));
            assertEquals(area(jts), area(ours), 1e-9, trapezoid + " within " + b);
        }
    }

    @Test
    void slabsAgreeWithTheOverlay() {
        for (int k = 0; k < 3000; k++) {
            Box b = new Box(0, 0, 6000, 3000);
            List<Region> over = new ArrayList<>();
            for (int i = random.nextInt(5); i >= 0; i--) {
                long x = random.nextInt(70) * 100 - 500, y = random.nextInt(35) * 100 - 300;
                long w = 200 + random.nextInt(40) * 100, h = 200 + random.nextInt(20) * 100;
                over.add(random.nextBoolean() ? Region.of(new Box(x, y, x + w, y + h))
                        : Region.of(List.of(new Point(x, y), new Point(x + w, y), new Point(x + w - 100, y + h), new Point(x + 100, y + h))));
            }
            List<Region> ours = new Slabs(b, over).uncovered();
            List<Region> jts = Overlay.difference(List.of(Region.of(b)), over);
            assertEquals(area(jts), area(ours), 0.5, over.toString());
            double least = new Slabs(b, over).coveredFromBelow().least();
            double seen = k % 10 == 0 ? leastCover(b, over) : least;
            assertEquals(seen, least, 60, over.toString());
        }
    }

    @Test
    void overlapWithoutTheOverlay() {
        for (int k = 0; k < 5000; k++) {
            Box a = box(6), b = box(6), c = box(6);
            for (Region left : a.overlaps(b) ? BoxCut.minus(a, b) : List.of(Region.of(a))) {
                boolean jts = !Overlay.intersection(List.of(left), List.of(Region.of(c), Region.of(c))).isEmpty();
                assertEquals(jts, left.overlaps(Region.of(c)), left + " and " + c);
                assertEquals(jts, Region.of(c).overlaps(left), left + " and " + c);
            }
        }
    }

    /** By looking up from the bottom at many places. */
    private static double leastCover(Box b, List<Region> over) {
        double least = b.height();
        for (double x = 1.5; x < b.maxX(); x += 10) {
            double y = 0.5;
            while (y < b.maxY() && covered(over, x, y)) {
                y += 10;
            }
            least = Math.min(least, Math.min(y, b.maxY()));
        }
        return least;
    }

    private static boolean covered(List<Region> over, double x, double y) {
        return over.stream().anyMatch(r -> r.covers(x, y));
    }

    private static double area(List<Region> r) {
        return r.stream().mapToDouble(Region::areaMm2).sum();
    }
}
