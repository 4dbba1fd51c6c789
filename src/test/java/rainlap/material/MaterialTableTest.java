package rainlap.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class MaterialTableTest {
    private final List<String> lines = new MaterialTable(Catalogue.builtIn()).lines();

    @Test
    void fitsAHundredColumns() {
        lines.forEach(l -> assertTrue(l.length() <= MaterialTable.COLUMNS && l.equals(l.stripTrailing()), l));
    }

    @Test
    void everyMaterialStandsOnceWithItsName() {
        for (Material material : Catalogue.builtIn().all()) {
            List<String> own = lines.stream().filter(l -> l.startsWith(material.id() + " ")).toList();
            assertEquals(1, own.size(), material.id());
            assertTrue(own.get(0).endsWith(material.name()), own.get(0));
        }
    }

    @Test
    void numbersFollowWithWhoSaysThem() {
        int at = lines.indexOf("foil-membrane           membrane      wrap    loose  Reflective foil membrane");
        assertEquals("     roll 1350  length 30 m  aluminium  polyolefin  sun 28 days", lines.get(at + 1));
        assertEquals(
                "     uv_days: Product data sheet of one Australian foil, cover within 4 weeks, published (secondary)",
                lines.get(at + 2));
    }
}
