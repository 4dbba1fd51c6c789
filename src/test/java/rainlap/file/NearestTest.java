package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {
    @Test
    void countsLettersToChangeAddDropOrSwap() {
        assertEquals(0, Nearest.distance("sill", "sill"));
        assertEquals(1, Nearest.distance("sill", "sil"));
        assertEquals(1, Nearest.distance("sill", "sills"));
        assertEquals(1, Nearest.distance("sill", "sell"));
        assertEquals(1, Nearest.distance("57", "75"));
        assertEquals(3, Nearest.distance("", "sil"));
        assertEquals(4, Nearest.distance("outline", "opening"));
    }

    @Test
    void proposesWithinAThirdOfTheWord() {
        List<String> keys = List.of("under", "bond", "cuts", "rect");
        assertEquals(Optional.of("under"), Nearest.of("undr", keys));
        assertEquals(Optional.empty(), Nearest.of("colour", keys));
        assertEquals(Optional.of("cuts"), Nearest.of("Cut", keys));
        assertEquals(Optional.empty(), Nearest.of("", keys));
        assertEquals(Optional.empty(), Nearest.of("under".repeat(50), keys));
    }

    @Test
    void caseAndSeparatorsAreNoDifference() {
        assertEquals(Optional.of("wind_m_s"), Nearest.of("Wind-M-S", List.of("wind_m_s", "wind_from")));
    }

    @Test
    void ofEqualsTheSameLetterThenTheNearestNumber() {
        assertEquals(Optional.of("M6"), Nearest.of("M7", List.of("H7", "M1", "M6", "M2")));
        assertEquals(Optional.of("M2"), Nearest.of("M7", List.of("T7", "M1", "M2")));
    }
}
