package rainlap.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.source.Known;
import rainlap.source.Source;

class CatalogueTest {
    private final Catalogue builtIn = Catalogue.builtIn();

    private Material get(String id) {
        return builtIn.find(id).orElseThrow(() -> new AssertionError("no " + id));
    }

    @Test
    void idsAreSortedUniqueAndPlain() {
        List<String> ids = builtIn.all().stream().map(Material::id).toList();
        assertEquals(ids.stream().sorted().distinct().toList(), ids);
        ids.forEach(id -> assertTrue(id.matches("[a-z]+(-[a-z0-9]+)*"), id));
    }

    @Test
    void everyKindIsThere() {
        for (MaterialKind kind : MaterialKind.values()) {
            assertFalse(builtIn.ofKind(kind).isEmpty(), kind.word());
        }
    }

    @Test
    void theMaterialsThatWallsAreDrawnWithAreThere() {
        assertEquals(MaterialKind.MEMBRANE, get("foil-membrane").kind());
        assertEquals(MaterialKind.MEMBRANE, get("breather-membrane").kind());
        assertEquals(MaterialKind.TAPE, get("wide-flashing-tape-150").kind());
        for (String id : List.of("head-flashing", "sill-flashing", "base-flashing")) {
            assertEquals(MaterialKind.FLASHING, get(id).kind());
        }
        assertEquals(MaterialKind.CORNER_PIECE, get("corner-piece").kind());
        assertEquals(MaterialKind.COLLAR, get("pipe-collar").kind());
        assertEquals(MaterialKind.CLADDING, get("corrugated-sheet").kind());
        assertEquals(MaterialKind.CLADDING, get("weatherboard").kind());
        assertEquals(MaterialKind.TRIM, get("corner-trim").kind());
        assertEquals(MaterialKind.TRIM, get("window-trim").kind());
        assertEquals(MaterialKind.SEALANT, get("finishing-bead").kind());
        assertEquals(MaterialKind.FRAME, get("window-flange").kind());
    }

    @Test
    void numbersInIdsAreTheSizes() {
        for (int width : new int[] {60, 75, 100}) {
            assertEquals(OptionalDouble.of(width), get("foil-tape-" + width).widthMm());
        }
        for (int width : new int[] {100, 150, 225}) {
            assertEquals(OptionalDouble.of(width), get("wide-flashing-tape-" + width).widthMm());
            assertOrigin("wide-flashing-tape-" + width, "width", Known.PUBLISHED_SECONDARY, "Trade article on self-adhered flashing");
        }
        for (int depth : new int[] {20, 45}) {
            assertEquals(OptionalDouble.of(45), get("batten-45x" + depth).widthMm());
            assertEquals(OptionalDouble.of(depth), get("batten-45x" + depth).profile().depthMm());
        }
    }

    @Test
    void whatIsDrawnAsARunHasAWidth() {
        for (MaterialKind kind : List.of(MaterialKind.TAPE, MaterialKind.BATTEN, MaterialKind.TRIM, MaterialKind.SEALANT)) {
            builtIn.ofKind(kind).forEach(m -> assertTrue(m.widthMm().isPresent(), m.id()));
        }
        builtIn.ofKind(MaterialKind.MEMBRANE).forEach(m -> assertTrue(m.sizes().rollWidthMm().isPresent(), m.id()));
        builtIn.ofKind(MaterialKind.CLADDING).forEach(m -> assertTrue(m.sizes().coverWidthMm().isPresent(), m.id()));
    }

    @Test
    void tapesStickMembranesDoNotAndABeadDoes() {
        builtIn.ofKind(MaterialKind.TAPE).forEach(m -> assertEquals(Bond.FULL, m.bond(), m.id()));
        builtIn.ofKind(MaterialKind.MEMBRANE).forEach(m -> assertEquals(Bond.LOOSE, m.bond(), m.id()));
        assertEquals(Bond.FULL, get("corner-piece").bond());
        assertEquals(Bond.FULL, get("finishing-bead").bond());
        assertEquals(Bond.LOOSE, get("head-flashing").bond());
    }

    @Test
    void numbersThatWereReadNameTheirDocument() {
        assertEquals(OptionalDouble.of(4 * 7), get("foil-membrane").durability().uvDays());
        assertOrigin("foil-membrane", "uv_days", Known.PUBLISHED_SECONDARY, "Product data sheet of one Australian foil");
        assertOrigin("wide-flashing-tape-150", "width", Known.PUBLISHED_SECONDARY, "Trade article on self-adhered flashing");
        assertOrigin("batten-45x20", "depth", Known.PUBLISHED_SECONDARY, "Build 128, on E2/AS1 direct-fix openings");
        assertEquals(OptionalDouble.of(30), get("weatherboard").sizes().sideLapMm());
        assertOrigin("weatherboard", "side_lap", Known.PUBLISHED, "ABCB Housing Provisions");
        assertEquals(Optional.of(Source.commonPractice()), get("foil-membrane").originOf("roll_width"));
        assertEquals(Known.FROM_MEMORY, get("foil-tape-75").originOf("service_c").orElseThrow().known());
    }

    private void assertOrigin(String id, String key, Known known, String document) {
        Source source = get(id).originOf(key).orElseThrow();
        assertEquals(known, source.known(), id);
        assertEquals(document, source.document(), id);
    }

    @Test
    void materialsOfAFileAreAddedAndTheBuiltInStays() {
        Catalogue more = builtIn.with(List.of(Material.of("foil", MaterialKind.MEMBRANE)));
        assertTrue(more.find("foil").isPresent() && builtIn.find("foil").isEmpty());
        assertEquals(builtIn.all().size() + 1, more.all().size());
        List<String> ids = more.all().stream().map(Material::id).toList();
        assertEquals(ids.stream().sorted().toList(), ids);
    }

    @Test
    void anIdIsTakenOnce() {
        Material tape = Material.of("foil-tape-75", MaterialKind.TAPE);
        assertThrows(IllegalArgumentException.class, () -> builtIn.with(List.of(tape)));
        assertThrows(IllegalArgumentException.class, () -> Catalogue.of(List.of(tape, tape)));
    }
}
