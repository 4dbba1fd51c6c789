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
import rainlap.wall.Stage;
import rainlap.wall.EdgeRole;
import rainlap.wall.CutPattern;
import rainlap.practice.Practices;
import rainlap.joint.Drawn;
import rainlap.check.Checker;

class FindingsJsonTest {
    static byte[] bytes(CheckResult result) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        FindingsJson.write(result, java.util.Optional.empty(), out);
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
        assertEquals(List.of("findings", "elevation", "practice", "stage", "units", "water", "defences_of", "assumptions", "rain", "joints",
                "opening_edges", "opening_corners", "building_corners", "weak_points", "reach", "simulated_defects", "unchecked", "held", "not_applicable", "failed"), keys(mixed()));
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

    @Test void whatTurnsEachEdgeAndCornerIsNamedWithItsPlace() throws IOException {
        Drawn wall = Drawn.wall().outline(0, 0, 2000, 2000, EdgeRole.EXTERNAL_CORNER).window("W", 500, 500, 1000, 800, 90)
                .cutSheet("M", -300, 0, 2300, 2000, "W", CutPattern.INVERTED_Y, 60).tape("T", -40, 500, 80, 200);
        JsonNode found = new ObjectMapper().readTree(bytes(Checker.check(wall.elevation(), Stage.WRAP, Practices.common())));
        assertEquals("{\"surface\":\"W.sill\",\"where\":\"LINESTRING (500 500, 1500 500)\","
                + "\"turned_by\":[{\"piece\":\"M\",\"where\":[\"LINESTRING (500 500, 1500 500)\"]}]}",
                found.at("/opening_edges/0").toString());
        assertEquals("[]", found.at("/opening_edges/3/turned_by").toString(), "nothing is returned at the head");
        assertEquals("{\"opening\":\"W\",\"corner\":\"lower left corner\",\"pieces\":[\"M\"],\"bare\":true}",
                found.at("/opening_corners/0").toString());
        assertEquals("0", found.at("/building_corners/0/wrap").toString(), "M ends exactly at the right-hand corner");
        assertEquals("300", found.at("/building_corners/1/wrap").toString());
        assertEquals("[\"LINESTRING (0 700, 0 500)\"]", found.at("/building_corners/1/taped").toString());
    }

    @Test void theLapIsGivenWhereItChanges() throws IOException {
        Drawn wall = Drawn.wall().sheet("M1", 0, 0, 2000, 1000).ring("M2", 0, 1000, 2000, 900, 2000, 2000, 0, 2000);
        JsonNode laps = new ObjectMapper().readTree(bytes(Checker.check(wall.elevation(), Stage.WRAP, Practices.common())))
                .at("/joints/0/laps");
        assertEquals("LINESTRING (0 1000, 1945.14 902.74)", laps.at("/0/where").asText(), "beyond, it slips out past M1's side");
        assertEquals("0", laps.at("/0/from").toString());
        assertEquals("97.38", laps.at("/0/to").toString());
    }

    @Test void litresThatAreNotReckonedAreNotMadeUp() throws IOException {
        assertTrue(mixed().at("/weak_points/0/litres_per_hour").isNull());
    }

    @Test void whereTheRainGoesAddsUpToWhatFalls() throws IOException {
        assertTrue(mixed().get("rain").isNull(), "none is stated");
        JsonNode rain = new ObjectMapper().readTree(bytes(Samples.rain())).get("rain");
        assertEquals("25", rain.get("litres_per_m2_hour").toString());
        double sum = 0;
        for (String where : List.of("base", "drips", "sides", "frame", "trapped")) {
            sum += rain.at("/balance/" + where).asDouble();
        }
        assertEquals(60, rain.at("/balance/fallen").asDouble());
        assertEquals(60, sum, 1e-3);
        assertTrue(rain.at("/balance/openings").isMissingNode(), "the wall has none");
        assertEquals("[]", rain.get("not_counted").toString());
    }

    /** A reverse lap of 100 at +800: the frame below its foot is wet as drawn, and above it as high as wind lifts water, 150. */
    @Test void theWaysOfTheWaterAndTheWetFrameAreWritten() throws IOException {
        Drawn wall = Drawn.wall().outline(0, 0, 1000, 2000, EdgeRole.EXTERNAL_CORNER).sheet("M2", -300, 800, 1600, 1300).sheet("M1", -300, -40, 1600, 940);
        JsonNode found = new ObjectMapper().readTree(bytes(Checker.check(wall.elevation(), Stage.WRAP, Practices.common())));
        assertEquals("traced", found.get("water").asText());
        assertEquals("the whole way", found.get("defences_of").asText());
        JsonNode lap = found.at("/weak_points/0");
        assertEquals("reverse-lap", lap.get("rule").asText());
        assertEquals("0", lap.get("defences").toString());
        assertEquals("{\"surface\":\"wall\",\"where\":\"LINESTRING (0 900, 1000 900)\",\"why\":\"runs in behind M1\",\"failure\":false}",
                lap.at("/path/1").toString());
        assertEquals("{\"defences\":0,\"surface\":\"wall\",\"where\":\"POLYGON ((0 950, 0 0, 1000 0, 1000 950, 0 950))\"}", found.at("/reach/0").toString());
    }

    @Test void everyAssumptionStandsBesideItsFigure() throws IOException {
        JsonNode all = mixed().get("assumptions");
        assertEquals(List.of("rise", "creep", "height wetted by itself"), texts(all, "what"), "no speed, no rain: nothing else goes in");
        assertEquals(List.of("what", "figure", "source", "note"), keys(all.get(0)));
        assertEquals("150 mm", all.at("/0/figure").asText());
        assertTrue(all.at("/0/note").asText().startsWith("No wind, towing or pressure is stated"), all.toString());
    }

    private static List<String> texts(JsonNode list, String key) {
        List<String> out = new ArrayList<>();
        list.forEach(n -> out.add(n.get(key).asText()));
        return out;
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
