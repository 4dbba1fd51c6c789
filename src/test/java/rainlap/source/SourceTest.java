package rainlap.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class SourceTest {
    private static Source abcb(String edition, String clause, Known known) {
        return new Source("ABCB Housing Provisions", edition, clause, known);
    }

    @Test
    void readsAsOneLine() {
        assertEquals(
                "ABCB Housing Provisions 2022, 7.5.2(3)(c), published",
                abcb("2022", "7.5.2(3)(c)", Known.PUBLISHED).text());
    }

    @Test
    void leavesOutWhatTheDocumentDoesNotPrint() {
        assertEquals("ABCB Housing Provisions, 7.5.2, derived", abcb("", "7.5.2", Known.DERIVED).text());
        assertEquals("ABCB Housing Provisions 2022, from memory", abcb("2022", "", Known.FROM_MEMORY).text());
    }

    @Test
    void commonPracticeHasNoDocumentToShow() {
        assertEquals("common practice (no source)", Source.commonPractice().text());
        assertEquals(Known.COMMON_PRACTICE, Source.commonPractice().known());
    }

    @Test
    void everySourceNamesItsDocument() {
        for (Known known : Known.values()) {
            assertThrows(IllegalArgumentException.class, () -> new Source(" ", "2022", "7.5.2", known), known.text());
        }
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
