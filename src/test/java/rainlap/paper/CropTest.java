package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CropTest {
    private static final PaperBox BOX = new PaperBox(0, 0, 10, 10);
    private static final Edge LINE = Edge.of(Pen.THIN);

    @Test
    void aLineIsCutWhereItLeavesAndWhereItComesBack() {
        Polyline there = Polyline.of(LINE, new PaperPoint(-5, 2), new PaperPoint(15, 2), new PaperPoint(15, 8), new PaperPoint(5, 8));
        List<Mark> left = Crop.to(BOX, List.of(there));
        assertEquals(List.of(Polyline.line(0, 2, 10, 2, LINE), Polyline.line(10, 8, 5, 8, LINE)), left);
    }

    @Test
    void anAreaKeepsItsToneAndOnlyItsOwnEdges() {
        Area a = Area.of(PaperRegion.of(new PaperBox(-5, 4, 5, 6)), Tone.WHITE, LINE);
        List<Mark> left = Crop.to(BOX, List.of(a));
        assertEquals(new PaperBox(0, 4, 5, 6), left.get(0).box());
        double length = left.stream().filter(m -> m instanceof Polyline).mapToDouble(m -> ((Polyline) m).length()).sum();
        assertEquals(5 + 2 + 5, length, 1e-9, "the edge of the box is no edge of the area");
    }

    @Test
    void nothingIsLeftOfWhatLiesOutside() {
        List<Mark> out = List.of(Polyline.line(11, 0, 20, 20, LINE), Area.filled(PaperRegion.of(new PaperBox(-9, -9, -1, -1)), Tone.WHITE), Disc.ring(new PaperPoint(10, 5), 1, LINE),
                Group.of(List.of(new Strokes(List.of(PaperSegment.of(20, 1, 30, 1)), LINE))));
        assertEquals(List.of(), Crop.to(BOX, out));
    }

    @Test
    void whatOnlyTouchesACornerIsNoArea() {
        Area touching = Area.filled(PaperRegion.of(new PaperPoint(10, 10), new PaperPoint(14, 9), new PaperPoint(14, 14)), Tone.WHITE);
        assertEquals(List.of(), Crop.to(BOX, List.of(touching)));
    }

    /** Held against points: a point of the box is in what is left of a region just if it is in the region. */
    @Test
    void anAreaIsTheSameWithinTheBox() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<PaperPoint> ring = random.doubles(7, -15, 25).mapToObj(x -> new PaperPoint(x, -15 + 40 * random.nextDouble())).toList();
            PaperRegion whole = PaperRegion.of(ring);
            List<Mark> left = Crop.to(BOX, List.of(Area.filled(whole, Tone.WHITE)));
            for (int i = 0; i < 100; i++) {
                PaperPoint p = new PaperPoint(10 * random.nextDouble(), 10 * random.nextDouble());
                boolean in = left.stream().anyMatch(m -> ((Area) m).region().holds(p));
                assertEquals(whole.holds(p), in, "seed " + seed + " " + p);
            }
            assertTrue(left.stream().allMatch(m -> BOX.grown(1e-9).holds(m.box())), "seed " + seed);
        }
    }
}
