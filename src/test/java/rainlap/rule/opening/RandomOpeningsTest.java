package rainlap.rule.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.measure.LengthText;
import rainlap.rule.Finding;
import rainlap.rule.Written;
import rainlap.wall.Elevation;

/** Random returns and head flashings against what plain arithmetic says of them. Lengths in hundredths of a millimetre. */
class RandomOpeningsTest {
    private static final long SEED = 20_15_11;
    private static final long ASKED = 5_000;
    private static final Box W1 = Box.ofMm(500, 400, 800, 700);

    private final Random random = new Random(SEED);

    private long between(long lo, long hi) {
        return lo + (long) (random.nextDouble() * (hi - lo + 1));
    }

    @Test void aDiagonalCutLeavesWhatArithmeticSays() {
        for (int i = 0; i < 150; i++) {
            long reveal = between(2_000, 12_000), deep = between(1, reveal), asked = Math.min(reveal, ASKED);
            String what = "seed " + SEED + ", case " + i + ": reveal " + reveal + ", return " + deep;
            Elevation e = Window.wall(Window.window("'reveal': " + LengthText.mm(reveal)), Window.sheet("diagonal", LengthText.mm(deep)));
            List<Finding> shorts = Written.findings(new ShortReturn(), e);
            assertEquals(deep < asked ? 4 : 0, shorts.size(), what);
            shorts.forEach(f -> assertEquals(deep / 100.0, f.measured().orElseThrow(), what));
            checkCorners(e, deep, Math.max(asked, deep), what);
        }
    }

    /** The square less the flap: a triangle as wide as the return is deep, then a band. */
    private static void checkCorners(Elevation e, long deep, long square, String what) {
        List<Finding> corners = Written.findings(new BareCorner(), e);
        assertEquals(4, corners.size(), what);
        double bare = ((double) square * square - deep * deep / 2.0 - (double) deep * (square - deep)) / 10_000;
        for (Finding f : corners) {
            assertEquals(square / 100.0, f.required().orElseThrow(), what);
            assertEquals(2 * bare, f.where().area().stream().mapToDouble(Region::areaMm2).sum(), 1e-6, what);
        }
    }

    @Test void aHeadFlashingBehindTheSheetLapsWhatArithmeticSays() {
        for (int i = 0; i < 150; i++) {
            long left = between(-5_000, 25_000), right = between(-5_000, 25_000), high = between(2_000, 12_000);
            long foot = W1.maxY() + between(-Math.min(6_000, high - 1), 6_000);
            Box h = new Box(W1.minX() - left, foot, W1.maxX() + right, foot + high);
            String what = "seed " + SEED + ", case " + i + ": flashing " + h;
            Elevation e = Window.wall(Window.W1, Window.sheet("diagonal", "90"), Window.flashing("[" + plain(h.minX()) + ","
                    + plain(foot) + "," + plain(h.width()) + "," + plain(high) + "]", "'under': ['M1']"));
            checkUpstand(e, h, what);
            checkEnds(e, left, right, what);
            assertEquals(0, Written.findings(new FlashingInFront(), e).size(), what);
            assertEquals(0, Written.findings(new MissingHeadFlap(), e).size(), what);
        }
    }

    private static String plain(long units) {
        return LengthText.mm(units);
    }

    /** Over the opening the sheet ends at the head line, beside it the flashing ends first; its upstand is stated as 75. */
    private static void checkUpstand(Elevation e, Box h, String what) {
        long beside = Math.min(h.height(), 7_500), over = Math.min(beside, h.maxY() - W1.maxY());
        List<Finding> found = Written.findings(new ShortUpstand(), e);
        assertEquals(over < ASKED ? 1 : 0, found.size(), what);
        for (Finding f : found) {
            long from = beside < ASKED ? h.minX() : Math.max(h.minX(), W1.minX());
            long to = beside < ASKED ? h.maxX() : Math.min(h.maxX(), W1.maxX());
            assertEquals(new Box(from, h.maxY(), to, h.maxY()), f.where().box(), what);
            assertEquals(over / 100.0, f.measured().orElseThrow(), what);
        }
    }

    private static void checkEnds(Elevation e, long left, long right, String what) {
        List<Double> expected = java.util.stream.LongStream.of(left, right).filter(p -> p < 15_000).mapToObj(p -> p / 100.0).toList();
        assertEquals(expected, Written.findings(new ShortFlashing(), e).stream().map(f -> f.measured().orElseThrow()).toList(), what);
    }
}
