package rainlap.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rainlap.source.Known;

class GalvanicTest {
    private static Metal metal(String word) {
        return Metal.find(word).orElseThrow(() -> new AssertionError(word));
    }

    /** As the comparison of the two tables was written off by hand: first the metal that corrodes, then volts by each table; a dash where one does not list both. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            aluminium        | copper          | 550 | 520
            zinc             | steel           | 400 | 400
            zinc             | aluminium       | 350 | 310
            zinc             | lead            | 550 | 560
            stainless steel  | copper          | 150 | -320
            aluminium        | stainless steel | 400 | 840
            silver           | gold            | 150 | 220
            steel            | lead            | 150 | 160
            aluminium        | steel           | 50  | 90
            steel            | cast iron       | -   | 50
            aluminium-zinc coated steel | copper | - | -
            """)
    void tablesAreRead(String readier, String other, String index, String potentials) {
        assertEquals(mv(index), GalvanicTable.ANODIC_INDEX.readier(metal(readier), metal(other)));
        assertEquals(mv(potentials), GalvanicTable.AGAINST_COPPER.readier(metal(readier), metal(other)));
        assertEquals(index.equals("-") ? mv(index) : OptionalInt.of(-mv(index).getAsInt()), GalvanicTable.ANODIC_INDEX.readier(metal(other), metal(readier)));
    }

    private static OptionalInt mv(String text) {
        return text.equals("-") ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
    }

    @Test
    void tablesAreSecondaryAndStartAtTheirOwnZero() {
        GalvanicTable.ALL.forEach(t -> assertEquals(Known.PUBLISHED_SECONDARY, t.source().known()));
        assertEquals(0, GalvanicTable.ANODIC_INDEX.millivolts().get(Metal.GOLD));
        assertEquals(0, GalvanicTable.AGAINST_COPPER.millivolts().get(Metal.COPPER));
        assertEquals(150, GalvanicTable.ALLOWED_MV);
    }

    @Test
    void metalsAreKnownByTheirWords() {
        assertEquals(Optional.of(Metal.ALUMINIUM), Metal.find(" Aluminum "));
        assertEquals(Optional.of(Metal.GALVANISED), Metal.find("zinc-coated steel"));
        assertEquals(Optional.empty(), Metal.find("unobtainium"));
        for (Metal m : Metal.values()) {
            assertEquals(Optional.of(m), Metal.find(m.word()));
        }
        assertEquals(List.of(Metal.MAGNESIUM, Metal.STEEL, Metal.IRON, Metal.CAST_IRON), List.of(Metal.values()).stream().filter(Metal::corrodesBare).toList());
    }

    @Test
    void namedPairsHoldBothWaysAndGoBeforeTheTables() {
        assertNamed("galvanised steel", "aluminium", true);
        assertNamed("galvanised steel", "lead", true);
        assertNamed("aluminium-zinc coated steel", "lead", false);
        assertNamed("zinc", "stainless steel", false);
        assertNamed("hard-anodised aluminium", "copper", true);
        assertNamed("aluminium", "mortar", false);
        assertNamed("soft-pvc", "bitumen", false);
        assertNamed("rubberised-bitumen", "epdm", false);
        assertNamed("soft-pvc", "extruded-polystyrene", false);
        assertEquals(Optional.empty(), NamedPair.find("epdm", "bitumen"), "paper that is soaked with bitumen is no rubberised bitumen");
        assertEquals(Optional.empty(), NamedPair.find("hard-anodised aluminium", "mortar"), "it may touch metals");
        assertEquals(Optional.empty(), NamedPair.find("aluminium", "copper"));
    }

    private static void assertNamed(String one, String other, boolean harmless) {
        NamedPair pair = NamedPair.find(one, other).orElseThrow(() -> new AssertionError(one + " and " + other));
        assertEquals(pair, NamedPair.find(other, one).orElseThrow());
        assertEquals(harmless, pair.harmless(), pair::says);
        assertTrue(harmless || pair.attacks(one, other) != pair.attacks(other, one), () -> one + " or " + other + " suffers");
    }

    @Test
    void everyWordOfAPairIsAMetalOrASubstance() {
        for (NamedPair p : NamedPair.ALL) {
            for (String word : p.attacked()) {
                assertTrue(Metal.find(word).isPresent() || Substance.find(word).isPresent(), word);
            }
            for (String word : p.by()) {
                assertTrue(Metal.find(word).isPresent() || Substance.find(word).isPresent(), word);
            }
            assertFalse(p.says().endsWith("."), p.says());
        }
    }

    @Test
    void metalsOfTheCatalogueAreKnown() {
        Catalogue.builtIn().all().forEach(m -> m.durability().metal().ifPresent(metal -> assertTrue(Metal.find(metal).isPresent(), m.id() + ": " + metal)));
    }
}
