package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rainlap.joint.Drawn;
import rainlap.practice.Practices;
import rainlap.wall.EdgeRole;
import rainlap.wall.Stage;

class BareGapsTest {
    /** A gap of 50 between +1000 and +1050, and a tape 100 high: it covers the edge that is told, or the other, but the frame between them only where it covers both. */
    @ParameterizedTest
    @CsvSource({"940, 0", "955, 1", "990, 1", "1000, 1", "1010, 0", "1030, 0", "1048, 0"})
    void aGapThatTapeHalfCoversHasNoDefences(double tape, int defences) {
        Drawn d = Drawn.wall().outline(0, 0, 2000, 2000, EdgeRole.FREE).sheet("M1", 0, 0, 2000, 1000).sheet("M2", 0, 1050, 2000, 950).tape("T1", 0, tape, 2000, 100);
        CheckResult r = Checker.check(d.elevation(), Stage.WRAP, Practices.common());
        assertEquals(defences, r.weakPoints().stream().filter(p -> p.finding().rule().equals("open-gap")).findFirst().orElseThrow().finding().defences());
    }
}
