package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A tape 50 wide at 1:10 over the foot of a sheet that slopes down over another one. */
class OverTest {
    private static final SectionGrid GRID = new SectionGrid(true, 10, 0, 0, 0);
    private static final List<double[]> TAPE = List.of(at(0, 5), at(5000, 5));
    private static final Over.Beneath LOWER = new Over.Beneath(List.of(at(0, 10.7), at(375, 10.7), at(1100, 9.3), at(5000, 5.8)), false);
    private static final Over.Beneath UPPER = new Over.Beneath(List.of(at(2500, 9.64), at(5000, 7.4)), false);

    @Test
    void aShortNotchIsBridged() {
        List<double[]> line = Over.all(TAPE, List.of(LOWER, UPPER), 1.6, GRID);
        int turns = 0;
        for (int i = 1; i + 1 < line.size(); i++) {
            boolean before = line.get(i)[1] > line.get(i - 1)[1] + 0.01, after = line.get(i + 1)[1] > line.get(i)[1] + 0.01;
            turns += before != after ? 1 : 0;
        }
        assertTrue(turns <= 1, () -> line.stream().map(java.util.Arrays::toString).toList().toString());
    }

    /** Where there is room a soft piece is pressed down beside an edge. */
    @Test
    void aLongOneIsNot() {
        Over.Beneath edge = new Over.Beneath(List.of(at(3000, 9), at(5000, 9)), false);
        List<double[]> line = Over.all(TAPE, List.of(edge), 1.6, GRID);
        assertEquals(List.of(5.0, 5.0, 10.6, 10.6), line.stream().map(p -> p[1]).toList());
    }

    private static double[] at(double place, double out) {
        return new double[] {place, out};
    }
}
