package rainlap.rule.lap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.Drawn;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.rule.Judged;
import rainlap.rule.RuleInfo;
import rainlap.wall.EdgeRole;
import rainlap.wall.Stage;

/** Stretches under 1 mm are left out by the rules of laps and tape, those of 1 mm are told; and a hole is a hole, however small. */
class ShortStretchTest {
    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 2000, 2000, EdgeRole.FREE);
    }

    private static List<Finding> found(Drawn wall) {
        return Checker.check(wall.elevation(), Stage.WRAP, Practices.common()).weakPoints().stream().map(WeakPoint::finding).toList();
    }

    private static double lengthMm(Finding f) {
        double sum = 0;
        for (int i = 1; i < f.where().line().size(); i++) {
            sum += new Segment(f.where().line().get(i - 1), f.where().line().get(i)).lengthMm();
        }
        return sum;
    }

    /** B lies beneath A but for a notch, along which their edges meet. */
    private static Drawn notched(double length) {
        return wall().ring("B", 850, -50, 2050, -50, 2050, 2050, 850, 2050, 850, 1000 + length, 1000, 1000 + length, 1000, 1000, 850, 1000)
                .sheet("A", -50, -50, 1050, 2100);
    }

    @Test void aButtOfOneMillimetreIsToldAndAShorterOneIsNot() {
        assertEquals("A B | x 1000, +1000 to +1001 | edges meet / lap of 150", Judged.found(new ButtJoint(), notched(1)));
        assertEquals("", Judged.found(new ButtJoint(), notched(0.99)));
        assertEquals("", Judged.found(new ButtJoint(), notched(0.01)));
    }

    /** The same notches are cracks that rain gets in by: that the trace tells, and it leaves none out. */
    @Test void whatIsTooShortForARuleOfLapsIsStillALeak() {
        for (double length : new double[] {1, 0.99, 0.01}) {
            List<Finding> all = found(notched(length));
            assertTrue(all.stream().anyMatch(f -> f.defences() == 0 && f.where().box().grow(200).contains(Point.ofMm(1000, 1000))), () -> length + " long: " + all);
        }
    }

    /** Sheets mitred at any slope, lapped by more than is asked: what rounding leaves at the ends of the mitre is not told. */
    @Test void mitresLeaveNoCrumbs() {
        List<String> crumbs = new ArrayList<>();
        for (long seed = 0; seed < 120; seed++) {
            Random r = new Random(seed);
            for (Finding f : found(mitred(r))) {
                if (isOfDimensions(f) && f.where().isLine() && lengthMm(f) < 0.995) {
                    crumbs.add("seed " + seed + ": " + f.rule() + " " + f.pieces() + " " + f.where().wkt());
                }
            }
        }
        assertEquals(List.of(), crumbs);
    }

    private static boolean isOfDimensions(Finding f) {
        return Rules.find(f.rule()).orElseThrow().info().theme() != RuleInfo.Theme.WATER;
    }

    private static double off(Random r, double from, double to) {
        return Math.round((from + r.nextDouble() * (to - from)) * 100) / 100.0;
    }

    /** Three sheets that meet in a point inside the wall, two of them along a sloped line to the top, with or without a lap. */
    private static Drawn mitred(Random r) {
        double x = off(r, 700, 1300), y = off(r, 700, 1100), top = off(r, 500, 1500), left = off(r, 500, 1300), right = off(r, 500, 1300);
        double lap = r.nextBoolean() ? 0 : off(r, 100, 200);
        return wall().ring("A", -50, -50, 2050, -50, 2050, right, x, y, -50, left)
                .ring("C", -50, left - lap, x, y - lap, x, y, top, 2050, -50, 2050)
                .ring("D", x, y - lap, 2050, right - lap, 2050, 2050, top, 2050, x, y);
    }
}
