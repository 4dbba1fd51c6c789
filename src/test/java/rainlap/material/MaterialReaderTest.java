package rainlap.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rainlap.source.Known;

class MaterialReaderTest {
    private static final String GOOD = "{'id':'t','is':'tape','name':'Tape','width':60.5,"
            + "'from':{'width':'common practice (no source)'}}";

    private static List<Material> read(String material) {
        String json = "{'materials':[" + material + "]}";
        return MaterialReader.read(MaterialKind.TAPE, json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    }

    private static void refused(String because, String oldText, String newText) {
        assertTrue(GOOD.contains(oldText), oldText);
        String message = assertThrows(
                IllegalArgumentException.class, () -> read(GOOD.replace(oldText, newText))).getMessage();
        assertTrue(message.contains(because), message);
    }

    private static Material withKeys(String keys) {
        return read(GOOD.replace("'from'", keys + ",'from'")).get(0);
    }

    @Test
    void aGoodFileIsRead() {
        Material tape = read(GOOD).get(0);
        assertEquals(60.5, tape.widthMm().orElseThrow());
        assertEquals(Bond.FULL, tape.bond());
        assertEquals(Optional.empty(), tape.durability().rots());
    }

    @Test
    void keysWithoutANumberNeedNoSource() {
        Material tape = withKeys("'bond':['left','top'],'metal':'lead','rots':false,'mesh':true,'end_dams':'left'");
        assertEquals(Bond.sealedAt(Edge.TOP, Edge.LEFT), tape.bond());
        assertEquals(Optional.of("lead"), tape.durability().metal());
        assertEquals(Optional.of(false), tape.durability().rots());
        assertEquals(Optional.of(true), tape.durability().mesh());
        assertEquals(Optional.of(EndDams.LEFT), tape.profile().endDams());
        assertEquals(Bond.LOOSE, withKeys("'bond':'loose'").bond());
    }

    @Test
    void everyNumberKeyIsReadAndNeedsASource() {
        List<String> keys = List.of("roll_width", "roll_length_m", "cover_width", "side_lap", "depth", "fall_deg", "upstand",
                "end_dam", "drip", "hem", "turn_down", "uv_days");
        for (String key : keys) {
            refused("has the numbers", "'from'", "'" + key + "':7,'from'");
            Material read = read(GOOD.replace("'from':{", "'" + key + "':7,'from':{'" + key + "':'from memory',")).get(0);
            assertEquals(Known.FROM_MEMORY, read.originOf(key).orElseThrow().known());
            assertEquals(1, read.toString().split("OptionalDouble\\[7\\.0\\]", -1).length - 1, key);
        }
        refused("has the numbers", "'from'", "'service_c':[-5,70],'from'");
        refused("has the numbers", ",'from':{'width':'common practice (no source)'}", "");
        refused("has the numbers", "'from':{", "'from':{'depth':'from memory',");
    }

    @Test
    void aDocumentIsReadWhole() {
        Material tape = read(GOOD.replace("'common practice (no source)'",
                "{'document':'Invented','edition':'1','clause':'2','known':'published'}")).get(0);
        assertEquals("Invented 1, 2, published", tape.originOf("width").orElseThrow().text());
    }

    @Test
    void unknownKeysAndWordsAreRefused() {
        refused("colour", "'width'", "'colour':'red','width'");
        refused("Duplicate", "'width'", "'id':'u','width'");
        refused("is a membrane", "'tape'", "'membrane'");
        refused("bond", "'from'", "'bond':'stuck','from'");
        refused("bond", "'from'", "'bond':['middle'],'from'");
        refused("bond", "'from'", "'bond':[],'from'");
        refused("bond", "'from'", "'bond':{'edge':'top'},'from'");
        refused("end_dams", "'from'", "'end_dams':'some','from'");
        refused("service_c", "'from':{", "'service_c':[1],'from':{'service_c':'from memory',");
        refused("page", "'common practice (no source)'", "{'document':'Invented','known':'published','page':'3'}");
        refused("known", "'common practice (no source)'", "{'document':'Invented'}");
        refused("no document", "'common practice (no source)'", "'published'");
        refused("Cannot coerce", "60.5", "'60.5'");
        refused("above zero", "60.5", "0");
    }
}
