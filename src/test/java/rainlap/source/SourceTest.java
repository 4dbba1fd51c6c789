package rainlap.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class SourceTest {
    private static Source abcb(String edition, String clause, Known known, String row) {
        return new Source("ABCB Housing Provisions", edition, clause, known, row);
    }

    @Test
    void readsAsOneLine() {
        assertEquals(
                "ABCB Housing Provisions 2022, 7.5.2(3)(c), published",
                abcb("2022", "7.5.2(3)(c)", Known.PUBLISHED, "1.14").text());
    }

    @Test
    void leavesOutWhatTheDocumentDoesNotPrint() {
        assertEquals("ABCB Housing Provisions, 7.5.2, derived", abcb("", "7.5.2", Known.DERIVED, "1.14").text());
        assertEquals("ABCB Housing Provisions 2022, from memory", abcb("2022", "", Known.FROM_MEMORY, "").text());
    }

    @Test
    void commonPracticeHasNoDocumentToShow() {
        assertEquals("common practice (no source)", Source.commonPractice().text());
        assertEquals(Known.COMMON_PRACTICE, Source.commonPractice().known());
        assertEquals("", Source.commonPractice().row());
    }

    @Test
    void whatWasReadNamesItsRow() {
        for (Known known : new Known[] {Known.PUBLISHED, Known.PUBLISHED_SECONDARY, Known.DERIVED}) {
            assertThrows(IllegalArgumentException.class, () -> abcb("2022", "7.5.2", known, ""), known.text());
        }
        assertThrows(IllegalArgumentException.class, () -> abcb("", "", Known.COMMON_PRACTICE, "1.14"));
        assertThrows(IllegalArgumentException.class, () -> new Source(" ", "", "", Known.COMMON_PRACTICE, ""));
    }

    @Test
    void howWellKnownIsSaidInFixedWords() {
        assertEquals("published", Known.PUBLISHED.text());
        assertEquals("published (secondary)", Known.PUBLISHED_SECONDARY.text());
        assertEquals("from memory", Known.FROM_MEMORY.text());
        assertEquals("derived", Known.DERIVED.text());
        assertEquals("common practice (no source)", Known.COMMON_PRACTICE.text());
        for (Known known : Known.values()) {
            assertEquals(Optional.of(known), Known.find(known.text()));
        }
        assertEquals(Optional.empty(), Known.find("PUBLISHED"));
    }
}
