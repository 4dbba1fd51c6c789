package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.practice.Practices;
import rainlap.report.RuleExamples;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

class WetPlacesTest {
    /** The trace finds bare frame there, the rules count it as nothing: a sheet that painted it would contradict its table. */
    @ParameterizedTest
    @CsvSource({"bare-corner, good-4-exactly-50.json", "bare-wall, good-2-exactly-1-short.json"})
    void whatNoRuleCountsIsToldInsteadOfPainted(String rule, String example) {
        CheckResult result = checked(rule, example);
        assertTrue(result.weakPoints().isEmpty());
        assertFalse(WetPlaces.of(result).any());
        assertFalse(WetPlaces.of(result).leftOut().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"bare-corner, bad-1-no-corner-pieces.json", "bare-wall, bad-2-just-over-100.json"})
    void whatAWeakPointExplainsIsPainted(String rule, String example) {
        assertTrue(WetPlaces.of(checked(rule, example)).any());
    }

    @Test
    void nothingIsPaintedWithoutAWeakPointWithoutDefences() {
        for (Shipped s : Shipped.all()) {
            boolean leaks = s.result().weakPoints().stream().anyMatch(p -> p.finding().defences() == 0);
            assertTrue(leaks || !WetPlaces.of(s.result()).any(), s.file());
        }
    }

    /** All parts are either painted or told. */
    @Test
    void nothingIsLost() {
        for (Shipped s : Shipped.all()) {
            WetPlaces wet = WetPlaces.of(s.result());
            long reached = s.result().evidence().trace().reach().stream().filter(r -> r.defences() == 0).mapToLong(r -> r.where().size()).sum();
            long told = wet.leftOut().size() + wet.surfaces().stream().mapToLong(f -> wet.painted(f).size()).sum();
            assertEquals(reached, told, s.file());
        }
    }

    private static CheckResult checked(String rule, String example) {
        Elevation e = ElevationFile.read(example, RuleExamples.bytes(rule, example)).elevation().orElseThrow();
        return Checker.check(e, Stage.drawn(e), Practices.common());
    }
}
