package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** Ways that are drawn end where they come onto the frame. */
class WaysInTest {
    private static CheckResult result(Path file, Stage stage) {
        Elevation e = ElevationFile.read(file).elevation().orElseThrow();
        return Checker.check(e, stage, e.practice().flatMap(Practices::find).orElseThrow());
    }

    private static boolean isOnFrame(Step s) {
        return s.layer().equals(Step.FRAME);
    }

    @ParameterizedTest
    @MethodSource("rainlap.drawing.ShippedSheetsTest#elevations")
    void endAtTheFrame(Path file) {
        CheckResult r = result(file, Stage.WRAP);
        for (WeakPoint p : r.weakPoints()) {
            for (Arrival a : new WaysIn(r.evidence()).through(p)) {
                assertTrue(a.defences() <= p.finding().defences());
                assertFalse(a.path().subList(1, a.path().size() - 1).stream().anyMatch(WaysInTest::isOnFrame), p.number() + " goes on past the frame");
            }
        }
    }

    /** Rain on a bare corner runs on in behind the sheet there, comes out on another and gets in once more, far below; that is no way of the corner's. */
    @ParameterizedTest
    @CsvSource({"boat-shed-gable, WRAP", "boat-shed-gable, FINISHED", "estuary-hut-north, WRAP", "estuary-hut-north, FINISHED"})
    void rainOnABareCornerNeedsNoWay(String name, Stage stage) {
        CheckResult r = result(Path.of("elevations", name + ".json"), stage);
        WeakPoint corner = r.weakPoints().stream().filter(p -> p.finding().rule().equals("bare-corner")).findFirst().orElseThrow();
        assertEquals(List.of("rain wets the frame"), corner.finding().path().stream().map(Step::why).toList());
        assertEquals(0, new WaysIn(r.evidence()).through(corner).size());
    }

    /** Water that has been on the frame before: the second time it is a way of its own, still after a failure. */
    @Test
    void aLaterPartStaysAfterTheFailure() {
        CheckResult r = result(Path.of("elevations/estuary-hut-south.json"), Stage.WRAP);
        List<Step> path = r.evidence().trace().arrivals().stream().filter(Arrival::comesFromTheFrame).map(Arrival::path)
                .filter(p -> !isOnFrame(p.get(0)) && p.stream().limit(2).anyMatch(Step::failure) && p.stream().limit(p.size() - 1L).filter(WaysInTest::isOnFrame).count() == 1)
                .findFirst().orElseThrow();
        List<List<Step>> legs = Legs.of(path);
        assertEquals(2, legs.size());
        assertEquals(path.get(0), legs.get(0).get(0));
        assertTrue(isOnFrame(legs.get(1).get(0)) && legs.get(1).get(0).failure());
        assertEquals(path.get(path.size() - 1), legs.get(1).get(legs.get(1).size() - 1));
    }
}
