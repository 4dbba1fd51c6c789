package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HatchTest {

    @Test
    void fortyFiveRisesToTheRight() {
        for (PaperSegment s : Hatch.lines(PaperRegion.of(new PaperBox(0, 0, 10, 10)), 45, 2)) {
            double dx = s.to().x() - s.from().x();
            double dy = s.to().y() - s.from().y();
            assertEquals(-dx, dy, 1e-9, "y grows downwards, so a rising line falls in y");
        }
    }

    @Test
    void linesStandAtThePitchAndStopAtAHole() {
        PaperRegion ring = new PaperRegion(List.of(new PaperBox(0, 0.5, 10, 4.5).corners(), new PaperBox(4, 1.5, 6, 2.5).corners()));
        List<PaperSegment> lines = Hatch.lines(ring, 0, 1);
        assertEquals(5, lines.size(), "four lines, one cut in two");
        assertEquals(4 * 10 - 2, lines.stream().mapToDouble(PaperSegment::length).sum(), 1e-9);
        lines.forEach(l -> assertEquals(Math.rint(l.from().y()), l.from().y(), 1e-9));
    }

    @Test
    void neighboursRunThrough() {
        PaperBox whole = new PaperBox(3.3, 2.1, 20.7, 15.9);
        double split = 11.17;
        double parts = total(new PaperBox(3.3, 2.1, split, 15.9), 45, 1.15) + total(new PaperBox(split, 2.1, 20.7, 15.9), 45, 1.15);
        assertEquals(total(whole, 45, 1.15), parts, 0.2, "only specks may be lost at the seam");
    }

    @Test
    void lengthTimesPitchIsTheAreaAndEveryMiddleIsInside() {
        long seed = 20_2511L;
        Random random = new Random(seed);
        for (int n = 0; n < 300; n++) {
            List<PaperPoint> star = new ArrayList<>();
            int corners = 3 + random.nextInt(9);
            for (int i = 0; i < corners; i++) {
                double turn = 2 * Math.PI * i / corners;
                double r = 10 + 20 * random.nextDouble();
                star.add(new PaperPoint(60 + r * Math.cos(turn), 50 + r * Math.sin(turn)));
            }
            PaperRegion region = new PaperRegion(List.of(star, new PaperBox(58, 48, 61, 53).corners()));
            List<PaperSegment> lines = Hatch.lines(region, random.nextDouble() * 180, 0.05);
            double length = lines.stream().mapToDouble(PaperSegment::length).sum();
            assertEquals(area(star) - 15, length * 0.05, 3, "seed " + seed + " round " + n);
            for (PaperSegment line : lines) {
                assertTrue(region.holds(line.from().towards(line.to(), 0.5)), "seed " + seed + " round " + n);
            }
        }
    }

    private static double total(PaperBox box, double angle, double pitch) {
        return Hatch.lines(PaperRegion.of(box), angle, pitch).stream().mapToDouble(PaperSegment::length).sum();
    }

    private static double area(List<PaperPoint> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            PaperPoint a = ring.get(i);
            PaperPoint b = ring.get((i + 1) % ring.size());
            sum += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(sum / 2);
    }
}
