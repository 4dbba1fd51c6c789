package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;

class FindingsJsonTest {
    static byte[] bytes(CheckResult result) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        FindingsJson.write(result, out);
        return out.toByteArray();
    }

    private static JsonNode mixed() throws IOException {
        return new ObjectMapper().readTree(bytes(Samples.mixed()));
    }

    private static List<String> keys(JsonNode object) {
        List<String> out = new ArrayList<>();
        object.fieldNames().forEachRemaining(out::add);
        return out;
    }

    @Test void theFixedKeysAreThereInOrder() throws IOException {
        assertEquals(List.of("findings", "elevation", "practice", "stage", "units", "water", "defences_of", "joints", "weak_points",
                "reach", "unchecked", "held", "not_applicable", "failed"), keys(mixed()));
        assertTrue(keys(mixed().at("/joints/0")).containsAll(List.of("id", "kind", "pieces", "where", "lap", "tape", "litres_per_hour")));
        assertTrue(keys(mixed().at("/weak_points/0")).containsAll(List.of("number", "rule", "pieces", "where", "measured", "required",
                "unit", "defences", "litres_per_hour", "source", "says", "remedy", "path")));
        assertEquals(List.of("document", "edition", "clause", "known"), keys(mixed().at("/weak_points/0/source")));
        assertEquals(List.of("rule", "pieces", "why"), keys(mixed().at("/unchecked/0")));
    }

    @Test void aReverseLapStandsAsDrawn() throws IOException {
        JsonNode joint = mixed().at("/joints/0");
        assertEquals("reverse-lap", joint.get("kind").asText());
        assertEquals("[\"M1\",\"M2\"]", joint.get("pieces").toString());
        assertEquals("LINESTRING (2000 1350, 0 1350)", joint.get("where").asText());
        assertEquals("137.5", joint.get("lap").toString());
        assertTrue(joint.get("tape").isNull());
        assertTrue(joint.get("litres_per_hour").isNull());
    }

    @Test void aTapedButtSaysItsCoverAndWhatIsLeftOpen() throws IOException {
        JsonNode joint = mixed().at("/joints/1");
        assertEquals("butt", joint.get("kind").asText());
        assertEquals("0.5", joint.get("gap").toString());
        assertEquals("0", joint.get("lap").toString());
        assertEquals("[29.5,30]", joint.get("tape").toString());
        assertEquals("[\"LINESTRING (2000.5 1000, 2000.5 800)\"]", joint.get("uncovered").toString());
    }

    @Test void waterThatIsNotTracedIsNotMadeUp() throws IOException {
        assertEquals("not traced", mixed().get("water").asText());
        assertEquals("the joint alone", mixed().get("defences_of").asText());
        assertEquals("[]", mixed().get("reach").toString());
        assertEquals("[]", mixed().at("/weak_points/0/path").toString());
        assertTrue(mixed().at("/weak_points/0/litres_per_hour").isNull());
    }

    @Test void nothingThatFailedOrDidNotApplyIsLeftOut() throws IOException {
        assertEquals("{\"a-rule\":1}", mixed().get("held").toString());
        assertEquals("{\"tape-order\":\"there is no opening\"}", mixed().get("not_applicable").toString());
        assertEquals("z-rule", mixed().at("/failed/0/rule").asText());
        assertEquals(2, mixed().get("unchecked").size());
    }

    @Test void sameResultSameBytes() throws IOException {
        assertArrayEquals(bytes(Samples.mixed()), bytes(Samples.mixed()));
        String text = new String(bytes(Samples.mixed()), StandardCharsets.UTF_8);
        assertFalse(text.contains("\r"));
        assertTrue(text.endsWith("}\n"));
        assertFalse(text.contains(".0,"), "numbers are trimmed");
    }
}
