package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PaperGeometryTest {

    @Test
    void boxesThatTouchDoNotMeet() {
        PaperBox box = new PaperBox(0, 0, 10, 10);
        assertFalse(box.meets(new PaperBox(10, 0, 20, 10)));
        assertTrue(box.meets(new PaperBox(9.999, 9.999, 20, 20)));
        assertThrows(IllegalArgumentException.class, () -> new PaperBox(1, 0, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new PaperBox(0, 0, Double.NaN, 1));
    }

    @Test
    void aSegmentMeetsABoxOnlyInsideIt() {
        PaperBox box = new PaperBox(0, 0, 10, 10);
        assertTrue(box.meets(PaperSegment.of(-5, 5, 15, 5)));
        assertTrue(box.meets(PaperSegment.of(2, 2, 3, 3)));
        assertFalse(box.meets(PaperSegment.of(0, -5, 0, 15)), "along its edge");
        assertFalse(box.meets(PaperSegment.of(-5, 5, 0, 5)), "up to its edge");
        assertFalse(box.meets(PaperSegment.of(-5, 4.9, 4.9, -5)), "past its corner");
    }

    @Test
    void segmentsMeetAsAwtSays() {
        long seed = 99;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            int[] c = random.ints(8, 0, 7).toArray();
            if (c[0] == c[2] && c[1] == c[3] || c[4] == c[6] && c[5] == c[7]) {
                continue; // AWT does not answer for segments without length
            }
            boolean meet = PaperSegment.of(c[0], c[1], c[2], c[3]).meets(PaperSegment.of(c[4], c[5], c[6], c[7]));
            assertEquals(Line2D.linesIntersect(c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7]), meet, "seed " + seed + " " + Arrays.toString(c));
        }
    }

    @Test
    void aRegionHoldsWhatAwtSaysByTheEvenOddRule() {
        PaperRegion region = new PaperRegion(List.of(new PaperBox(0, 0, 10, 10).corners(), new PaperBox(2, 2, 8, 8).corners(),
                List.of(new PaperPoint(4, 4), new PaperPoint(7, 5), new PaperPoint(4, 7))));
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (List<PaperPoint> ring : region.rings()) {
            path.moveTo(ring.get(0).x(), ring.get(0).y());
            ring.forEach(p -> path.lineTo(p.x(), p.y()));
            path.closePath();
        }
        Random random = new Random(8);
        for (int i = 0; i < 5000; i++) {
            double x = random.nextDouble() * 12 - 1;
            double y = random.nextDouble() * 12 - 1;
            assertEquals(path.contains(x, y), region.holds(new PaperPoint(x, y)), x + ", " + y);
        }
    }

    @Test
    void aStripAlongALineIsAsWideAsAsked() {
        PaperRegion strip = PaperRegion.along(List.of(new PaperPoint(0, 0), new PaperPoint(10, 0), new PaperPoint(10, 10)), 2);
        assertTrue(strip.holds(new PaperPoint(5, 0.99)) && strip.holds(new PaperPoint(5, -0.99)));
        assertFalse(strip.holds(new PaperPoint(5, 1.01)) || strip.holds(new PaperPoint(5, -1.01)));
        assertTrue(strip.holds(new PaperPoint(10.99, -0.99)), "the corner is mitred");
        assertEquals(new PaperBox(0, -1, 11, 10), strip.box());
    }

    @Test
    void aRingMayRepeatItsFirstPointAndNeedsThree() {
        PaperPoint a = new PaperPoint(0, 0);
        PaperPoint b = new PaperPoint(1, 0);
        PaperPoint c = new PaperPoint(0, 1);
        assertEquals(PaperRegion.of(a, b, c), PaperRegion.of(a, b, c, a));
        assertThrows(IllegalArgumentException.class, () -> PaperRegion.of(a, b, a));
        assertThrows(IllegalArgumentException.class, () -> new PaperPoint(Double.POSITIVE_INFINITY, 0));
    }

    @Test
    void pensAreThoseOfTheWidthSeries() {
        assertEquals("0.7 0.5 0.5[1.6, 0.8] 0.5[6.0, 0.8, 0.5, 0.8, 0.5, 0.8] 0.35 0.25 0.25[1.6, 0.8] 0.18 0.18[3.2, 0.6, 0.25, 0.6] 0.18[3.2, 0.6, 0.25, 0.6, 0.25, 0.6]",
                Arrays.stream(Pen.values()).map(p -> p.width() + (p.dashes().isEmpty() ? "" : p.dashes().toString()))
                        .collect(Collectors.joining(" ")));
    }

    @Test
    void contrastIsThatOfWcag() {
        assertEquals(21, Tone.WHITE.contrast(Tone.of("#000000")), 1e-9);
        assertEquals(4.48, Tone.WHITE.contrast(Tone.of("#777777")), 0.01);
        assertTrue(Tone.GREY.contrast(Tone.WHITE) > 7, "grey text stays readable");
        assertThrows(IllegalArgumentException.class, () -> Tone.of("#FFF"));
        assertThrows(IllegalArgumentException.class, () -> Tone.of("red\"/><x"));
    }

    @Test
    void numbersHaveThreeDecimalsAtMostAndNoTrailingZeros() {
        assertEquals("0 -0.5 12.34 7 0.001 0 -3.1 100000", List.of(0.0, -0.5, 12.34, 7.0, 0.0006, -0.0004, -3.1000001, 1e5)
                .stream().map(PaperNumber::of).collect(Collectors.joining(" ")));
        assertThrows(IllegalArgumentException.class, () -> PaperNumber.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> PaperNumber.of(1e13));
        Random random = new Random(3);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.5) * 1000;
            assertEquals(Math.round(value * 1000) / 1000.0, Double.parseDouble(PaperNumber.of(value)), 1e-12);
        }
    }
}
